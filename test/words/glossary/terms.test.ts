// The glossary holds together: every neighbour exists, no two terms share a name, each says one sentence.

import { describe, expect, it } from 'vitest';

import { terms } from '#words/glossary/terms.ts';

describe('glossary', () => {
  it('should name each term once, under whatever name', () => {
    const names = terms.flatMap(({ term, also }) => [term, ...also]).map((name) => name.toLowerCase());
    expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
    expect(new Set(terms.map(({ id }) => id)).size).toBe(terms.length);
  });

  it('should lead only to terms that there are, and never to itself', () => {
    const ids = terms.map(({ id }) => id);
    const strange = terms.flatMap(({ id, near }) => near.filter((to) => !ids.includes(to) || to === id));
    expect(strange).toEqual([]);
  });

  it.each(terms)('should say one sentence: $id', ({ says }) => {
    expect(says).toMatch(/^[A-Z][^!?]*\.$/);
    expect(says.length).toBeLessThan(160);
    expect(says.slice(0, -1)).not.toContain('. ');
  });
});
