// Where the bodies of flags stand in pixels, so that no two lie over each other; a tip always touches its spot.

import type { Flag } from './scene.ts';
import type { Plate } from './view.ts';

export const FLAG = { width: 32, height: 22, nose: 9 } as const;

export interface FlagPlace {
  readonly flag: Flag;
  /** The spot. */
  readonly tip: readonly [number, number];
  /** Middle of the pennant's nose: equal to `tip` unless the flag had to give way. */
  readonly nose: readonly [number, number];
}

/**
 * Flags of the worst spots keep their place; a later one gives way to the nearest free one beside its tip. None stands on
 * what is `kept` free, as far as there is another place.
 */
export function flagPlaces(
  flags: readonly Flag[],
  toPixels: (at: readonly [number, number]) => readonly [number, number],
  kept: readonly Plate[] = [],
): readonly FlagPlace[] {
  const placed: FlagPlace[] = [];
  for (const flag of flags) {
    const tip = toPixels(flag.at);
    const aside = (flag.stands === 'left' ? -1 : 1) * (FLAG.width + 3);
    const noses = STEPS.map(([dx, dy]) => [tip[0] + dx * aside, tip[1] + dy * (FLAG.height + 3)] as const);
    const free = noses.filter((each) => !placed.some((other) => overlap(other, flag, each)));
    const isKept = (each: FlagPlace['nose']): boolean =>
      kept.some((plate) => isOn(flagBody({ flag, tip, nose: each }), plate));
    const nose = free.find((each) => !isKept(each)) ?? free[0] ?? tip;
    placed.push({ flag, tip, nose });
  }
  return placed;
}

/** The flag's body, without its leader. */
export function flagBody({ flag, nose: [x, y] }: FlagPlace): Plate {
  const left = flag.stands === 'left' ? x - FLAG.width : x;
  return { left, right: left + FLAG.width, top: y - FLAG.height / 2, bottom: y + FLAG.height / 2 };
}

/** Where a flag may stand, nearest first: up and down in its own column, then in the next one outward, where rulers stand. */
const STEPS: readonly (readonly [number, number])[] = [0, 1].flatMap((dx) =>
  [0, 1, -1, 2, -2, 3, -3, 4, -4, 5, -5].map((dy) => [dx, dy] as const),
);

function overlap(other: FlagPlace, flag: Flag, nose: readonly [number, number]): boolean {
  const [a, b] = [span(other.flag, other.nose[0]), span(flag, nose[0])];
  return Math.abs(other.nose[1] - nose[1]) < FLAG.height + 2 && a[0] < b[1] && b[0] < a[1];
}

const isOn = (a: Plate, b: Plate): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

const span = (flag: Flag, x: number): readonly [number, number] =>
  flag.stands === 'left' ? [x - FLAG.width, x] : [x, x + FLAG.width];
