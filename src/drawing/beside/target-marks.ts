// The figures that a mend brings its layers to, as chips: beside the edge that moves, or in the middle of the layer.

import type { Plate } from '#drawing/scene/view.ts';
import type { LayerPlace, Scene } from '#drawing/scene/scene.ts';
import type { ChipMark } from '#drawing/paper/mark.ts';
import { place, type Paper } from '#drawing/paper/paper.ts';
import { chip, chipHeight, chipWidth } from '#drawing/paper/shapes.ts';

export interface Target {
  /** Index in the file that is drawn. */
  readonly layer: number;
  readonly side: 'left' | 'right' | null;
  readonly says: string;
}

const SIZE = 10.5;
/** Pixels between the chip and the edge that it tells of. */
const ASIDE = 5;

/** Chips that would lie on one another are stacked upward. */
export function targetMarks(targets: readonly Target[], scene: Scene, paper: Paper): readonly ChipMark[] {
  const look = { fill: paper.theme.sheet, rim: paper.theme.ink, color: paper.theme.ink, size: SIZE };
  return targets.reduce<readonly ChipMark[]>((set, { layer, side, says }) => {
    const found = scene.layers.find((each) => each.layer === layer);
    if (found === undefined) return set;
    const half = chipWidth(paper, says, SIZE) / 2;
    const [x, y] = place(paper, [middleOf(found, side), (found.y0 + found.y1) / 2]);
    const wished = side === null ? x : side === 'left' ? x - half - ASIDE : x + half + ASIDE;
    const { left, right } = paper.bounds;
    const column = Math.min(right - half - 1, Math.max(left + half + 1, wished));
    return [...set, chip(paper, 'target', [column, freeRow(set, column, half, y)], says, look)];
  }, []);
}

/** What the chips cover. */
export const targetPlates = (chips: readonly ChipMark[]): readonly Plate[] =>
  chips.map(({ at: [x, y], width, height }) => ({
    left: x - width / 2,
    right: x + width / 2,
    top: y - height / 2,
    bottom: y + height / 2,
  }));

const middleOf = ({ x0, x1 }: LayerPlace, side: Target['side']): number =>
  side === null ? (x0 + x1) / 2 : side === 'left' ? x0 : x1;

function freeRow(set: readonly ChipMark[], x: number, half: number, y: number): number {
  const high = chipHeight(SIZE) + 1;
  const isTaken = (row: number): boolean =>
    set.some(({ at, width }) => Math.abs(at[0] - x) < half + width / 2 && Math.abs(at[1] - row) < high);
  let row = y;
  while (isTaken(row)) row -= high;
  return row;
}
