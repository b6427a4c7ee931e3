// A paper shown on the page under its own style: in a shadow tree, so that neither touches the other's.
// The style is set as an object, since the page's policy allows no inline style.

import { paperParts } from '#state/exports/paper-parts.ts';

export function showPaper(host: HTMLElement, html: string): void {
  const tree = host.shadowRoot ?? host.attachShadow({ mode: 'open' });
  const { css, body } = paperParts(html);
  // the page that shows it has its own
  body.querySelectorAll('main').forEach((main) => main.replaceWith(...main.childNodes));
  const paper = document.createElement('div');
  paper.className = `body ${body.className}`;
  paper.append(...body.childNodes);
  const style = new CSSStyleSheet();
  style.replaceSync(css.replaceAll(/\bhtml(?= \{)/g, ':host').replaceAll(/\bbody(?=[ .])/g, '.body'));
  tree.adoptedStyleSheets = [style];
  tree.replaceChildren(paper);
}
