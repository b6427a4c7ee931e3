// A build that a question is asked of, and who judges a changed one.

import type { Verdict } from '#judge/verdict/verdict.ts';
import type { PairVerdict } from '#judge/verdict/pair.ts';
import type { DesignFile } from '#model/schema/schema.ts';

export type Judges = (doc: DesignFile) => Verdict;

/** What a question is asked of. */
export interface Asked {
  readonly doc: DesignFile;
  readonly verdict: Verdict;
  readonly pair: PairVerdict;
  readonly judgeOf: Judges;
}
