// Where the drawing stands on the screen: the one place that turns millimetres into pixels and back.
// x runs right and y runs up in millimetres; on the screen y runs down. Pixels are CSS pixels of the stage.
// `scale` is pixels per millimetre along the axis; outward it is `scale * stretch`.

export interface View {
  readonly scale: number;
  readonly stretch: number;
  /** Pixel column of x = 0 and pixel row of y = 0. */
  readonly left: number;
  readonly base: number;
}

/** A box in millimetres, y upward. */
export interface Box {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** The free part of the stage in pixels, y downward. */
export interface Room {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export const STRETCHES = [1, 2, 3, 4, 6, 8] as const;
/** Pixels per millimetre: far enough out for the widest build, far enough in to see the enamel on a wire. */
export const SCALE_LIMITS = { least: 0.5, most: 1200 } as const;
/** So much of the drawing stays in sight however far it is pushed. */
const STAYS_PX = 48;

export const toScreenX = (view: View, x: number): number => view.left + x * view.scale;
export const toScreenY = (view: View, y: number): number => view.base - y * view.scale * view.stretch;
export const toDrawingX = (view: View, column: number): number => (column - view.left) / view.scale;
export const toDrawingY = (view: View, row: number): number =>
  (view.base - row) / (view.scale * view.stretch);

/** The largest scale at which the whole box fits the room, before it is matched to whole pixels of a ply. */
export function fittingScale(box: Box, room: Room, stretch: number): number {
  const across = (room.right - room.left) / Math.max(box.x1 - box.x0, 1e-6);
  const up = (room.bottom - room.top) / (Math.max(box.y1 - box.y0, 1e-6) * stretch);
  return limitScale(Math.min(across, up));
}

/** The box in the middle of the room at this scale. */
export function centred(box: Box, room: Room, scale: number, stretch: number): View {
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
export function keptInSight(view: View, box: Box, room: Room): View {
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
