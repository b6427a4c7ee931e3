// The term under the pointer, if there is one: the letters themselves, not the space beside a line.

import { termsIn } from '#words/glossary/terms-in.ts';
import type { StandingTerm } from './standing-terms.ts';

export function termAt(event: PointerEvent | MouseEvent): StandingTerm | null {
  const target = event.composedPath()[0];
  if (
    !(target instanceof Element) ||
    target.closest('svg, input, textarea, select, [data-term-note]') !== null
  )
    return null;
  for (const text of target.childNodes) {
    if (!(text instanceof Text)) continue;
    const found = termsIn(text.data).find((each) => isOver({ ...each, text }, event));
    if (found !== undefined) return { ...found, text };
  }
  return null;
}

const isOver = (standing: StandingTerm, { clientX, clientY }: MouseEvent): boolean =>
  boxesOf(standing).some(
    ({ left, right, top, bottom }) =>
      clientX >= left && clientX <= right && clientY >= top && clientY <= bottom,
  );

/** Where its letters are on the screen, a box for each line. */
export function boxesOf({ text, from, to }: StandingTerm): readonly DOMRect[] {
  if (to > text.data.length) return [];
  const range = document.createRange();
  range.setStart(text, from);
  range.setEnd(text, to);
  return [...range.getClientRects()];
}
