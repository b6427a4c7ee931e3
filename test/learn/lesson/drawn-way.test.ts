// A way drawn by hand: settled on surfaces, measured, told by what it runs through; the ground is a lesson's own section.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import { knownIds } from '#judge/conductors/known-ids.ts';
import { sketch } from '#judge/judging/sketch.ts';
import { drawnWay, groundOf } from '#learn/lesson/drawn-way.ts';
import { readDesign } from '#model/read/read-design.ts';
import { mm } from '#units/quantity.ts';

const { build } = JSON.parse(readFileSync('static/lessons/margin.json', 'utf8')) as { build: unknown };

const ground = (() => {
  const read = readDesign(build, knownIds);
  if (read.kind === 'bad') throw new Error(read.faults[0]?.says);
  const [section] = sketch(read.design).sections;
  if (section === undefined) throw new Error('no section');
  return groundOf(section);
})();

/** Top of the primary's two rows of 0.23 mm, and of the three plies of 0.06 mm over them. */
const [TOP, OVER] = [0.46, 0.64];

describe('a drawn way', () => {
  it('should settle on the surfaces near it and nowhere else', () => {
    const { points } = drawnWay(
      [
        [2.03, TOP - 0.02],
        [0.06, TOP + 0.01],
        [6, 3],
      ],
      ground,
    );
    expect(points[0]?.[0]).toBeCloseTo(2, 6);
    expect(points[0]?.[1]).toBeCloseTo(TOP, 6);
    expect(points[1]?.[0]).toBeCloseTo(0, 6);
    expect(points[2]).toEqual([6, 3]);
  });

  it('should measure out over one margin, up and back: 2.00 + 0.18 + 2.00', () => {
    const round = drawnWay(
      [
        [2, TOP],
        [0, TOP],
        [0, OVER],
        [2, OVER],
      ],
      ground,
    );
    expect(round.length).toBeCloseTo(4.18, 6);
    expect(round).toMatchObject({ plies: 0, isAtFlange: true, isOverCore: false });
  });

  it('should count each ply that it goes through', () => {
    const through = drawnWay(
      [
        [5, TOP],
        [5, OVER],
      ],
      ground,
    );
    expect(through).toMatchObject({ plies: 3, isAtFlange: false });
    expect(through.length).toBeCloseTo(0.18, 6);
  });

  it('should see the core where it is entered', () => {
    const core = ground.solids.find(({ kind }) => kind === 'core');
    if (core === undefined) throw new Error('no core');
    expect(
      drawnWay(
        [
          [5, TOP],
          [core.x0, core.y0],
        ],
        ground,
      ).isOverCore,
    ).toBe(true);
  });

  it('should keep millimetres: the ground is as wide as the window', () => {
    expect(ground.faces).toEqual([0, 12]);
    expect(mm(12)).toBe(12e6);
  });
});
