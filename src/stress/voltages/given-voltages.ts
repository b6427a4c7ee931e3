// What a design file says of the working voltage of a pair: each figure by itself, the measured ones before the stated
// ones, and of several the highest.

import type { Design, WorkingVoltage } from '#model/design.ts';
import type { Known } from '#model/reading.ts';
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
  const entries = design.workingVoltages
    .map((said, entry) => ({ said, entry }))
    .filter(({ said }) => joins(said, a, b));
  return {
    rms: winner(entries, (said) => said.rms),
    peak: winner(entries, (said) => said.peak),
    frequency: winner(entries, (said) => said.frequency),
  };
}

const joins = ({ between: [c, d] }: WorkingVoltage, a: string, b: string): boolean =>
  (c === a && d === b) || (c === b && d === a);

function winner<Q extends number>(
  entries: readonly { readonly said: WorkingVoltage; readonly entry: number }[],
  pick: (said: WorkingVoltage) => Known<Q> | null,
): Given<Q> | null {
  let best: Given<Q> | null = null;
  for (const { said, entry } of entries) {
    const value = pick(said)?.value;
    if (value === undefined) continue;
    const { basis } = said;
    const wins = best === null || (basis === best.basis ? value > best.value : basis === 'measured');
    if (wins) best = { value, basis, entry };
  }
  return best;
}
