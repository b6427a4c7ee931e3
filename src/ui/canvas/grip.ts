// Where a handle's grip stands on the screen and which one a pointer takes hold of.
// A grip is a small capsule across its edge, in the middle of the part that is in sight.

import { inMm } from '#units/quantity.ts';
import type { Handle } from './handle.ts';
import { toScreenX, toScreenY, type Room, type View } from './view.ts';

export interface Grip {
  readonly handle: Handle;
  readonly x: number;
  readonly y: number;
  /** Length of the capsule along its edge. */
  readonly long: number;
  /** The edge itself, in pixels across the handle's axis. */
  readonly span: readonly [number, number];
}

export const GRIP = { long: 15, short: 8, wide: 6.5 } as const;

/** Grips of the handles whose edge is in sight. */
export function gripsOf(handles: readonly Handle[], view: View, room: Room): readonly Grip[] {
  return handles.flatMap((handle) => {
    const upright = handle.axis === 'x';
    const at = upright ? toScreenX(view, inMm(handle.at)) : toScreenY(view, inMm(handle.at));
    const ends = handle.span.map((end) =>
      upright ? toScreenY(view, inMm(end)) : toScreenX(view, inMm(end)),
    );
    const span: readonly [number, number] = [Math.min(...ends), Math.max(...ends)];
    const [least, most] = upright ? [room.top, room.bottom] : [room.left, room.right];
    const [from, to] = [Math.max(span[0], least), Math.min(span[1], most)];
    const [sideLeast, sideMost] = upright ? [room.left, room.right] : [room.top, room.bottom];
    if (from > to || at < sideLeast || at > sideMost) return [];
    const middle = (from + to) / 2;
    const long = Math.max(GRIP.short, Math.min(GRIP.long, to - from));
    return [{ handle, long, span, ...(upright ? { x: at, y: middle } : { x: middle, y: at }) }];
  });
}

/** The grip nearest to the pointer; else the edge that it touches, the shortest where several run together. */
export function gripUnder(grips: readonly Grip[], x: number, y: number, reach: number): Grip | null {
  const inHand = grips
    .map((grip) => ({ grip, distance: Math.hypot(grip.x - x, grip.y - y) }))
    .filter(({ distance }) => distance <= reach)
    .sort((a, b) => a.distance - b.distance || lengthOf(a.grip) - lengthOf(b.grip));
  if (inHand[0] !== undefined) return inHand[0].grip;
  const touched = grips.filter((grip) => {
    const [along, across] = grip.handle.axis === 'x' ? [x - grip.x, y] : [y - grip.y, x];
    return Math.abs(along) <= EDGE_REACH && across >= grip.span[0] && across <= grip.span[1];
  });
  return touched.sort((a, b) => lengthOf(a) - lengthOf(b))[0] ?? null;
}

/** An edge away from its grip is taken only where the pointer is right on it. */
const EDGE_REACH = 3;

const lengthOf = ({ span }: Grip): number => span[1] - span[0];
