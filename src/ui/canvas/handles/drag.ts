// One handle in the hand, from press to release: where it was taken, where it is now, what that makes of the design.
// Nothing is recorded while it lasts; dropping it is one step, letting go with Escape is none.

import type { Edit } from '#state/fields/edit.ts';
import { nm, type Nm } from '#units/quantity.ts';
import { editsOf, type Handle } from './handle.ts';
import { COARSE, FINE, snapped } from './snap.ts';
import { toDrawingX, toDrawingY, type View } from '#drawing/scene/view.ts';

export interface Drag {
  /** As it was when it was taken: its limits hold for the whole drag. */
  readonly handle: Handle;
  /** Other edges to line up with, as they were when it was taken. */
  readonly edges: readonly Nm[];
  /** From the pointer to the edge, nanometres along the axis. */
  readonly offset: number;
  readonly value: Nm;
  readonly position: Nm;
  readonly guides: readonly Nm[];
}

export interface Pointer {
  readonly x: number;
  readonly y: number;
  /** A modifier is held: finer steps, no edge attracts. */
  readonly fine: boolean;
}

/** Pixels within which another edge attracts. */
const ATTRACTS_PX = 3;
const NM_PER_MM = 1e6;

export function taken(handle: Handle, edges: readonly Nm[], pointer: Pointer, view: View): Drag {
  const offset = handle.at - along(handle, pointer, view);
  return { handle, edges, offset, value: handle.value, position: handle.at, guides: [] };
}

export function dragged(drag: Drag, pointer: Pointer, view: View): Drag {
  const { handle, edges, offset } = drag;
  const perPixel = NM_PER_MM / (view.scale * (handle.axis === 'y' ? view.stretch : 1));
  const { value, position, guides } = snapped(handle, along(handle, pointer, view) + offset, {
    step: pointer.fine ? FINE : COARSE,
    edges,
    reach: pointer.fine ? 0 : ATTRACTS_PX * perPixel,
  });
  return { ...drag, value, position, guides };
}

export const isMoved = (drag: Drag): boolean => drag.value !== drag.handle.value;

export const editsOfDrag = (drag: Drag): readonly Edit[] => editsOf(drag.handle, drag.value);

const along = (handle: Handle, pointer: Pointer, view: View): number =>
  nm(
    Math.round((handle.axis === 'x' ? toDrawingX(view, pointer.x) : toDrawingY(view, pointer.y)) * NM_PER_MM),
  );
