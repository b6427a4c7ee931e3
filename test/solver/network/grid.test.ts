// The grid of a section: who owns its cells, and the lines one nanometre beside conductors that air lies at.

import { describe, expect, it } from 'vitest';
import { AIR, columns, CONDUCTOR, type Grid, gridOf } from '#solver/network/grid.ts';
import type { Region } from '#solver/section/section.ts';
import { mm } from '#units/quantity.ts';
import { metal, sectionOf, solid } from '#test/solver/hand-made.ts';

const COMPOUND = 9;
const OPTIONS = { leastThickness: mm(0.4), trackingRank: [], weak: [] };

const gridWith = (regions: readonly Region[]): Grid =>
  gridOf(sectionOf([0, 0, 10, 10], regions), COMPOUND, OPTIONS);

/** What lies at a place, in millimetres. */
function at(grid: Grid, x: number, y: number): string {
  const column = grid.xs.filter((line) => line < mm(x)).length;
  const row = grid.ys.filter((line) => line < mm(y)).length;
  const owner = grid.owner[row * columns(grid) + column]!;
  if (owner === AIR) return 'air';
  return owner <= CONDUCTOR ? grid.conductors[CONDUCTOR - owner]! : `body ${grid.solids[owner]!.body}`;
}

describe('grid', () => {
  it('should give a cell to the conductor where solids overlap it: doubt counts against the build', () => {
    const grid = gridWith([metal('a', [2, 2, 4, 4]), solid([0, 0, 6, 6], 3)]);
    expect(at(grid, 3, 3)).toBe('a');
    expect(at(grid, 1, 1)).toBe('body 3');
    expect(at(grid, 8, 8)).toBe('air');
  });

  it('should put a sleeve into the moulding that it runs through, whatever their order in the list', () => {
    const sleeve = solid([2, 2, 4, 4], 5, { kind: 'sleeve' });
    const moulding = solid([0, 0, 6, 6], 3);
    for (const regions of [
      [sleeve, moulding],
      [moulding, sleeve],
    ])
      expect(at(gridWith(regions), 3, 3)).toBe('body 5');
  });

  it('should keep a cover whole inside the sleeve that is drawn over it', () => {
    const sleeve = solid([0, 0, 8, 8], 5, { kind: 'sleeve' });
    const cover = solid([2, 2, 6, 6], 4, { kind: 'wireCover' });
    for (const regions of [
      [sleeve, cover],
      [cover, sleeve],
    ])
      expect([at(gridWith(regions), 1, 1), at(gridWith(regions), 3, 3)]).toEqual(['body 5', 'body 4']);
  });

  it('should lay the core under an open section and air beside and above it', () => {
    const grid = gridWith([metal('a', [2, 2, 4, 4])]);
    expect(at(grid, 5, -1)).toBe('core');
    expect([at(grid, -1, 5), at(grid, 11, 5), at(grid, 5, 11)]).toEqual(['air', 'air', 'air']);
  });

  it('should draw a line one nanometre off a conductor in air, and none in a solid that no way leads through', () => {
    const grid = gridWith([metal('a', [2, 2, 4, 4]), solid([4, 0, 6, 6], 3)]);
    expect(grid.xs).toContain(mm(2) - 1);
    expect(grid.ys).toContain(mm(2) - 1);
    expect(grid.ys).toContain(mm(4) + 1);
    expect(grid.xs).not.toContain(mm(4) + 1);
  });

  it('should draw it in a solid that a way may lead through along it, and not across it', () => {
    const thin = solid([4, 1.8, 6, 2.1], 3);
    const grid = gridWith([metal('a', [2, 2, 4, 4]), thin, solid([4, 2.1, 6, 6], 4)]);
    expect(grid.xs).toContain(mm(4) + 1);
    const wound = gridWith([
      metal('a', [2, 2, 4, 4]),
      solid([4, 0, 6, 6], 3, { kind: 'block', crossX: 'strong', crossY: 2 }),
      solid([0, 4, 6, 9], 4),
      solid([0, 0, 4, 2], 5),
    ]);
    expect(wound.xs).toContain(mm(4) + 1);
    expect(wound.ys).not.toContain(mm(4) + 1);
  });

  it('should fill what is left with compound where the section is potted', () => {
    const grid = gridOf(
      { ...sectionOf([0, 0, 10, 10], [metal('a', [2, 2, 4, 4])]), potted: true },
      COMPOUND,
      OPTIONS,
    );
    expect(at(grid, 8, 8)).toBe('body -1');
    expect(grid.solids.at(-1)?.stuff).toBe(COMPOUND);
  });

  it('should cut regions off at the frame', () => {
    const grid = gridWith([solid([-5, 3, 20, 4], 3)]);
    expect([grid.xs[0], grid.xs.at(-1)]).toEqual([0, mm(10)]);
    expect(at(grid, 5, 3.5)).toBe('body 3');
  });
});
