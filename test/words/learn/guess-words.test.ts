// What was said against what the judge found, on the lesson of the margin: 4.18 of 5.0 mm round the edge, basic of reinforced.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import { knownIds } from '#judge/conductors/known-ids.ts';
import { judge } from '#judge/judging/judge.ts';
import { readDesign } from '#model/read/read-design.ts';
import { differences, guessLines, type Said } from '#words/learn/guess-words.ts';

const pairOf = (lesson: string) => {
  const { build } = JSON.parse(readFileSync(`static/lessons/${lesson}.json`, 'utf8')) as { build: unknown };
  const read = readDesign(build, knownIds);
  if (read.kind === 'bad') throw new Error(read.faults[0]?.says);
  const [pair] = judge(read.design).verdict.pairs.filter(({ required }) => required !== null);
  if (pair === undefined) throw new Error('no pair');
  return pair;
};

const margin = pairOf('margin');
const nothing: Said = { way: null, length: null, grade: null };
const through = { points: [], length: 0.18, plies: 3, isOverCore: false, isAtFlange: false };

describe('what was said', () => {
  it('should stand against what was found, line by line', () => {
    const lines = guessLines(
      ['way', 'length', 'grade'],
      { way: through, length: 0.18, grade: 'reinforced' },
      margin,
    );
    expect(lines).toEqual([
      {
        what: 'way',
        said: 'through the tape',
        is: 'round its edge, at the flange',
        differs: 'other',
        isOther: true,
      },
      { what: 'length', said: '0.18 mm', is: '4.18 mm', differs: '4.00 more', isOther: true },
      { what: 'grade', said: 'reinforced', is: 'basic', differs: 'two lower', isOther: true },
    ]);
  });

  it('should differ in nothing where it is right', () => {
    const round = { ...through, plies: 0, isAtFlange: true };
    const said: Said = { way: round, length: 4.18, grade: 'basic' };
    expect(guessLines(['way', 'length', 'grade'], said, margin).map(({ differs }) => differs)).toEqual([
      'the same',
      'the same',
      'the same',
    ]);
    expect(differences(said, margin)).toEqual([]);
  });

  it('should blame nobody who does not know', () => {
    expect(guessLines(['length'], nothing, margin)).toMatchObject([
      { said: 'not said', differs: '', isOther: false },
    ]);
    expect(differences(nothing, margin)).toEqual([]);
  });

  it('should say from the reasons which piece a length leaves out, and what each grade asks', () => {
    expect(differences({ way: through, length: 2.18, grade: 'reinforced' }, margin)).toEqual([
      'Your line goes through 3 plies; that way is worth reinforced. The weakest way goes through none.',
      'The way is 2.00 + 0.18 + 2.00 = 4.18 mm; yours leaves out “2.00 along the margin”.',
      '4.18 mm stand along surfaces; basic asks 2.5, reinforced 5.0.',
    ]);
  });

  it('should tell of a part that bridges, and of enamel that is no barrier', () => {
    expect(differences({ ...nothing, grade: 'reinforced' }, pairOf('bridge')).join()).toContain('C1');
    expect(differences({ ...nothing, grade: 'reinforced' }, pairOf('enamel')).join()).toContain('functional');
  });
});
