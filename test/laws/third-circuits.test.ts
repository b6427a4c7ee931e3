// Builds of three and four circuits with earthed windings and screens between the others, every field of every winding in
// turn: what is not known never beats what is, a wider interval never improves, taping down, filling and covering never worsen.

import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arbitraryThird } from './arbitrary-third.ts';
import { copyOf, type File } from './change-design.ts';
import { VOLTAGE } from './check-law.ts';
import { beaten, graded, loweredPairs, type Graded } from './graded.ts';
import { BETTERMENTS, OPENINGS, WIDENINGS } from './openings.ts';

const SEED = Number(process.env['LAW_SEED'] ?? 20261201);
/** Of every law; more where LAW_RUNS asks for them. */
const RUNS = Number(process.env['LAW_RUNS'] ?? 8);

interface Comparison {
  readonly before: File;
  readonly after: File;
  readonly complain: (before: Graded, after: Graded) => readonly string[];
}

/** Every law by its name: what of a build it compares. */
type Laws = Readonly<Record<string, (file: File) => readonly Comparison[]>>;

const entries = <T, R>(from: Readonly<Record<string, T>>, to: (each: T) => R): Readonly<Record<string, R>> =>
  Object.fromEntries(Object.entries(from).map(([name, each]) => [name, to(each)]));

const opened: Laws = entries(
  OPENINGS,
  (open) => (file) => open(file).map((after) => ({ before: file, after, complain: beaten })),
);

const widened: Laws = entries(
  WIDENINGS,
  (widen) => (file) =>
    widen(file).map(([before, after]) => ({
      before,
      after,
      complain: (narrow, wide) => loweredPairs(wide, narrow),
    })),
);

const bettered: Laws = entries(
  BETTERMENTS,
  (better) => (file) =>
    better(file).map(({ file: after, of }) => ({
      before: file,
      after,
      complain: (was, now) => loweredPairs(was, now, ({ between }) => of === null || between.includes(of)),
    })),
);

/** Each build is held to the law that was asked least so far of those that say something of it. */
function hold(laws: Laws): void {
  const asked = new Map(Object.keys(laws).map((name) => [name, 0]));
  let compared = 0;
  const property = fc.property(arbitraryThird, (random) => {
    const file = copyOf(random, (copy) => (copy.workingVoltages = [VOLTAGE]));
    const names = [...asked].sort(([, a], [, b]) => a - b).map(([name]) => name);
    for (const name of names) {
      const all = laws[name]!(file);
      const one = all[compared % Math.max(1, all.length)];
      if (one === undefined) continue;
      asked.set(name, asked.get(name)! + 1);
      const before = graded(one.before);
      const after = before && !before.isOverfull ? graded(one.after) : null;
      if (!before || !after || after.isOverfull || after.rows !== before.rows) return;
      compared++;
      expect(one.complain(before, after), name).toEqual([]);
      return;
    }
  });
  fc.assert(property, { seed: SEED, numRuns: RUNS, endOnFailure: true });
  expect(compared, `seed ${SEED}`).toBeGreaterThan(RUNS / 2);
}

describe('third circuits', () => {
  it('should never reach more for what is not known of any circuit', () => {
    hold(opened);
  });

  it('should never reach more for a length that is known to within more', () => {
    hold(widened);
  });

  it('should never reach less for ends that are held, margins that are filled and wire that is covered', () => {
    hold(bettered);
  });
});
