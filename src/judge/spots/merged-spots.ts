// Weak spots that one act mends are one spot.

import type { SpotKind, WeakSpot } from '#judge/verdict/spot.ts';
import type { Design } from '#model/design.ts';
import { heightOf } from '#standards/ladder.ts';
import { inMm } from '#units/quantity.ts';

/**
 * Places that one act would mend are one spot, on whichever section it is worst; so are mirror places that are alike.
 */
export function merged(design: Design, spots: readonly WeakSpot[]): readonly WeakSpot[] {
  const worst = new Map<string, WeakSpot>();
  for (const spot of spots) {
    const key = actOn(design, spot);
    const known = worst.get(key);
    if (!known) worst.set(key, spot);
    else worst.set(key, worstFirst(spot, known) < 0 ? together(spot, known) : together(known, spot));
  }
  const kept = new Map<string, WeakSpot>();
  for (const spot of worst.values()) {
    const { kind, layers, length, metric, achieved } = spot;
    const key = JSON.stringify([kind, layers, length, metric, achieved]);
    const known = kept.get(key);
    kept.set(key, known ? together(known, spot) : spot);
  }
  return [...kept.values()];
}

/** The second place stands with the first where both lie on one section. */
function together(first: WeakSpot, second: WeakSpot): WeakSpot {
  if (first.section !== second.section) return first;
  const known = [first.at, ...first.also].map(String);
  const more = [second.at, ...second.also].filter((place) => !known.includes(String(place)));
  return more.length === 0 ? first : { ...first, also: [...first.also, ...more] };
}

/** Tape, a sleeve, insulation between two windings mend both sides at once; a margin is widened at its own. */
const MENDED_AT_ONCE: ReadonlySet<SpotKind> = new Set([
  'touching',
  'enamel-only',
  'lead-crossing',
  'bare-lead',
  'lead-in-margin',
  'uncovered-tape-edge',
  'drifting-tape',
  'few-plies',
  'weak-ply',
]);

function actOn(design: Design, spot: WeakSpot): string {
  const { kind, section, layers, at } = spot;
  // outside the window every part and distance is mended by itself
  if (section === 'outside') {
    const { cause, length, required, achieved, needed, conditions } = spot;
    // a part that is no safety part is that whatever the unknowns are
    if (cause.of === 'bridge' && cause.bridge.unsafe !== null) return JSON.stringify([kind, cause.bridge.id]);
    return JSON.stringify([kind, cause, length, required, achieved, needed, conditions]);
  }
  const side = MENDED_AT_ONCE.has(kind) ? null : sideOf(design, at[0]);
  return JSON.stringify([kind, layers, side]);
}

/** The spot by its act at each of its places. */
export const placesOf = (design: Design, spot: WeakSpot): readonly string[] =>
  [spot.at, ...spot.also].map((at) => actOn(design, { ...spot, at }));

/** The half of a chamber that a place belongs to, counted from the left; in the middle it is neither. */
function sideOf({ former }: Design, x: number): number {
  const widths = former.chambers.map(({ width }) => inMm(width.value));
  let face = 0;
  for (const [i, width] of widths.entries()) {
    const divider = former.dividers[i];
    const beyond = face + width + (divider === undefined ? 0 : inMm(divider.value));
    if (x < beyond || i === widths.length - 1) {
      const middle = face + width / 2;
      return 3 * i + (x < middle ? 0 : x > middle ? 2 : 1);
    }
    face = beyond;
  }
  return 0;
}

export function worstFirst(a: WeakSpot, b: WeakSpot): number {
  const grade = heightOf(a.achieved) - heightOf(b.achieved);
  if (grade !== 0) return grade;
  const share = (spot: WeakSpot) => (spot.length ?? 0) / (spot.required || 1);
  return share(a) - share(b);
}
