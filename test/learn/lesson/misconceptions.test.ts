// Every common misconception that a lesson can answer has one, which says so; the others are told elsewhere.

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import { PAGES } from '#state/app/page-list.ts';
import { terms } from '#words/glossary/terms.ts';
import { misconceptions } from './misconceptions.ts';

const lessons = new Map(
  readdirSync('static/lessons').map((file) => [
    file.replace(/\.json$/, ''),
    readFileSync(`static/lessons/${file}`, 'utf8'),
  ]),
);

/** All that a pupil reads of a lesson. */
function textOf(lesson: string): string {
  const json = JSON.parse(lessons.get(lesson) ?? '{}') as Record<string, unknown>;
  return JSON.stringify({ ...json, build: undefined });
}

describe('misconceptions', () => {
  it('should each stand once', () => {
    expect(new Set(misconceptions.map(({ id }) => id)).size).toBe(misconceptions.length);
  });

  it.each(misconceptions.filter(({ lesson }) => lesson !== null))(
    'should be answered by a lesson that speaks of it: $id',
    ({ lesson, speaks }) => {
      expect([...lessons.keys()]).toContain(lesson);
      expect(textOf(lesson!)).toMatch(speaks as RegExp);
    },
  );

  it.each(misconceptions.filter(({ lesson }) => lesson === null))(
    'should say why no lesson can answer it, and lead to a page or word that there is: $id',
    ({ speaks, at }) => {
      expect(typeof speaks === 'string' && speaks.length > 20).toBe(true);
      if (at === undefined) throw new Error('it leads nowhere');
      if ('word' in at) expect(terms.map(({ id }) => id)).toContain(at.word);
      else expect(PAGES.map(({ name }) => name)).toContain(at.page);
    },
  );

  it('should leave no lesson without a question that it answers', () => {
    const asked = new Set(misconceptions.map(({ lesson }) => lesson));
    expect([...lessons.keys()].filter((id) => !asked.has(id))).toEqual([]);
  });
});
