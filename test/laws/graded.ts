// A build judged for its grades alone, at worst and at best: what the laws of unknowns compare. No printed path, no spot, no
// decider is worked out, so that many builds can be judged in little time.

import { ruleBook } from '#books/shelf.ts';
import { judgeBest } from '#judge/cases/best-case.ts';
import { judgeWorst } from '#judge/cases/worst-case.ts';
import { judgingOf } from '#judge/once/judging.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import { readDesign } from '#model/read/read-design.ts';
import { chamberFits } from '#solver/placing/chamber-fits.ts';
import { heightOf, reaches } from '#standards/ladder.ts';
import type { Grade } from '#units/terms.ts';
import type { File } from './change-design.ts';

export interface GradedPair {
  readonly name: string;
  readonly between: readonly string[];
  readonly needed: Grade | null;
  readonly atWorst: Grade;
  readonly atBest: Grade;
}

export interface Graded {
  /** Those that ask for something. */
  readonly pairs: readonly GradedPair[];
  /** Of every winding, as one text. */
  readonly rows: string;
  readonly isOverfull: boolean;
}

const cache = new PathCache();

/** Null where the file is not valid. */
export function graded(file: File): Graded | null {
  const read = readDesign(JSON.parse(JSON.stringify(file)), knownIds);
  if (read.kind === 'bad') return null;
  const { design } = read;
  const judging = judgingOf(ruleBook(design.rules)!, cache, { printed: false, reachOnly: false });
  const worst = judgeWorst(judging, design);
  const best = judgeBest(judging, design, worst);
  const rows = chamberFits(worst.nominal.build).flatMap(({ layers }) =>
    layers.filter(({ turnsPerRow }) => turnsPerRow > 0).map((layer) => layer.rows),
  );
  const pairs = worst.pairs.flatMap(({ between, needed, achieved }, i) =>
    needed === null
      ? []
      : [{ name: between.join('-'), between, needed, atWorst: achieved, atBest: best[i]!.achieved }],
  );
  return { pairs, rows: rows.join(), isOverfull: worst.overfull !== null };
}

/** Pairs that reach less at worst in `after`. */
export function loweredPairs(
  before: Graded,
  after: Graded,
  counts: (pair: GradedPair) => boolean = () => true,
): readonly string[] {
  return after.pairs.flatMap((pair) => {
    const was = before.pairs.find(({ name }) => name === pair.name);
    return was && counts(pair) && heightOf(pair.atWorst) < heightOf(was.atWorst)
      ? [`${pair.name} ${was.atWorst} to ${pair.atWorst}`]
      : [];
  });
}

/** Where the known build reaches less at worst than the open one, or more than the open one could at best. */
export function beaten(known: Graded, open: Graded): readonly string[] {
  const hopeless = open.pairs.flatMap(({ name, needed, atBest }) => {
    const was = known.pairs.find((pair) => pair.name === name);
    // what is enough is not looked at further
    return was && !reaches(atBest, needed) && heightOf(atBest) < heightOf(was.atWorst)
      ? [`${name} at best ${atBest}, known to be ${was.atWorst}`]
      : [];
  });
  return [...loweredPairs(open, known), ...hopeless];
}
