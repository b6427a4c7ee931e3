// One self-contained HTML sheet: head, style, a line with its name, the content, a foot for the screen.

import type { Theme } from '#drawing/scene/palette.ts';
import { raw, tag, type Content } from './markup.ts';
import { style } from './style.ts';

export interface SheetHead {
  /** Of the window; the sheet's own name stands in its first line. */
  readonly title: string;
  readonly name: string;
  readonly about: string;
  readonly theme: Theme;
  readonly foot: { readonly left: string; readonly right: string };
  readonly wide?: boolean;
  /** Made here, never from a file. */
  readonly script?: string;
}

export function sheet(head: SheetHead, ...content: readonly Content[]): string {
  const { left, right } = head.foot;
  const page = tag(
    'html',
    { lang: 'en' },
    tag(
      'head',
      {},
      tag('meta', { charset: 'utf-8' }),
      tag('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
      tag('title', {}, head.title),
      tag('style', {}, raw(style(head.theme, head.foot))),
    ),
    tag(
      'body',
      { class: head.wide === true ? 'wide' : null },
      tag('header', {}, tag('h1', {}, head.name), tag('span', { class: 'to' }, head.about)),
      tag('main', {}, ...content),
      tag('footer', { class: 'screen' }, tag('span', {}, left), tag('span', {}, right)),
      head.script === undefined ? null : raw(`<script>${head.script}</script>`),
    ),
  );
  return `<!doctype html>\n${page.markup}\n`;
}
