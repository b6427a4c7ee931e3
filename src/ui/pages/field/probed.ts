// What stands at a place of a field's picture: read from its raster, and what lies there from its outlines.

import type { Scene } from '#drawing/scene/scene.ts';
import type { FieldPicture } from '#state/searches/field-search.svelte.ts';
import type { Probed } from '#words/field/probe-words.ts';

/** Null beyond the picture. */
export function probed(
  { whole, boxes }: FieldPicture,
  scene: Scene,
  [x, y]: readonly [number, number],
): Probed | null {
  if (whole === null) return null;
  const { x0, y0, step, columns, rows, volts, strength } = whole.raster;
  const [column, row] = [Math.floor((x - x0) / step), Math.floor((y - y0) / step)];
  if (column < 0 || row < 0 || column >= columns || row >= rows) return null;
  const i = row * columns + column;
  const turn = scene.turns.find((one) => Math.hypot(x - one.x, y - one.y) <= one.overall / 2);
  const look = turn === undefined ? undefined : scene.looks.find(({ circuit }) => circuit === turn.circuit);
  const box = boxes.find((one) => x >= one.x0 && x <= one.x1 && y >= one.y0 && y <= one.y1);
  const isMetal = strength[i]! < 0;
  const what =
    turn !== undefined
      ? `${isMetal ? 'a turn of' : 'enamel of'} ${look?.name ?? turn.circuit}`
      : (box?.kind ?? 'air');
  return { at: [x, y], volts: volts[i]!, strength: isMetal ? null : strength[i]!, what };
}
