// Exercises and their marking on the command line, as a teacher runs them.

import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';

import { exerciseOf } from '#cli/verbs/learning/exercise.ts';
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

  it('should give data for a sheet of marks', () => {
    const [row] = JSON.parse(markFiles([good, '--json']).out.join(''));
    expect(row).toMatchObject({ pupil: 'seat 1', points: 2, of: 10 });
  });
});
