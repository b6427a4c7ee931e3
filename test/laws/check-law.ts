// Holds a law to random builds: judges each before and after a change and collects what the law complains of.
// Held to what the laws are stated for: equal rows, builds that are not overfull.

import * as fc from 'fast-check';
import { expect } from 'vitest';
import { heightOf } from '#standards/ladder.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import type { PairVerdict } from '#judge/verdict/pair.ts';
import { arbitraryDesign } from '#test/oracle/arbitrary-build.ts';
import { copyOf, roomy, verdictOf, type File } from './change-design.ts';

const SEED = Number(process.env['LAW_SEED'] ?? 20261125);
/** Some in the suite, for time; more where LAW_RUNS asks for them. */
const SOME_RUNS = 10;
/** Millimetres: sight lines are floating point. */
const TOLERANCE = 0.000_01;

export const VOLTAGE = { between: ['pri', 'out'], rms: '250 V', peak: '500 V', frequency: '65 kHz' };

export type Complain = (before: Verdict, after: Verdict) => readonly string[];

/** `changes` makes one file or more of one; each run takes one of them. Complains with the seed and the smallest build. */
export function check(
  changes: (file: File) => readonly File[],
  complain: Complain,
  prepare: (file: File) => File = (file) => file,
  someRuns = SOME_RUNS,
): void {
  const allRuns = Number(process.env['LAW_RUNS'] ?? someRuns);
  // comparisons that say something a law must have made
  const leastCompared = allRuns / 5;
  let compared = 0;
  let tried = 0;
  let runs = 0;
  const property = fc.property(arbitraryDesign, (random) => {
    // goes on only while too few builds had anything to compare
    if (runs >= allRuns && compared >= leastCompared) return;
    runs++;
    const file = prepare(
      copyOf(random, (copy) => {
        copy.workingVoltages = [VOLTAGE];
        roomy(copy);
      }),
    );
    const before = verdictOf(file);
    if (!before || isOverfull(before)) return;
    const all = changes(file);
    const changed = all[tried % all.length];
    const after = changed === undefined ? null : verdictOf(changed);
    if (!after || isOverfull(after) || rowsOf(after) !== rowsOf(before)) return;
    tried++;
    if (saysSomething(before)) compared++;
    expect(complain(before, after)).toEqual([]);
  });
  fc.assert(property, { seed: SEED, numRuns: 4 * allRuns });
  expect(compared, `seed ${SEED}`).toBeGreaterThanOrEqual(leastCompared);
}

/** A pair stands on more than functional insulation, or a path has a length to lose. */
const saysSomething = ({ pairs }: Verdict): boolean =>
  pairs.some(
    ({ required, achieved, paths }) =>
      required !== null && (heightOf(achieved) > 1 || paths.some(({ length }) => (length ?? 0) > 1)),
  );

const isOverfull = ({ fit }: Verdict): boolean => fit.height.used > fit.height.available;

/** Rows of the windings; a layer of tape more or less does not count. */
const rowsOf = ({ fit }: Verdict): string =>
  fit.chambers
    .map(({ layers }) =>
      layers
        .filter(({ turnsPerRow }) => turnsPerRow > 0)
        .map(({ rows }) => rows)
        .join(),
    )
    .sort()
    .join(';');

export const overCore = (over: readonly string[] | undefined): boolean => over?.includes('core') ?? false;

/** Pairs that reach less after the change, of those that count. */
export function lowered(
  before: Verdict,
  after: Verdict,
  counts: (pair: PairVerdict) => boolean,
): readonly string[] {
  return after.pairs.flatMap((pair, i) => {
    const was = before.pairs[i]!;
    const lower = heightOf(pair.achieved) < heightOf(was.achieved);
    return counts(pair) && lower ? [`${pair.between.join('-')} ${was.achieved} to ${pair.achieved}`] : [];
  });
}

/** Printed paths that are shorter after the change; those over the core only where `core` asks for them. */
export function shortened(
  before: Verdict,
  after: Verdict,
  core: boolean,
  counts: (path: PairVerdict['paths'][number]) => boolean = () => true,
): readonly string[] {
  return after.pairs.flatMap((pair, i) =>
    pair.paths.flatMap((path, j) => {
      if (path.length === null || (overCore(path.over) && !core) || !counts(path)) return [];
      const was = before.pairs[i]!.paths[j]!.length ?? Infinity;
      const name = `${pair.between.join('-')} ${path.metric} ${path.plies} plies`;
      return path.length < was - TOLERANCE ? [`${name}: ${was} to ${path.length} in ${path.section}`] : [];
    }),
  );
}

/** One file for every layer of a kind, that layer changed. */
export function eachLayer(
  kind: string,
  change: (copy: File, at: number) => unknown,
): (file: File) => readonly File[] {
  return (file) =>
    file.layers.flatMap((layer: File, at: number) =>
      layer.kind === kind ? [copyOf(file, (copy) => void change(copy, at))] : [],
    );
}
