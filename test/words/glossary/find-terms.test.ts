// Finding a word by a few letters: names before sentences, other languages too, the nearest spellings where nothing has them.

import { describe, expect, it } from 'vitest';

import { findTerms } from '#words/glossary/find-terms.ts';
import { terms } from '#words/glossary/terms.ts';

const ids = (typed: string) => findTerms(typed).terms.map(({ id }) => id);

describe('finding a word', () => {
  it('should give all of them for nothing typed, in the order of the alphabet', () => {
    const names = findTerms(' ').terms.map(({ term }) => term);
    expect(names).toHaveLength(terms.length);
    expect(names).toEqual(names.toSorted((a, b) => a.localeCompare(b, 'en')));
  });

  it('should find by name, by another name and by another language', () => {
    expect(ids('creep')[0]).toBe('creepage-distance');
    expect(ids('cheek')).toContain('flange');
    expect(ids('Kriechstrecke')).toEqual(['creepage-distance']);
  });

  it('should put those that are called so before those that only say so', () => {
    const found = ids('tape');
    expect(found.indexOf('margin-tape')).toBeLessThan(found.indexOf('inset'));
  });

  it('should offer three that are spelled alike where nothing is found', () => {
    const found = findTerms('sleve');
    expect(found.isNear).toBe(true);
    expect(found.terms).toHaveLength(3);
    expect(found.terms[0]?.id).toBe('sleeve');
  });
});
