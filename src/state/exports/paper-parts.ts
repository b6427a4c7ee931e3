// A report taken apart so that a page of strict policy can hold it: its style apart from its markup, nothing in it that
// would run. The policy would report even a style that is never shown, so it goes before the markup is read.

export interface PaperParts {
  readonly css: string;
  readonly body: HTMLElement;
}

export function paperParts(html: string): PaperParts {
  const [whole = '', css = ''] = /<style>([\s\S]*?)<\/style>/.exec(html) ?? [];
  const { body } = new DOMParser().parseFromString(html.replace(whole, ''), 'text/html');
  body.querySelectorAll('script').forEach((script) => script.remove());
  return { css, body };
}
