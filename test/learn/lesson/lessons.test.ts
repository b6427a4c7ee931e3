// Every lesson that comes with the page, by the real solver: what it begins with does not do, its solution does, and the
// solution without the point of the lesson does not.

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import { knownIds } from '#judge/conductors/known-ids.ts';
import { judge } from '#judge/judging/judge.ts';
import { goalMet } from '#learn/lesson/goal-met.ts';
import { applyLessonEdits } from '#learn/lesson/lesson-edits.ts';
import { type Lesson } from '#learn/lesson/lesson-schema.ts';
import { readLesson } from '#learn/lesson/read-lesson.ts';
import { readDesign } from '#model/read/read-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';

const FOLDER = new URL('../../../static/lessons/', import.meta.url);

const lessons = readdirSync(FOLDER).map((name) => {
  const read = readLesson(JSON.parse(readFileSync(new URL(name, FOLDER), 'utf8')), knownIds);
  if (read.kind === 'bad') throw new Error(`${name}: ${read.faults[0]?.says}`);
  return { name, lesson: read.lesson };
});

function isDone(lesson: Lesson, doc: DesignFile): boolean {
  const read = readDesign(doc, knownIds);
  if (read.kind === 'bad') throw new Error(read.faults[0]?.says);
  return goalMet(lesson.task.goal, { verdict: judge(read.design).verdict, doc, start: lesson.build });
}

describe('lessons', () => {
  it('should be at least fourteen, each under its own name', () => {
    expect(lessons.length).toBeGreaterThanOrEqual(14);
    for (const { name, lesson } of lessons) expect(name).toBe(`${lesson.id}.json`);
  });

  it.each(lessons)('should not be done as it begins: $name', ({ lesson }) => {
    expect(isDone(lesson, lesson.build)).toBe(false);
  });

  it.each(lessons)('should be done by its solution: $name', ({ lesson }) => {
    expect(isDone(lesson, applyLessonEdits(lesson.build, lesson.solution))).toBe(true);
  });

  it.each(lessons)('should be undone without its point: $name', ({ lesson }) => {
    const solved = applyLessonEdits(lesson.build, lesson.solution);
    expect(isDone(lesson, applyLessonEdits(solved, lesson.point))).toBe(false);
  });
});
