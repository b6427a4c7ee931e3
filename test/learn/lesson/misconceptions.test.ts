// Every common misconception that a lesson can answer has one, which says so; the others are told elsewhere.

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

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

  it('should say of each without a lesson where its answer is', () => {
    for (const { lesson, speaks } of misconceptions)
      if (lesson === null) expect(typeof speaks === 'string' && speaks.length > 5).toBe(true);
  });

  it('should leave no lesson without a question that it answers', () => {
    const asked = new Set(misconceptions.map(({ lesson }) => lesson));
    expect([...lessons.keys()].filter((id) => !asked.has(id))).toEqual([]);
  });
});
