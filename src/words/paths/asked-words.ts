// On what an asked figure stands: the voltage that was counted and where it comes from, and for creepage the tracking group
// of the weakest surface. The same build asks other figures as soon as one of these is known better.

import type { PairVerdict } from '#judge/verdict/pair.ts';
import type { Metric } from '#units/terms.ts';
import { unreachable } from '#units/unreachable.ts';

/** `272 V rms` and `as stated, surface of group IIIb`; for clearance the peak and the surge, which decide it. */
export function askedWords(
  { stress, required }: PairVerdict,
  metric: Metric,
): { figure: string; rest: string } {
  const basis = basisPhrase(stress.basis);
  if (metric === 'clearance')
    return {
      figure: `${Math.ceil(stress.peak)} V peak`,
      rest: `${basis}, surges of ${Math.ceil(stress.withstand)} V`,
    };
  const group = required === null ? '' : `, surface of group ${required.creepage.materialGroup}`;
  return { figure: `${Math.round(stress.rms)} V rms`, rest: `${basis}${group}` };
}

function basisPhrase(basis: PairVerdict['stress']['basis']): string {
  switch (basis) {
    case 'measured':
      return 'as measured';
    case 'stated':
      return 'as stated';
    case 'computed':
      return 'computed from the converter, raised by what an estimate may be off';
    case 'floor':
      return 'that the mains alone puts there; more was not given';
    default:
      return unreachable(basis);
  }
}
