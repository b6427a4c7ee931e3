// Words in other languages: each with the number of its entry, of a term that there is, in the script of its language.

import { describe, expect, it } from 'vitest';

import { findTerms } from '#words/glossary/find-terms.ts';
import { termPieces } from '#words/glossary/term-pieces.ts';
import { terms } from '#words/glossary/terms.ts';
import { vocabulary } from '#words/glossary/vocabulary.ts';

const entries = Object.entries(vocabulary).map(([id, entry]) => ({ id, ...entry }));
const HAN = /\p{Script=Han}/u;
const JAPANESE = /[\p{Script=Han}\p{Script=Katakana}\p{Script=Hiragana}]/u;
const LATIN = /^[\p{Script=Latin}' ,()-]+$/u;

describe('vocabulary', () => {
  it('should have the words that were found, each under a term and an entry of its own', () => {
    expect(entries.length).toBeGreaterThanOrEqual(44);
    const ids = new Set(terms.map(({ id }) => id));
    expect(entries.filter(({ id }) => !ids.has(id))).toEqual([]);
    expect(new Set(entries.map(({ ref }) => ref)).size).toBe(entries.length);
  });

  it.each(entries)('should say where it stands, and under which English name: $id', (entry) => {
    expect(entry.ref).toMatch(/^\d{3}-\d{2}-\d{2}$/);
    expect(entry.published).toMatch(/^(19|20)\d\d-(0[1-9]|1[0-2])$/);
    expect(termPieces(entry.en.replace('touch-', 'touch ')).map(({ term }) => term)).toContain(entry.id);
  });

  it.each(entries)('should be written in the script of each language: $id', ({ de, fr, es, it, zh, ja }) => {
    const latin = [de, fr, es, it].filter((name) => name !== undefined);
    expect(latin.length).toBeGreaterThanOrEqual(2);
    for (const name of latin) expect(name).toMatch(LATIN);
    for (const name of [zh, ja]) expect(name ?? '').toBe(name?.trim() ?? '');
    if (zh !== undefined) expect(zh).toMatch(HAN);
    if (ja !== undefined) expect(ja).toMatch(JAPANESE);
  });

  it('should find a term by its name in any of them', () => {
    for (const { id, de, fr, ja } of entries)
      for (const name of [de, fr, ja].filter((each) => each !== undefined))
        expect(findTerms(name).terms.map((term) => term.id)).toContain(id);
  });
});
