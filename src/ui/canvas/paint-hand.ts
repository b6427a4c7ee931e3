// Paints what the hand needs: grips on the edges, the held one black with its number and a line to the ruler,
// the edges that it lines up with, the picked layers, a layer on its way to another place.

import { LETTERING } from '#drawing/scene/palette.ts';
import { dimension } from '#words/text/number-words.ts';
import { inMm } from '#units/quantity.ts';
import { unreachable } from '#units/unreachable.ts';
import type { Drag } from './drag.ts';
import { GRIP, type Grip } from './grip.ts';
import { chip, chipWidth, line, stroke, type Chip, type Pen } from './pen.ts';

export function paintPicked({ ink, crispX, crispY, picture }: Pen): void {
  const { scene, layers, theme, carried } = picture;
  for (const layer of scene.layers) {
    if (!layers.includes(layer.layer) && carried?.layer !== layer.layer) continue;
    const [x0, x1, y0, y1] = [crispX(layer.x0), crispX(layer.x1), crispY(layer.y1), crispY(layer.y0)];
    ink.beginPath();
    ink.rect(x0 - 2, y0 - 2, x1 - x0 + 4, y1 - y0 + 4);
    stroke(ink, { color: theme.sheet, width: 3 });
    stroke(ink, { color: theme.ink, width: 1.5 });
  }
  if (carried === null) return;
  const row = crispY(carried.to);
  const [from, to] = scene.rulers.x;
  line(ink, crispX(from) - 8, row, crispX(to) + 8, row, { color: theme.ink, width: 3 });
}

export function paintGrips(pen: Pen): void {
  const { grips, drag, hot, layers } = pen.picture;
  for (const grip of grips) {
    const { handle } = grip;
    const isHeld = drag?.handle.id === handle.id;
    const isWanted = hot === handle.id || layers.some((layer) => layer === handle.part);
    if (isHeld || isWanted || stands(grip)) capsule(pen, grip, isHeld || hot === handle.id);
  }
}

/** Edges at a flange keep their grips to themselves until they are wanted, else every ply would carry two. */
const stands = ({ handle, span }: Grip): boolean =>
  span[1] - span[0] >= GRIP.short && (typeof handle.part !== 'number' || handle.value !== 0);

function capsule({ ink, picture: { theme } }: Pen, { x, y, long, handle }: Grip, isHeld: boolean): void {
  const [width, height] = handle.axis === 'x' ? [GRIP.wide, long] : [long, GRIP.wide];
  ink.beginPath();
  ink.roundRect(x - width / 2, y - height / 2, width, height, GRIP.wide / 2);
  ink.fillStyle = isHeld ? theme.ink : theme.sheet;
  ink.fill();
  stroke(ink, { color: theme.ink, width: 1.6 });
}

/** The number at the grip and on the ruler, the projection between them, the guides. */
export function paintDrag(pen: Pen, drag: Drag): void {
  const { picture } = pen;
  const grip = picture.grips.find(({ handle }) => handle.id === drag.handle.id);
  guides(pen, drag);
  if (grip === undefined) return;
  const { theme } = picture;
  const look: Chip = { fill: theme.sheet, rim: theme.ink, color: theme.ink, size: 12.5, family: LETTERING };
  const words = dimension(inMm(drag.value));
  const half = chipWidth(pen.ink, words, look) / 2;
  switch (drag.handle.axis) {
    case 'x': {
      line(pen.ink, grip.x, picture.room.top - 7, grip.x, grip.y, { color: theme.ink, width: 1.2 });
      chip(pen.ink, Math.max(half, grip.x), picture.room.top - 19, words, look);
      const aside = grip.x - half - 10 < picture.room.left ? 1 : -1;
      chip(pen.ink, grip.x + aside * (half + 10), grip.y, words, look);
      return;
    }
    case 'y': {
      line(pen.ink, picture.room.left - 7, grip.y, grip.x, grip.y, { color: theme.ink, width: 1.2 });
      const below = grip.y - 18 < picture.room.top ? 1 : -1;
      chip(pen.ink, grip.x, grip.y + below * 18, words, look);
      return;
    }
    default:
      unreachable(drag.handle.axis);
  }
}

function guides({ ink, crispX, crispY, picture }: Pen, { guides: edges, handle }: Drag): void {
  const { theme, room } = picture;
  const look = { color: theme.second, width: 1, dash: [6, 4] };
  for (const edge of edges) {
    if (handle.axis === 'x') line(ink, crispX(inMm(edge)), room.top, crispX(inMm(edge)), room.bottom, look);
    else line(ink, room.left, crispY(inMm(edge)), room.right, crispY(inMm(edge)), look);
  }
}
