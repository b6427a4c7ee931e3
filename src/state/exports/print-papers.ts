// A report on paper: while printing, the document holds its markup under its own style sheet, and the screen is left out.
// The style is set as an object, since the page's policy allows no inline style.

import { paperParts } from './paper-parts.ts';

/** Follows every way of printing, the browser's own menu included; returns what stops following. */
export function printPapers(html: () => string | null): () => void {
  let putBack: (() => void) | null = null;
  const before = (): void => {
    putBack?.();
    const paper = html();
    putBack = paper === null ? null : layOnPaper(paper);
  };
  const after = (): void => {
    putBack?.();
    putBack = null;
  };
  addEventListener('beforeprint', before);
  addEventListener('afterprint', after);
  return () => {
    removeEventListener('beforeprint', before);
    removeEventListener('afterprint', after);
  };
}

/** Returns what takes the paper away again. */
function layOnPaper(html: string): () => void {
  const { css, body } = paperParts(html);
  const paper = document.createElement('div');
  paper.id = 'paper';
  paper.append(...body.childNodes);
  const sheet = new CSSStyleSheet({ media: 'print' });
  sheet.replaceSync(
    `${css}\nbody > :not(#paper) { display: none !important; } #paper { display: block !important; }`,
  );
  const screen = new CSSStyleSheet({ media: 'screen' });
  screen.replaceSync('#paper { display: none; }');
  document.body.append(paper);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet, screen];
  return () => {
    paper.remove();
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter(
      (each) => each !== sheet && each !== screen,
    );
  };
}
