import { describe, expect, it } from 'vitest';

import { ruleBook } from '#books/shelf.ts';
import { leakageOf } from '#stress/current/leakage.ts';
import { largestThatWouldDo, touchShares } from '#words/stress/touch-shares.ts';

import { benchDesign } from '#test/stress/bench-design.ts';

const book = ruleBook('iec-62368-1')!;

/** The parts of a file at 240 V, 50 Hz. */
const leakage = (...bridges: readonly { readonly id: string; readonly capacitance: string }[]) =>
  leakageOf(
    benchDesign({
      supply: { kind: 'ac', voltage: 240, frequency: 50, tolerance: 0 },
      bridges: bridges.map((bridge) => ({
        kind: 'capacitor',
        between: ['pri', 'out'],
        safetyClass: 'Y1',
        ...bridge,
      })),
    }),
    book,
    [],
    null,
  );

describe('what makes up a touch current', () => {
  it('should be told part by part, the largest first', () => {
    // 2 pi 50 x 240 x 2.2 nF = 0.16588 mA, and with 1 nF 0.0754 mA; rounded up
    const both = leakage({ id: 'C1', capacitance: '1 nF' }, { id: 'C2', capacitance: '2.2 nF' });
    expect(touchShares(both, [])).toEqual(['C2, 2.2 nF: 0.166 mA', 'C1, 1 nF: 0.076 mA']);
    expect(both.touch?.through.reduce((sum, each) => sum + each, 0)).toBeCloseTo(
      both.touch?.plain ?? NaN,
      12,
    );
  });

  it('should tell no other capacitor while the limit is kept', () => {
    expect(largestThatWouldDo(leakage({ id: 'C1', capacitance: '1 nF' }))).toBeNull();
  });

  it('should tell the largest capacitor that keeps the limit, and one a little larger should not', () => {
    const over = leakage({ id: 'C1', capacitance: '1 nF' }, { id: 'C2', capacitance: '10 nF' });
    expect(over.touch?.answer).toBe('falls-short');
    const told = /at most ([\d.]+) nF in place of C2/.exec(largestThatWouldDo(over) ?? '');
    const farads = Number(told?.[1]);
    const withIt = (value: number) =>
      leakage({ id: 'C1', capacitance: '1 nF' }, { id: 'C2', capacitance: `${value} nF` }).touch?.answer;
    expect(withIt(farads)).toBe('meets');
    expect(withIt(farads + 0.2)).toBe('falls-short');
  });
});
