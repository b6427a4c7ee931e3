// What a few typed words mean on the page: a field of the build, a page, a term. All words must be there, in any order.

import { fieldPath } from '#model/field-path.ts';
import { fieldWords, type Named } from '#words/design/field-words.ts';
import { fileLengthWords } from '#words/text/file-length.ts';
import { findTerms } from '#words/glossary/find-terms.ts';
import { PAGES, type PageName } from '#state/app/page-list.ts';

export type Found =
  | { readonly kind: 'field'; readonly path: string; readonly says: string; readonly value: string }
  | { readonly kind: 'page'; readonly name: PageName; readonly says: string }
  | { readonly kind: 'term'; readonly id: string; readonly says: string };

/** So many of each kind. */
const MOST = 8;
/** Longer values are photographs and notes. */
const SHORT = 60;

/** `doc`: the build as its file stands, faults and all. Nothing typed finds nothing. */
export function findAll(doc: object, typed: string): readonly Found[] {
  const words = typed.trim().toLowerCase().split(/\s+/);
  if (words[0] === '') return [];
  const isMeant = (text: string): boolean => words.every((word) => text.toLowerCase().includes(word));
  const pages = PAGES.filter(({ title }) => isMeant(title)).map(({ name, title }) => ({
    kind: 'page' as const,
    name,
    says: title,
  }));
  const all = fieldsOf(doc);
  const called = all.filter(({ says }) => isMeant(says));
  // what only its figure fits comes after what is called that
  const holding = all.filter(({ says, value }) => !isMeant(says) && isMeant(`${says} ${value}`));
  const fields = [...called, ...holding];
  const { terms, isNear } = findTerms(typed);
  const named = isNear ? [] : terms.map(({ id, term }) => ({ kind: 'term' as const, id, says: term }));
  return [...pages.slice(0, MOST), ...fields.slice(0, MOST), ...named.slice(0, MOST)];
}

function fieldsOf(doc: object): readonly Extract<Found, { kind: 'field' }>[] {
  const leaves = (value: unknown, keys: readonly PropertyKey[]): readonly [string, string][] => {
    if (isQuantity(value)) return [[fieldPath(keys), `${value.value} ± ${value.plusMinus}`]];
    if (Array.isArray(value)) return value.flatMap((each, k) => leaves(each, [...keys, k]));
    if (typeof value === 'object' && value !== null)
      return Object.entries(value).flatMap(([key, each]) => leaves(each, [...keys, key]));
    const said = typeof value === 'boolean' ? (value ? 'yes' : 'no') : String(value);
    return said.length > SHORT ? [] : [[fieldPath(keys), said]];
  };
  return leaves(doc, []).map(([path, value]) => ({
    kind: 'field',
    path,
    says: fieldWords(doc as Named, path),
    value: value.split(' ± ').map(spoken).join(' ± '),
  }));
}

/** A length in the unit of the page. */
const spoken = (value: string): string => (/^[\d.]+ mm$/.test(value) ? fileLengthWords(value) : value);

/** One field, however it is written. */
const isQuantity = (value: unknown): value is { readonly value: unknown; readonly plusMinus: unknown } =>
  typeof value === 'object' && value !== null && 'value' in value && 'plusMinus' in value;
