// How the drawing is brought to its place on the stage: fitted, centred, zoomed about a spot, moved, kept in sight.

import { toDrawingX, toDrawingY, toScreenX, toScreenY, type Plate, type View } from '#drawing/scene/view.ts';

/** A box in millimetres, y upward. */
export interface Box {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

export const STRETCHES = [1, 2, 3, 4, 6, 8] as const;
/** Pixels per millimetre: far enough out for the widest build, far enough in to see the enamel on a wire. */
export const SCALE_LIMITS = { least: 0.5, most: 1200 } as const;
/** So much of the drawing stays in sight however far it is pushed. */
const STAYS_PX = 48;

/** The largest scale at which the whole box fits the room, before it is matched to whole pixels of a ply. */
export function fittingScale(box: Box, room: Plate, stretch: number): number {
  const across = (room.right - room.left) / Math.max(box.x1 - box.x0, 1e-6);
  const up = (room.bottom - room.top) / (Math.max(box.y1 - box.y0, 1e-6) * stretch);
  return limitScale(Math.min(across, up));
}

/** The box in the middle of the room at this scale. */
export function centred(box: Box, room: Plate, scale: number, stretch: number): View {
  const middleX = (box.x0 + box.x1) / 2;
  const middleY = (box.y0 + box.y1) / 2;
  return {
    scale,
    stretch,
    left: (room.left + room.right) / 2 - middleX * scale,
    base: (room.top + room.bottom) / 2 + middleY * scale * stretch,
  };
}

/** Another scale or stretch, the spot under this pixel staying where it is. */
export function zoomed(
  view: View,
  to: { scale: number; stretch: number },
  column: number,
  row: number,
): View {
  const x = toDrawingX(view, column);
  const y = toDrawingY(view, row);
  return { ...to, left: column - x * to.scale, base: row + y * to.scale * to.stretch };
}

export const moved = (view: View, columns: number, rows: number): View => ({
  ...view,
  left: view.left + columns,
  base: view.base + rows,
});

/** Pushed back where the box would leave the room but for a strip. */
export function keptInSight(view: View, box: Box, room: Plate): View {
  const columns = pull(toScreenX(view, box.x0), toScreenX(view, box.x1), room.left, room.right);
  const rows = pull(toScreenY(view, box.y1), toScreenY(view, box.y0), room.top, room.bottom);
  return columns === 0 && rows === 0 ? view : moved(view, columns, rows);
}

export const limitScale = (scale: number): number =>
  Math.min(SCALE_LIMITS.most, Math.max(SCALE_LIMITS.least, scale));

function pull(from: number, to: number, roomFrom: number, roomTo: number): number {
  const stays = Math.min(STAYS_PX, (roomTo - roomFrom) / 2);
  if (to < roomFrom + stays) return roomFrom + stays - to;
  if (from > roomTo - stays) return roomTo - stays - from;
  return 0;
}
