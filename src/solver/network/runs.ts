// What a straight run through one solid counts as: so many plies of a stuff, or strong, so that no path goes through.

import type { StuffId } from '#solver/section/build.ts';
import type { Crossing } from '#solver/section/section.ts';
import type { Punctured, SolidOptions } from './pieces.ts';

interface Crossed {
  readonly stuff: StuffId;
  /** A wire's cover: its layers count only while the run is short. */
  readonly isCover: boolean;
}

/** Null: strong. */
export function puncturedBy(
  { runs, leastThickness }: SolidOptions,
  { stuff, isCover }: Crossed,
  crossing: Crossing,
  length: number,
): Punctured | null {
  const steps = runs?.[stuff];
  // a cover that its certificate makes strong shows only so much all the same
  if (crossing === 'strong' && !(isCover && steps !== undefined)) return null;
  if (typeof crossing === 'number') {
    const isStrong = isCover && length >= (steps?.at(-1)?.below ?? leastThickness);
    return isStrong ? null : { stuff, count: crossing };
  }
  if (steps === undefined) return length < leastThickness ? { stuff, count: 1 } : null;
  for (const { below, as } of steps) if (length < below) return { stuff: as, count: 1 };
  return null;
}
