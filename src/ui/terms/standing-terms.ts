// Every term that stands on the page as text, in the order of reading, papers in their own trees included. What is drawn, typed
// or told by the note itself is none of it.

import { termsIn } from '#words/glossary/terms-in.ts';

export interface StandingTerm {
  /** Id of the term. */
  readonly term: string;
  readonly text: Text;
  readonly from: number;
  readonly to: number;
}

/** Nothing of what is inside these is read. */
const SKIPPED = 'svg, script, style, textarea, input, select, canvas, pre, code, [data-term-note]';

export function standingTerms(root: Document | ShadowRoot): readonly StandingTerm[] {
  const found: StandingTerm[] = [];
  const isRead = (node: Node): number =>
    node instanceof Element && node.matches(SKIPPED) ? NodeFilter.FILTER_REJECT : NodeFilter.FILTER_ACCEPT;
  const start = root instanceof Document ? root.body : root;
  const walker = document.createTreeWalker(start, NodeFilter.SHOW_ELEMENT | NodeFilter.SHOW_TEXT, isRead);
  for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
    if (node instanceof Text) found.push(...termsIn(node.data).map((each) => ({ ...each, text: node })));
    else if (node instanceof Element && node.shadowRoot !== null)
      found.push(...standingTerms(node.shadowRoot));
  }
  return found;
}
