// Judges one design file after another, as searches over builds do. The memory of paths lives as long as the judge does, so
// that a file costs what it changes beside the one before.

import type { DesignFile } from '#model/schema/schema.ts';
import { readDesign } from '#model/read/read-design.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { judge, judgePlain, type PlainJudgement } from './judge.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import { judgeShort, type Reached, type ShortJudgement } from './short-judgement.ts';
import { judgeSpots } from './worst-spots.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import type { WeakSpot } from '#judge/verdict/spot.ts';

/** Each answers null where the file would be refused. */
export interface FileJudge {
  readonly whole: (doc: DesignFile) => Verdict | null;
  readonly drawn: (doc: DesignFile) => PlainJudgement | null;
  /** No lengths: whether it meets, and whether anything is left to mend. */
  readonly reach: (doc: DesignFile) => Reached | null;
  /** Lengths of what falls short only. */
  readonly short: (doc: DesignFile) => ShortJudgement | null;
  /** Lengths of all pairs. */
  readonly measured: (doc: DesignFile) => ShortJudgement | null;
  /** Every place where something falls short with all unknowns at worst, worst first. */
  readonly spots: (doc: DesignFile) => readonly WeakSpot[] | null;
}

export function fileJudge(): FileJudge {
  const cache = new PathCache();
  const of =
    <T>(answer: (design: Parameters<typeof judge>[0]) => T) =>
    (doc: DesignFile): T | null => {
      const read = readDesign(doc, knownIds);
      return read.kind === 'bad' ? null : answer(read.design);
    };
  return {
    whole: of((design) => judge(design, cache).verdict),
    drawn: of((design) => judgePlain(design, cache)),
    reach: of((design) => judgeShort(design, cache, 'reach')),
    short: of((design) => judgeShort(design, cache, 'shortfall')),
    measured: of((design) => judgeShort(design, cache, 'lengths')),
    spots: of((design) => judgeSpots(design, cache)),
  };
}
