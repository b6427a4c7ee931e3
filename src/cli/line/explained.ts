// The worked sheet of the worst pair or of the named one.

import type { Design } from '#model/design.ts';
import { circuitLooks } from '#words/design/circuit-look.ts';
import { explainText } from '#words/derivation/explain-text.ts';
import { worstFirst } from '#words/verdict/pair-words.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';

/** `asked`: two ids with a comma between, or empty for the worst pair. Null where there is no such pair. */
export function explained(design: Design, verdict: Verdict, asked: string): readonly string[] | null {
  const [worst] = worstFirst(verdict);
  const ids = asked.split(',');
  const named = verdict.pairs.find(
    ({ between }) => ids.length === 2 && between.every((id) => ids.includes(id)),
  );
  const pair = asked === '' ? worst : named;
  if (pair === undefined) return asked === '' ? [] : null;
  return [`\n${explainText(pair, circuitLooks(design.circuits))}`];
}
