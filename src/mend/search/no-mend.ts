// Why there is no mend: nothing needs one, a fact is missing that no act gives, or no act of the trade reaches it.

import type { Verdict } from '#judge/verdict/verdict.ts';

export type NoMend =
  /** Nothing needs mending. */
  | { readonly why: 'meets' }
  /** These pairs stay not shown whatever is mended: so much is not known. */
  | {
      readonly why: 'unknown';
      readonly pairs: readonly (readonly [string, string])[];
      readonly fields: readonly string[];
    }
  /** No act of the trade reaches it: these kinds of spots stay. */
  | { readonly why: 'no-act'; readonly spots: readonly string[] }
  /** The search ended before anything was found. */
  | { readonly why: 'stopped' };

/** Nothing falls short; what is not shown is for want of facts. */
export const settled = (first: Verdict | null): NoMend =>
  first === null || first.verdict === 'meets' ? { why: 'meets' } : openOf(first);

export function noneOf(first: Verdict, deadEnds: readonly string[], isOut: boolean): NoMend {
  const unknown = openOf(first);
  if (unknown.pairs.length > 0 && unknown.fields.length > 0) return unknown;
  if (isOut && deadEnds.length === 0) return { why: 'stopped' };
  const spots = deadEnds.length > 0 ? deadEnds : first.weakSpots.map(({ kind }) => kind);
  return { why: 'no-act', spots: [...new Set(spots)] };
}

/** What a judged build leaves open: pairs that are not shown, and the figures that would decide them. */
export function openOf(verdict: Verdict): Extract<NoMend, { why: 'unknown' }> {
  const fields = verdict.assumptions.filter(({ decides }) => decides).map(({ field }) => field);
  const pairs = verdict.pairs.filter((pair) => pair.verdict === 'not-shown').map(({ between }) => between);
  return { why: 'unknown', pairs, fields: [...new Set(fields)] };
}
