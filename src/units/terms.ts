// The words that all rooms share: grades and how they are asked for, roles, surroundings, sides.

/** From nothing to a double barrier. `basic` and `supplementary` rank alike, `double` and `reinforced` too. */
export type Grade = 'none' | 'functional' | 'basic' | 'supplementary' | 'double' | 'reinforced';
/** Of a table of distances. */
export type Column = 'basic' | 'reinforced';
/** How a distance is measured: along surfaces, or through air. */
export type Metric = 'creepage' | 'clearance';
/** Of a circuit. */
export type Role = 'mains' | 'touchable' | 'earth' | 'isolated';
/** By the tracking index of a surface. */
export type MaterialGroup = 'I' | 'II' | 'IIIa' | 'IIIb';
export type PollutionDegree = 1 | 2 | 3;
export type OvervoltageCategory = 1 | 2 | 3 | 4;
export type Side = 'left' | 'right';
