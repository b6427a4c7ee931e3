// Numbered flags whose tips touch the weak spots: filled on this section, hollow where the spot is on another one.

import type { Flag } from '#drawing/scene/scene.ts';
import type { WeakSpot } from '#judge/verdict/spot.ts';
import type { Box } from '#drawing/scene/outline.ts';

export function flagsOf(
  spots: readonly WeakSpot[],
  sectionName: string,
  frame: Box,
  elsewhere: number,
): readonly Flag[] {
  const middle = (frame.x0 + frame.x1) / 2;
  let others = 0;
  return spots.flatMap((spot, place) => {
    // what belongs to no place in the window is told in the list only
    if (spot.between === null || spot.section === 'outside') return [];
    const here = spot.section === sectionName;
    if (!here && ++others > elsewhere) return [];
    return (here ? [spot.at, ...spot.also] : [spot.at]).map((at): Flag => ({
      number: place + 1,
      at: [clamped(at[0], frame.x0, frame.x1), clamped(at[1], frame.y0, frame.y1)],
      stands: at[0] < middle ? 'left' : 'right',
      here,
      section: spot.section,
      short: spot.verdict === 'falls-short',
    }));
  });
}

const clamped = (value: number, least: number, most: number): number =>
  Math.min(most, Math.max(least, value));
