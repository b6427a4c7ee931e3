// What a design file says of the working voltage of a pair: its one entry, each figure by itself.

import type { Design } from '#model/design.ts';
import type { WorkingVoltage } from '#model/design/voltages.ts';
import type { Known } from '#model/quantity/reading.ts';
import type { Hertz, VoltsPeak, VoltsRms } from '#units/quantity.ts';

export interface Given<Q> {
  readonly value: Q;
  readonly basis: 'measured' | 'stated';
  /** Place in the file's `workingVoltages`. */
  readonly entry: number;
}

export interface GivenVoltages {
  readonly rms: Given<VoltsRms> | null;
  readonly peak: Given<VoltsPeak> | null;
  readonly frequency: Given<Hertz> | null;
}

export function givenVoltages(design: Design, a: string, b: string): GivenVoltages {
  const entry = design.workingVoltages.findIndex((said) => joins(said, a, b));
  const said = design.workingVoltages[entry];
  const given = <Q>(figure: Known<Q> | null | undefined): Given<Q> | null =>
    said === undefined || figure == null ? null : { value: figure.value, basis: said.basis, entry };
  return { rms: given(said?.rms), peak: given(said?.peak), frequency: given(said?.frequency) };
}

const joins = ({ between: [c, d] }: WorkingVoltage, a: string, b: string): boolean =>
  (c === a && d === b) || (c === b && d === a);
