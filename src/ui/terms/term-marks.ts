// The dotted line under terms: once for each in a part of a page, never on what is pressed or leads elsewhere. It is a highlight of
// the browser's own, so that no element is added and no stop of the tab key. A browser without it shows no line; all else works.

import { standingTerms, type StandingTerm } from './standing-terms.ts';

export const TERM_MARKS = 'terms';

/** On paper no word leads anywhere. */
const MARKED =
  '@media screen { ::highlight(terms) { text-decoration: underline dotted var(--ink-third, #5f6b70); text-underline-offset: 3px; } }';

const PARTS = 'section, article, aside, form, fieldset, table, dialog, details, footer, main, li';
/** The head of a page and the line beside its title hold names of builds, in which a word may mean something else. */
const UNMARKED =
  'header, a, button, nav, summary, label:has(input), h1, h1 + p, [role="tab"], [role="button"]';

const AFTER = 250;

/** Watches the page and keeps the marks where the terms are; returns what ends it. */
export function keepTermMarks(): () => void {
  if (typeof CSS === 'undefined' || !('highlights' in CSS)) return () => undefined;
  // there a highlight has the ground of a selection, whatever its rule says
  if (matchMedia('(forced-colors: active)').matches) return () => undefined;
  const line = new CSSStyleSheet();
  line.replaceSync(MARKED);
  document.adoptedStyleSheets.push(line);
  const papers = new Set<ShadowRoot>();
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const mark = (): void => {
    waiting = undefined;
    const standing = standingTerms(document);
    for (const root of papersOf(standing)) {
      if (!root.adoptedStyleSheets.includes(line)) root.adoptedStyleSheets.push(line);
      if (!papers.has(root)) observer.observe(root, WATCHED);
      papers.add(root);
    }
    CSS.highlights.set(TERM_MARKS, new Highlight(...markedOf(standing).map(rangeOf)));
  };
  const observer = new MutationObserver(() => (waiting ??= setTimeout(mark, AFTER)));
  observer.observe(document.body, WATCHED);
  mark();
  return () => {
    observer.disconnect();
    clearTimeout(waiting);
    CSS.highlights.delete(TERM_MARKS);
  };
}

const WATCHED = { childList: true, characterData: true, subtree: true } as const;

const papersOf = (standing: readonly StandingTerm[]): ReadonlySet<ShadowRoot> =>
  new Set(standing.map(({ text }) => text.getRootNode()).filter((root) => root instanceof ShadowRoot));

/** Each term where it stands first in its part of the page. */
function markedOf(standing: readonly StandingTerm[]): readonly StandingTerm[] {
  const seen = new Map<Element | null, Set<string>>();
  return standing.filter(({ text, term }) => {
    const parent = text.parentElement;
    if (parent === null || parent.closest(UNMARKED) !== null) return false;
    const part = parent.closest(PARTS);
    const before = seen.get(part) ?? new Set();
    seen.set(part, before);
    if (before.has(term)) return false;
    before.add(term);
    return true;
  });
}

const rangeOf = ({ text, from, to }: StandingTerm): StaticRange =>
  new StaticRange({ startContainer: text, startOffset: from, endContainer: text, endOffset: to });
