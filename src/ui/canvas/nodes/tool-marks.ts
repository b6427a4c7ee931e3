// What the hand needs to see: the picked layers, a layer on its way to another place, the number of a held edge with its
// lines to the ruler, and the edges that it lines up with.

import type { Mark, Point } from '#drawing/paper/mark.ts';
import { crisp, type Paper } from '#drawing/paper/paper.ts';
import { chip, chipWidth, line, rectangle } from '#drawing/paper/shapes.ts';
import { dimension } from '#words/text/number-words.ts';
import { inMm } from '#units/quantity.ts';
import type { Drag } from '#ui/canvas/handles/drag.ts';
import type { Grip } from '#ui/canvas/grips/grip.ts';
import type { Picture } from './picture.ts';

const ROLE = 'hand';

/** A line along the surface that a layer can be drawn on. */
export function surfaceMarks({ surface }: Picture, paper: Paper): readonly Mark[] {
  if (surface === null) return [];
  const { x0, x1, y } = surface;
  const [from, to] = [crisp(paper, [x0, y]), crisp(paper, [x1, y])];
  return [line(ROLE, from, to, { color: paper.theme.ink, width: 3, dash: [8, 5] })];
}

export function pickedMarks({ scene, layers, carried }: Picture, paper: Paper): readonly Mark[] {
  const { theme } = paper;
  const picked = scene.layers.filter(({ layer }) => layers.includes(layer) || carried?.layer === layer);
  const rims = picked.flatMap(({ x0, y0, x1, y1 }): readonly Mark[] => {
    const [left, bottom] = crisp(paper, [x0, y0]);
    const [right, top] = crisp(paper, [x1, y1]);
    const area = {
      kind: 'area',
      role: ROLE,
      loops: [rectangle(left - 2, top - 2, right + 2, bottom + 2)],
    } as const;
    return [
      { ...area, fill: null, stroke: { color: theme.sheet, width: 3 } },
      { ...area, fill: null, stroke: { color: theme.ink, width: 1.5 } },
    ];
  });
  if (carried === null) return rims;
  const [from, to] = scene.rulers.x.map((x) => crisp(paper, [x, carried.to])) as [Point, Point];
  return [...rims, line(ROLE, [from[0] - 8, from[1]], [to[0] + 8, to[1]], { color: theme.ink, width: 3 })];
}

/** The number at the grip and on the ruler, the projection between them, the guides. */
export function dragMarks(drag: Drag, grips: readonly Grip[], paper: Paper): readonly Mark[] {
  const grip = grips.find(({ handle }) => handle.id === drag.handle.id);
  const guides = guideMarks(drag, paper);
  if (grip === undefined) return guides;
  const { theme, room } = paper;
  const look = { fill: theme.sheet, rim: theme.ink, color: theme.ink };
  const words = dimension(inMm(drag.value));
  const half = chipWidth(paper, words) / 2;
  const stroke = { color: theme.ink, width: 1.2 };
  const label = (at: Point): Mark => chip(paper, ROLE, at, words, look);
  if (drag.handle.axis === 'y') {
    const below = grip.y - 18 < room.top ? 1 : -1;
    const projection = line(ROLE, [room.left - 7, grip.y], [grip.x, grip.y], stroke);
    return [...guides, projection, label([grip.x, grip.y + below * 18])];
  }
  const aside = grip.x - half - 10 < room.left ? 1 : -1;
  return [
    ...guides,
    line(ROLE, [grip.x, room.top - 7], [grip.x, grip.y], stroke),
    label([Math.max(half, grip.x), room.top - 19]),
    label([grip.x + aside * (half + 10), grip.y]),
  ];
}

function guideMarks({ guides, handle }: Drag, paper: Paper): readonly Mark[] {
  const { theme, room } = paper;
  const stroke = { color: theme.second, width: 1, dash: [6, 4] };
  return guides.map((edge) => {
    const [x, y] = crisp(paper, [inMm(edge), inMm(edge)]);
    return handle.axis === 'x'
      ? line(ROLE, [x, room.top], [x, room.bottom], stroke)
      : line(ROLE, [room.left, y], [room.right, y], stroke);
  });
}
