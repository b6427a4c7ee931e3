// What was looked at and left out: small sets of acts that come near and do not do, with what they reach.

import type { ShortJudgement, ShortPair } from '#judge/judging/short-judgement.ts';
import { reaches } from '#standards/ladder.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { changesOf, shapeOf, type Act, type Change } from '#mend/acts/act.ts';

export interface Left {
  readonly changes: readonly Change[];
  /** The coil no longer fits its window. */
  readonly overfull: boolean;
  /** The pair that falls short most; null where only the window is too small. */
  readonly pair: ShortPair | null;
}

const MOST = 5;
/** Of larger sets it tells nothing that one has not come near. */
const MOST_ACTS = 2;

export class LeftOut {
  readonly #doc: DesignFile;
  #nearest: readonly { readonly rank: number; readonly shape: string; readonly left: Left }[] = [];

  constructor(doc: DesignFile) {
    this.#doc = doc;
  }

  add(acts: readonly Act[], { overfull, pairs }: ShortJudgement, rank: number): void {
    if (acts.length > MOST_ACTS) return;
    const short = pairs.filter(({ achieved, needed }) => !reaches(achieved, needed));
    const pair = [...short].sort((a, b) => partOf(a) - partOf(b))[0] ?? null;
    const left: Left = { changes: changesOf(this.#doc, acts), overfull, pair };
    const shape = shapeOf(acts);
    const known = this.#nearest.find((other) => other.shape === shape);
    if (known !== undefined && known.rank <= rank) return;
    this.#nearest = [...this.#nearest.filter((other) => other !== known), { rank, shape, left }]
      .sort((a, b) => a.rank - b.rank)
      .slice(0, MOST);
  }

  nearest(): readonly Left[] {
    return this.#nearest.map(({ left }) => left);
  }
}

const partOf = ({ length, required }: ShortPair): number =>
  length === null || required === null || required === 0 ? 0 : length / required;
