// What a measurement found, and what is to be picked next, in words.

import { lengthNear, lengthTaken } from '#words/text/number-words.ts';
import { lengthUnit } from '#words/text/length-unit.ts';
import type { MeasurementNote } from '#model/measure/measurement-note.ts';
import { plainNumber } from '#model/measure/note-text.ts';
import type { Tool } from '#state/photo/photo-desk.svelte.ts';

/** `3.02 ± 0.04 mm`; without a scale a length has no figure. */
export function foundWords({ measure, found }: MeasurementNote): string {
  if (found === null) return 'no scale yet';
  const half = plainNumber(found.plusMinus);
  // as many places as its uncertainty has
  const value = found.value.toFixed(half.split('.')[1]?.length ?? 0);
  if (measure === 'angle') return `${value} ± ${half} °`;
  return lengthUnit() === 'mm'
    ? `${value} ± ${half} mm`
    : `${lengthNear(found.value)} ± ${lengthTaken(found.plusMinus)} ${lengthUnit()}`;
}

export const TOOL_NAMES: Readonly<Record<Tool, string>> = {
  scale: 'Scale',
  level: 'Straighten',
  distance: 'Distance',
  'wire diameter': 'Wire',
  'tape width': 'Tape',
  angle: 'Angle',
  turns: 'Count turns',
};

/** By the number of points already picked. */
const NEXT: Readonly<Record<Tool, readonly string[]>> = {
  scale: ['Pick one end of a length that you know', 'Pick its other end', 'Say how long it is'],
  level: ['Pick one end of a line that should lie level', 'Pick its other end'],
  distance: ['Pick one end', 'Pick the other end'],
  'wire diameter': [
    'Pick a point on one edge of the wire',
    'Pick another on the same edge, some way along',
    'Pick a point on the other edge',
    'Pick another on that edge',
  ],
  'tape width': [
    'Pick a point on one edge of the tape',
    'Pick another on the same edge, some way along',
    'Pick a point on the other edge',
    'Pick another on that edge',
  ],
  angle: ['Pick the end of one arm', 'Pick the corner', 'Pick the end of the other arm'],
  turns: ['Press on each turn that you see; press on a number to take it away'],
};

export const nextWords = (tool: Tool, picked: number): string =>
  tool === 'turns' && picked > 0
    ? `${picked} counted; press on the next, or on a number to take it away`
    : (NEXT[tool][picked] ?? '');
