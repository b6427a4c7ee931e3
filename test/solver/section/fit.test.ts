// How turns fit a layer and where it lies: rows, heights, doubt, placement; the arithmetic stands in the names.

import { describe, expect, it } from 'vitest';
import { fitOf } from '#solver/section/fit.ts';
import { type Block, placementOf } from '#solver/section/placement.ts';
import { inMm, mm, nm } from '#units/quantity.ts';
import { made, margin, margins, screen, tape, winding, wire } from '#test/solver/made-build.ts';

const fitted = (layer: Parameters<typeof made>[0][number], width = 10) =>
  fitOf(made([layer], { chambers: [mm(width)] }), layer);

const placed = (layer: Parameters<typeof made>[0][number]) => {
  const { x0, x1, blocks } = placementOf(made([layer]), layer);
  return [x0, x1, widthOf(blocks.left), widthOf(blocks.right)].map(inMm);
};

const widthOf = (block: Block | null) => nm(block ? block.x1 - block.x0 : 0);

describe('fit', () => {
  it('should find 40 turns of 0.23 in 9.2, which floating point makes 39', () => {
    expect(fitted(winding('P', { wire: wire(0.23), turns: 40 }), 9.2)).toMatchObject({
      turnsPerRow: 40,
      rows: 1,
    });
  });

  it.each([
    ['full to the last turn', 40, 9.2, true],
    ['one turn short of full', 39, 9.2, false],
    ['full but for a nanometre', 40, 9.200001, false],
    ['with a full row under a part of one', 41, 9.2, true],
  ])('should say whether a row is doubtful: %s', (_, turns, width, doubtful) => {
    expect(fitted(winding('P', { wire: wire(0.23), turns }), width).doubtful).toBe(doubtful);
  });

  it('should lay at least one turn a row: 3 turns of 2 mm in 1 mm are 3 rows of 2 mm', () => {
    expect(fitted(winding('P', { wire: wire(2), turns: 3 }), 1)).toMatchObject({
      turnsPerRow: 1,
      rows: 3,
      height: mm(6),
    });
  });

  it('should count strands side by side: 10 / (3 x 0.5) = 6 a row, 7 turns in 2 rows', () => {
    expect(fitted(winding('P', { strands: 3, turns: 7 }))).toMatchObject({ turnsPerRow: 6, rows: 2 });
  });

  it('should count between the margins, filled or not: (10 - 3 - 2) / 0.5', () => {
    expect(fitted(winding('P', { margins: margins(3, 2) })).turnsPerRow).toBe(10);
    expect(fitted(winding('P', { margins: margins(3, 2, false) })).turnsPerRow).toBe(10);
  });

  it('should let a measured extent win over the margins', () => {
    const layer = winding('P', { margins: margins(3), extent: { from: mm(1), to: mm(8) } });
    expect(fitted(layer).turnsPerRow).toBe(14);
    // a block ends at the winding that was found in its place
    expect(placed(layer)).toEqual([1, 8, 1, 2]);
  });

  it('should be as high as its plies, and twice as high and a ply where a screen overlaps', () => {
    expect(fitted(tape(3)).height).toBe(mm(0.3));
    expect(fitted(screen()).height).toBe(mm(0.05));
    const overlap = { plies: 1, plyThickness: mm(0.1), stuff: 2 };
    expect(fitted(screen({ overlap })).height).toBe(mm(0.2));
  });

  it.each([
    ['spread over the whole width', {}, [0, 10]],
    ['from the left, 5 x 0.5', { spread: false }, [0, 2.5]],
    ['from the right', { spread: false, startsAt: 'right' }, [7.5, 10]],
    ['over the whole width from one full row up', { spread: false, turns: 21 }, [0, 10]],
  ] as const)('should place a winding %s', (_, change, ends) => {
    expect(placed(winding('P', change)).slice(0, 2)).toEqual(ends);
  });

  it('should place a tape within its insets and leave an empty margin without a block', () => {
    expect(placed(tape(1, { inset: { left: mm(1), right: mm(2) } }))).toEqual([1, 8, 0, 0]);
    expect(placed(winding('P', { margins: { left: margin(3), right: margin(2, false) } }))).toEqual([
      3, 8, 3, 0,
    ]);
  });
});
