// The way over the core: a wall of the tube that is a barrier by itself, tape round the core, more air above the coil.

import type { WeakSpot } from '#judge/verdict/spot.ts';
import { fieldAt } from '#model/edit/edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Act } from './act.ts';
import { lengthAt, upToStep } from './file-lengths.ts';

/** Walls of the trade that stand the ordinary test by strength times thickness. */
const WALL = 0.8;
const WRAP = { material: 'polyester-tape-25', plies: 3 } as const;

export function coreActs(doc: DesignFile, spot: WeakSpot): readonly Act[] {
  const wall = lengthAt(doc, 'former.wall');
  const gap = lengthAt(doc, 'core.outerGap');
  const missing = spot.length !== null && spot.required !== null ? spot.required - spot.length : 0;
  const acts: Act[] = [];
  if (wall !== null && wall < WALL)
    acts.push({
      kind: 'wall',
      on: 'former.wall',
      set: [{ field: 'former.wall', to: `${WALL} mm` }],
      amount: null,
    });
  if ((fieldAt(doc, 'core.wrap') ?? null) === null)
    acts.push({ kind: 'wrap', on: 'core.wrap', set: [{ field: 'core.wrap', to: WRAP }], amount: null });
  if (gap !== null && missing > 0) {
    const to = `${upToStep(gap + missing)} mm`;
    acts.push({
      kind: 'outer-gap',
      on: 'core.outerGap',
      set: [{ field: 'core.outerGap', to }],
      amount: missing,
    });
  }
  return acts;
}
