// Why there is no mend: nothing needs one, a fact is missing that no act gives, or no act of the trade reaches it.

import type { WeakSpot } from '#judge/verdict/spot.ts';
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
  /** No act of the trade reaches it: these spots stay, one of each kind. */
  | { readonly why: 'no-act'; readonly spots: readonly WeakSpot[]; readonly beyond: Beyond | null }
  /** The search ended before anything was found. */
  | { readonly why: 'stopped' };

/** Where the rule book's tables end: no length, however large, is shown to do. */
export interface Beyond {
  readonly quantity: string;
  readonly place: string;
}

/** Nothing falls short; what is not shown is for want of facts. */
export const settled = (first: Verdict | null): NoMend =>
  first === null || first.verdict === 'meets' ? { why: 'meets' } : openOf(first);

export function noneOf(first: Verdict, deadEnds: readonly WeakSpot[], isOut: boolean): NoMend {
  const unknown = openOf(first);
  if (unknown.pairs.length > 0 && unknown.fields.length > 0) return unknown;
  if (isOut && deadEnds.length === 0) return { why: 'stopped' };
  const spots = deadEnds.length > 0 ? deadEnds : first.weakSpots;
  const ofKind = new Map(spots.map((spot) => [spot.kind, spot]));
  return { why: 'no-act', spots: [...ofKind.values()], beyond: beyondOf(first) };
}

function beyondOf({ pairs }: Verdict): Beyond | null {
  const steps = pairs.map(({ limiting }) => limiting?.because);
  const found = steps.find((step) => step?.step === 'out-of-range');
  return found?.step === 'out-of-range'
    ? { quantity: found.values.quantity, place: found.values.place }
    : null;
}

/** What a judged build leaves open: pairs that are not shown, and the figures that would decide them. */
export function openOf(verdict: Verdict): Extract<NoMend, { why: 'unknown' }> {
  const fields = verdict.assumptions.filter(({ decides }) => decides).map(({ field }) => field);
  const pairs = verdict.pairs.filter((pair) => pair.verdict === 'not-shown').map(({ between }) => between);
  return { why: 'unknown', pairs, fields: [...new Set(fields)] };
}
