import { describe, expect, it } from 'vitest';
import { readDesign } from '#model/read/read-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { judge } from '#judge/judge.ts';
import { knownIds } from '#judge/fill/known-ids.ts';
import { demos } from '#state/begin/demos.ts';
import { lessons, Walk } from '#state/begin/lessons.svelte.ts';

const gradeOf = (doc: DesignFile): string => {
  const read = readDesign(doc, knownIds);
  if (read.kind === 'bad') throw new Error(read.faults.map(({ says }) => says).join(' '));
  return judge(read.design).verdict.pairs[0]?.achieved ?? '';
};

describe('lessons', () => {
  it('should have a lesson for each build that is one', () => {
    expect(lessons.map(({ id }) => id)).toEqual(
      demos.flatMap(({ id, kind }) => (kind === 'lesson' ? [id] : [])),
    );
  });

  for (const { id, steps } of lessons)
    it(`should change the grade on the way through ${id}`, async () => {
      const start = await demos.find((demo) => demo.id === id)?.load();
      if (start === undefined) throw new Error(id);
      const grades = [gradeOf(start)];
      let doc = start;
      for (const { apply } of steps) grades.push(gradeOf((doc = apply(doc))));
      expect(new Set(grades).size, grades.join(', ')).toBeGreaterThan(1);
    });

  it('should point out the layers that a step changes', async () => {
    const start = await demos.find(({ id }) => id === 'lesson-enamel')?.load();
    const lesson = lessons.find(({ id }) => id === 'lesson-enamel');
    if (start === undefined || lesson === undefined) throw new Error('no lesson');
    const walk = new Walk(lesson);
    const thicker = walk.take('basic', start);
    expect(walk.changed).toEqual([0, 1]);
    walk.next();
    expect(walk.changed).toEqual([]);
    walk.take('basic', thicker);
    expect(walk.changed).toEqual([1]);
  });

  it('should show that thicker enamel gives no more than enamel', async () => {
    const start = await demos.find(({ id }) => id === 'lesson-enamel')?.load();
    const step = lessons.find(({ id }) => id === 'lesson-enamel')?.steps[0];
    if (start === undefined || step === undefined) throw new Error('no lesson');
    expect(gradeOf(step.apply(start))).toBe(gradeOf(start));
  });
});
