// The term that the key goes on to: the one after the last shown, or the first at or behind what has the focus. Only what is seen
// counts, each term once in a row.

import { standingTerms, type StandingTerm } from './standing-terms.ts';

export function nextTerm(from: Element | null, last: StandingTerm | null, step: 1 | -1): StandingTerm | null {
  const standing = standingTerms(document).filter(
    ({ text }) => text.parentElement?.checkVisibility({ visibilityProperty: true }) === true,
  );
  if (standing.length === 0) return null;
  const before = last === null ? -1 : standing.findIndex((each) => isSame(each, last));
  const start = before < 0 ? startAt(standing, from) - (step === 1 ? 1 : 0) : before;
  const at = (place: number): StandingTerm => standing.at(place % standing.length)!;
  // past others of the same term beside it
  for (let i = 1; i <= standing.length; i += 1) {
    const next = at(start + i * step);
    if (next.term !== last?.term) return next;
  }
  return at(start + step);
}

const isSame = (a: StandingTerm, b: StandingTerm): boolean => a.text === b.text && a.from === b.from;

/** Place of the first term in what has the focus or in its label, else of the first behind it. */
function startAt(standing: readonly StandingTerm[], from: Element | null): number {
  if (from === null || from === document.body) return Math.max(0, inMain(standing));
  const labels = from instanceof HTMLInputElement ? [...(from.labels ?? [])] : [];
  const own = standing.findIndex(({ text }) => [from, ...labels].some((each) => each.contains(text)));
  if (own >= 0) return own;
  const behind = standing.findIndex(
    ({ text }) => (from.compareDocumentPosition(text) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0,
  );
  return Math.max(0, behind);
}

const inMain = (standing: readonly StandingTerm[]): number =>
  standing.findIndex(({ text }) => text.parentElement?.closest('main') != null);
