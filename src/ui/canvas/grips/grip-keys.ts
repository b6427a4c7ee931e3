// What a key does to a handle that has the keyboard: arrows move the edge, Shift finer; across its axis they change the
// value; Home and End go to its limits. Null: the key means nothing here.

import type { Nm } from '#units/quantity.ts';
import { LONGEST, positionOf, type Handle } from '#ui/canvas/handles/handle.ts';
import { COARSE, FINE, stepped } from '#ui/canvas/handles/snap.ts';

export interface KeyedTo {
  readonly value: Nm;
  readonly position: Nm;
}

/** `value` is where the handle stands now, which may be ahead of the design. */
export function keyedTo(
  event: Pick<KeyboardEvent, 'key' | 'shiftKey' | 'altKey'>,
  handle: Handle,
  value: Nm,
): KeyedTo | null {
  const next = valueOf(event, handle, value);
  return next === null ? null : { value: next, position: positionOf(handle, next) };
}

function valueOf(
  { key, shiftKey, altKey }: Pick<KeyboardEvent, 'key' | 'shiftKey' | 'altKey'>,
  handle: Handle,
  value: Nm,
): Nm | null {
  if (key === 'Home') return handle.least;
  if (key === 'End') return handle.most < LONGEST ? handle.most : null;
  const way = wayOf(key, handle);
  return way === null ? null : stepped(handle, value, shiftKey || altKey ? FINE : COARSE, way);
}

/** Along the axis an arrow points where the edge goes; across it, up is more. */
function wayOf(key: string, { axis, sign }: Handle): 1 | -1 | null {
  switch (key) {
    case 'ArrowRight':
      return axis === 'x' ? sign : 1;
    case 'ArrowLeft':
      return axis === 'x' ? flipped(sign) : -1;
    case 'ArrowUp':
      return axis === 'y' ? sign : 1;
    case 'ArrowDown':
      return axis === 'y' ? flipped(sign) : -1;
    default:
      return null;
  }
}

const flipped = (sign: 1 | -1): 1 | -1 => (sign === 1 ? -1 : 1);
