// An estimate is printed as it was computed and asked for as high as it may be: 5 % more where mode, low line and rail are
// known, else 20 %.

import { describe, expect, it } from 'vitest';
import type { Changes } from '#test/designs.ts';
import { pairOf, verdictWith } from '#test/judge/margin-build.ts';

const CONVERTER = {
  switchingFrequency: '65 kHz',
  reflectedVoltage: '90 V',
  clampOvershoot: '60 V',
  outputs: [{ circuit: 'out', voltage: '12 V' }],
};
const SUPPLY = { kind: 'ac', voltage: '240 V', lowest: '100 V' };
const KNOWN: Changes = {
  supply: SUPPLY,
  workingVoltages: [],
  converter: { ...CONVERTER, mode: 'continuous', rail: { kind: 'mains' } },
};
const OPEN: Changes = { ...KNOWN, converter: { ...CONVERTER, mode: 'continuous' } };

const judgedAs = (changes: Changes) => pairOf(verdictWith(changes), 'pri', 'out');

/** What a measured voltage of so much asks. */
function askedAt(rms: number, peak: number) {
  const measured = { between: ['pri', 'out'], rms, peak, frequency: '65 kHz', basis: 'measured' };
  return judgedAs({ supply: SUPPLY, workingVoltages: [measured] }).required;
}

describe('an estimate', () => {
  it.each([
    ['5 %', 1.05, KNOWN],
    ['20 %', 1.2, OPEN],
  ] as const)('should be asked for %s above what is printed of it', (_, factor, changes) => {
    const { stress, required } = judgedAs(changes);
    expect(stress.basis).toBe('computed');
    const { rms, peak } = stress;
    const higher = askedAt(rms * factor, peak * factor);
    expect(required?.creepage.reinforced).toBe(higher?.creepage.reinforced);
    expect(required?.clearance.reinforced).toBe(higher?.clearance.reinforced);
    // of both tables the printed figure alone asks less
    const plain = askedAt(rms, peak);
    expect(plain?.creepage.reinforced).toBeLessThan(required?.creepage.reinforced ?? 0);
  });
});
