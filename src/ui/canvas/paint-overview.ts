// Paints the whole section small above a close view of it, with a dashed frame round what the close view shows.

import { paintSolids } from './paint-solids.ts';
import { circledLayers, paintTurns } from './paint-turns.ts';
import { line, penOf, stroke, type Pen } from './pen.ts';
import type { Picture } from './picture.ts';
import { toDrawingX, toDrawingY } from './view.ts';

export function paintOverview(close: Pen, { view, height }: NonNullable<Picture['overview']>): void {
  const { ink, picture } = close;
  const { theme, scene, room, width } = picture;
  const pen = penOf(ink, { ...picture, view, height });
  ink.save();
  ink.beginPath();
  ink.rect(0, 0, width, height);
  ink.fillStyle = theme.sheet;
  ink.fill();
  ink.clip();
  const circled = circledLayers(pen);
  paintSolids(pen, circled);
  paintTurns(pen, circled);
  const { path } = scene;
  const look = { color: path?.short === true ? theme.pencil : theme.ink, width: 2.5 };
  for (const { from, to } of path?.legs ?? [])
    line(ink, pen.x(from[0]), pen.y(from[1]), pen.x(to[0]), pen.y(to[1]), look);
  const [x0, x1] = [toDrawingX(picture.view, room.left), toDrawingX(picture.view, room.right)];
  const [y0, y1] = [toDrawingY(picture.view, room.bottom), toDrawingY(picture.view, room.top)];
  ink.beginPath();
  ink.rect(pen.x(x0), pen.y(y1), pen.x(x1) - pen.x(x0), pen.y(y0) - pen.y(y1));
  stroke(ink, { color: theme.ink, width: 1.5, dash: [5, 3] });
  ink.restore();
}
