// Pieces of HTML. Text is escaped on its way in; what is already markup is marked as such and only so let through.

import { escapeText } from '#words/text/escape-text.ts';

/** Markup made here, never text from a file. */
export interface Markup {
  readonly markup: string;
}

export type Content = string | Markup | null | readonly Content[];

const VOID = new Set(['br', 'hr', 'meta', 'img', 'input']);

export function tag(
  name: string,
  attributes: Readonly<Record<string, string | null>>,
  ...content: readonly Content[]
): Markup {
  const text = Object.entries(attributes)
    .flatMap(([key, value]) => (value === null ? [] : [` ${key}="${escapeText(value)}"`]))
    .join('');
  if (VOID.has(name)) return { markup: `<${name}${text}>` };
  return { markup: `<${name}${text}>${content.map(flat).join('')}</${name}>` };
}

export const raw = (markup: string): Markup => ({ markup });

function flat(content: Content): string {
  if (content === null) return '';
  if (typeof content === 'string') return escapeText(content);
  if ('markup' in content) return content.markup;
  return content.map(flat).join('');
}

/** A heading with what follows it, kept together on paper; nothing at all where nothing follows. */
export function block(title: Content, ...content: readonly Content[]): Markup | null {
  if (content.every((each) => each === null || (Array.isArray(each) && each.length === 0))) return null;
  return tag('section', {}, tag('h2', {}, title), ...content);
}

/** The same, never cut by the end of a page: for what is short. */
export function wholeBlock(title: Content, ...content: readonly Content[]): Markup | null {
  const inner = block(title, ...content);
  return inner === null ? null : tag('div', { class: 'whole' }, inner);
}

export interface Column {
  readonly title: string;
  /** Figures stand under each other. */
  readonly figures?: boolean;
  /** Kept on one line. */
  readonly tight?: boolean;
}

/** Null where there are no rows. */
export function table(
  columns: readonly Column[],
  rows: readonly (readonly Content[])[],
  kind: string | null = null,
): Markup | null {
  if (rows.length === 0) return null;
  const lines = rows.map((row) =>
    tag(
      'tr',
      {},
      columns.map((column, k) => cell(row[k] ?? null, column)),
    ),
  );
  return tag('table', { class: kind }, headOf(columns), tag('tbody', {}, lines));
}

function headOf(columns: readonly Column[]): Markup | null {
  if (columns.every(({ title }) => title === '')) return null;
  // a column without a title has no head cell: an empty one would be read out as one
  const cells = columns.map((column) =>
    column.title === '' ? tag('td', {}) : tag('th', { scope: 'col', class: classOf(column) }, column.title),
  );
  return tag('thead', {}, tag('tr', {}, cells));
}

/** Each cell carries its head: on a narrow screen the row stands as a list. */
const cell = (content: Content, { title, ...column }: Column): Markup =>
  tag('td', { class: classOf(column), 'data-head': title === '' ? null : title }, content);

const classOf = ({ figures, tight }: Omit<Column, 'title'>): string | null =>
  figures === true ? 'figure' : tight === true ? 'tight' : null;
