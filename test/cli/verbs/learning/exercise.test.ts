// Exercises and their marking on the command line, as a teacher runs them.

import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';

import { exerciseOf } from '#cli/verbs/learning/exercise.ts';
import { makeExercise } from '#learn/exercise/make-exercise.ts';
import { templateOf } from '#learn/exercise/templates.ts';
import { markFiles } from '#cli/verbs/learning/mark.ts';

const folder = mkdtempSync(join(tmpdir(), 'layerwright-'));
afterAll(() => rmSync(folder, { recursive: true }));

const sheetOf = (...words: readonly string[]): string => {
  const out = join(folder, 'sheet.html');
  expect(exerciseOf([...words, '--out', out])).toMatchObject({ code: 0, err: '' });
  return readFileSync(out, 'utf8');
};

const file = (name: string, content: unknown): string => {
  const path = join(folder, name);
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
  return path;
};

describe('exercise', () => {
  it('should ask without telling, and answer on a sheet of its own', () => {
    const [asked, answered] = [
      sheetOf('margins', '--seed', '4182'),
      sheetOf('margins', '--seed', '4182', '--answers'),
    ];
    expect(asked).toContain('How long is the shortest way');
    expect(asked.match(/3\.78 (mm|of)/)).toBeNull();
    expect(answered).toContain('3.78 mm');
    expect(answered).toContain('only one margin counted');
  });

  it('should name those that there are', () => {
    expect(exerciseOf(['nothing'])).toMatchObject({
      code: 2,
      err: expect.stringContaining('margins, plies, leads'),
    });
    expect(exerciseOf(['margins', '--seed', '-1']).code).toBe(2);
  });
});

describe('mark', () => {
  const answers = { format: 'layerwright-answers/1', exercise: 'margins', seed: 4182, pupil: 'seat 1' };
  const good = file('good.json', { ...answers, answers: { q1: '7 mm', q2: '2.08 mm', q3: 'basic' } });

  it('should mark a class at once and go on past a bad file', () => {
    const { code, out, err } = markFiles([good, file('bad.json', 'no json'), good]);
    expect(code).toBe(2);
    expect(out).toHaveLength(2);
    expect(out[0]).toContain('seat 1: 2 of 10; q2 2.08 mm (only one margin counted)');
    expect(err).toContain('bad.json: the file is no JSON');
  });

  it('should mark thirty files at once, each by its own sheet, with every bad one told by its own fault', () => {
    const exercises = [100, 101, 102].map((seed) => makeExercise(templateOf('margins')!, seed)!);
    const pupils = Array.from({ length: 24 }, (_, i) => {
      // neighbours have other numbers: what is right is made anew from the seed
      const seed = 100 + (i % 3);
      const exercise = exercises[i % 3]!;
      const rights = Object.fromEntries(
        exercise.questions.slice(0, i % 7).map(({ id, answer }) => [id, String(answer.value)]),
      );
      const points = exercise.questions.slice(0, i % 7).reduce((sum, each) => sum + each.points, 0);
      const sheet = { ...answers, seed, pupil: `seat ${i + 1}`, answers: rights };
      return { path: file(`seat-${i + 1}.json`, sheet), pupil: sheet.pupil, points };
    });
    const bad = [
      [file('cut.json', '{"format": "layerwright-ans'), 'the file is no JSON'],
      [
        file('design.json', { format: 'layerwright-design/1' }),
        'format is "layerwright-design/1"; expected "layerwright-answers/1"',
      ],
      [
        file('other.json', { ...answers, exercise: 'knots', answers: {} }),
        'exercise is knots; expected one of',
      ],
      [
        file('strange.json', { ...answers, answers: { q9: 'basic' } }),
        'answers.q9 is q9; expected one of q1',
      ],
      [
        file('nameless.json', { ...answers, pupil: ' ', answers: {} }),
        'pupil is " "; expected a name or a seat',
      ],
      [join(folder, 'absent.json'), 'absent.json'],
    ] as const;
    const files = pupils.map(({ path }) => path);
    bad.forEach(([path], i) => files.splice(i * 5, 0, path));
    expect(files).toHaveLength(30);
    const { code, out, err } = markFiles(files);
    expect(code).toBe(2);
    expect(out).toHaveLength(24);
    pupils.forEach(({ pupil, points }, i) => expect(out[i]).toContain(`${pupil}: ${points} of 10`));
    const faults = err.trimEnd().split('\n');
    expect(faults).toHaveLength(6);
    bad.forEach(([path, says], i) => {
      expect(faults[i]).toContain(path);
      expect(faults[i]).toContain(says);
    });
    const rows = JSON.parse(markFiles([...files, '--json']).out.join('')) as { error?: object }[];
    expect(rows.filter(({ error }) => error === undefined)).toHaveLength(24);
    expect(rows).toHaveLength(30);
  });

  it('should give data for a sheet of marks', () => {
    const [row] = JSON.parse(markFiles([good, '--json']).out.join(''));
    expect(row).toMatchObject({ pupil: 'seat 1', points: 2, of: 10 });
  });
});
