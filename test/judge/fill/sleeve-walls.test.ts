// Two sleeves of one strength and two walls are two solids: a book may ask how thick the wall of each is.

import { describe, expect, it } from 'vitest';
import { ruleBook } from '#books/shelf.ts';
import { WORST } from '#judge/assume/assumption.ts';
import { fillBuild } from '#judge/fill/fill-build.ts';
import { designWith } from '#test/judge/margin-build.ts';

const lead = (wall: string) => ({
  at: 'left',
  exit: 'left',
  way: 'riser',
  sleeve: { wall, into: '5 mm', withstand: '5 kV' },
});

/** Walls of the solids that count as sleeves, nanometres. */
function wallsWith(start: string, finish: string): readonly number[] {
  const design = designWith({ 'windings[0].leads': { start: lead(start), finish: lead(finish) } });
  const { stuffs } = fillBuild(design, ruleBook('iec-60335-1')!, WORST);
  return [...stuffs.values()].filter(({ kind }) => kind === 'sleeve').map(({ thickness }) => thickness);
}

describe('sleeves of one strength', () => {
  it('should be told apart by their walls, whichever lead comes first', () => {
    expect(wallsWith('1.2 mm', '0.5 mm')).toEqual([1_200_000, 500_000]);
    expect(wallsWith('0.5 mm', '1.2 mm')).toEqual([500_000, 1_200_000]);
  });

  it('should be one solid where their walls are alike', () => {
    expect(wallsWith('0.5 mm', '0.5 mm')).toEqual([500_000]);
  });
});
