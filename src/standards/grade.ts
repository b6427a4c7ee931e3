// The words that a rule book uses: grades of insulation, columns of its tables, roles of circuits, material groups.

/** From nothing to a double barrier. `basic` and `supplementary` rank alike, `double` and `reinforced` too. */
export type Grade = 'none' | 'functional' | 'basic' | 'supplementary' | 'double' | 'reinforced';

/** Column of a table of distances or test voltages; supplementary reads the basic column. */
export type Column = 'basic' | 'reinforced';

export type PollutionDegree = 1 | 2 | 3;

export type MaterialGroup = 'I' | 'II' | 'IIIa' | 'IIIb';

export type OvervoltageCategory = 1 | 2 | 3 | 4;

export type Role = 'mains' | 'touchable' | 'earth' | 'isolated';
