// Where a handle's grip stands on the screen and from how far it is taken.
// A grip is a small capsule across its edge, in the middle of the part that is in sight.

import { inMm } from '#units/quantity.ts';
import type { Handle } from '#ui/canvas/handles/handle.ts';
import { toScreenX, toScreenY, type Plate, type View } from '#drawing/scene/view.ts';

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
export function gripsOf(handles: readonly Handle[], view: View, room: Plate): readonly Grip[] {
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

/** An edge away from its grip is taken only where the pointer is right on it. */
export const EDGE_REACH = 3;
/** A grip is taken from so far away. */
export const REACH = { mouse: 9, touch: 22 } as const;

/** How far from its middle a grip is taken: half the way to its neighbour at most, so that the nearest one answers. */
export function reachOf(grip: Grip, grips: readonly Grip[], most: number): number {
  const distances = grips.flatMap((other) =>
    other === grip ? [] : [Math.hypot(other.x - grip.x, other.y - grip.y) / 2],
  );
  return Math.max(LEAST_REACH, Math.min(most, ...distances));
}

const LEAST_REACH = 3;

/** Edges at a flange keep their grips to themselves until they are wanted, else every ply would carry two. */
export const stands = ({ handle, span }: Grip): boolean =>
  span[1] - span[0] >= GRIP.short && (typeof handle.part !== 'number' || handle.value !== 0);

/** What the capsule covers. */
export function gripPlate({ x, y, long, handle }: Grip): Plate {
  const [across, up] = handle.axis === 'x' ? [GRIP.wide / 2, long / 2] : [long / 2, GRIP.wide / 2];
  return { left: x - across, right: x + across, top: y - up, bottom: y + up };
}
