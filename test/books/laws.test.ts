// Laws of every rule book: a higher voltage, a worse pollution, a higher site never asks less; reinforced is never below
// basic; creepage is never below the clearance; a higher book figure is never lost for a lower one. What a book has no
// figure for counts as without end.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Answered, Both } from '#books/questions/required.ts';
import { ruleBook, ruleBookIds } from '#books/shelf.ts';
import { isOutOfRange } from '#standards/tables/out-of-range.ts';
import { ask, type Plain } from './ask.ts';

const RUNS = { numRuns: 150, seed: 20_261_130 };

const plain = fc.record({
  rms: fc.integer({ min: 10, max: 900 }),
  peak: fc.integer({ min: 20, max: 2500 }),
  frequency: fc.constantFrom(50, 30_000, 65_000, 150_000, 300_000),
  mains: fc.constantFrom(50, 100, 120, 127, 150, 230, 240, 277, 300),
  category: fc.constantFrom(1 as const, 2 as const, 3 as const),
  pollutionDegree: fc.constantFrom(1 as const, 2 as const, 3 as const),
  altitude: fc.constantFrom(0, 2000, 2500, 5000),
  means: fc.constantFrom('patient' as const, 'operator' as const),
});

const WORSE: readonly (readonly [string, (from: Plain) => Partial<Plain>])[] = [
  ['a higher rms', ({ rms }) => ({ rms: rms * 1.2 })],
  ['a higher peak', ({ peak }) => ({ peak: peak * 1.2 })],
  ['a higher category', ({ category }) => ({ category: category === 1 ? 2 : 3 })],
  ['a worse pollution', ({ pollutionDegree }) => ({ pollutionDegree: pollutionDegree === 1 ? 2 : 3 })],
  ['a higher site', ({ altitude }) => ({ altitude: altitude + 1500 })],
];

const values = ({ basic, reinforced }: Both<Answered<number>>): readonly number[] =>
  [basic, reinforced].map((one) => (isOutOfRange(one) ? Infinity : one.value));

const all = (id: string, asked: Partial<Plain>): readonly (readonly number[])[] => {
  const { clearance, creepage, test } = ask(ruleBook(id)!, asked);
  return [clearance, creepage('I'), creepage('IIIb'), test].map(values);
};

describe.each(ruleBookIds)('every figure of %s', (id) => {
  it.each(WORSE)('should never fall with %s', (_, worse) => {
    // a book may have rows of one pollution degree alone: those of others are no figure, on either side of it
    const onlyDegree = ruleBook(id)!.id === 'iec-61558-2-16';
    fc.assert(
      fc.property(plain, (from) => {
        const start = onlyDegree ? { ...from, pollutionDegree: 2 as const } : from;
        const before = all(id, start).flat();
        const after = all(id, { ...start, ...worse(start as Plain) }).flat();
        after.forEach((value, i) => expect(value).toBeGreaterThanOrEqual(before[i]!));
      }),
      RUNS,
    );
  });

  it('should never be lower for reinforced than for basic, nor for creepage than for clearance', () => {
    fc.assert(
      fc.property(plain, (from) => {
        const [clearance, groupI, groupIII, test] = all(id, from);
        for (const [basic, reinforced] of [clearance!, groupI!, groupIII!])
          expect(reinforced).toBeGreaterThanOrEqual(basic!);
        // a book may have no basic level where it has a reinforced one
        if (test![0] !== Infinity) expect(test![1]).toBeGreaterThanOrEqual(test![0]!);
        clearance!.forEach((value, i) => expect(groupI![i]).toBeGreaterThanOrEqual(value));
        groupI!.forEach((value, i) => expect(groupIII![i]).toBeGreaterThanOrEqual(value));
      }),
      RUNS,
    );
  });
});
