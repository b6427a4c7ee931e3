// A paper shown on the page under its own style: in a shadow tree, so that neither touches the other's.
// The style is set as an object, since the page's policy allows no inline style; what a paper would run is left out.

export function showPaper(host: HTMLElement, html: string): void {
  const tree = host.shadowRoot ?? host.attachShadow({ mode: 'open' });
  const [whole = '', css = ''] = /<style>([\s\S]*?)<\/style>/.exec(html) ?? [];
  const paper = new DOMParser().parseFromString(html.replace(whole, ''), 'text/html');
  paper.querySelectorAll('script').forEach((script) => script.remove());
  // the page that shows it has its own
  paper.querySelectorAll('main').forEach((main) => main.replaceWith(...main.childNodes));
  const body = document.createElement('div');
  body.className = `body ${paper.body.className}`;
  body.append(...paper.body.childNodes);
  const style = new CSSStyleSheet();
  style.replaceSync(css.replaceAll(/\bhtml(?= \{)/g, ':host').replaceAll(/\bbody(?=[ .])/g, '.body'));
  tree.adoptedStyleSheets = [style];
  tree.replaceChildren(body);
}
