// Keys of the drawing when it has the keyboard itself: nearer, farther, all of it, the overview away and back; arrows pan.

import type { Viewport } from '#ui/canvas/viewport/viewport.svelte.ts';

const PAN_PX = 48;

const PANS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [PAN_PX, 0],
  ArrowRight: [-PAN_PX, 0],
  ArrowUp: [0, PAN_PX],
  ArrowDown: [0, -PAN_PX],
};

/** Whether the key meant something. */
export function lookKey(
  event: Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey'>,
  viewport: Viewport,
): boolean {
  if (event.ctrlKey || event.metaKey || event.altKey) return false;
  const pan = PANS[event.key];
  if (event.key === '+' || event.key === '=') viewport.step(1);
  else if (event.key === '-') viewport.step(-1);
  else if (event.key === '0') viewport.showWhole();
  else if (pan !== undefined) viewport.pan(...pan);
  else return false;
  return true;
}
