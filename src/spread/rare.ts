// Failures too rare to be counted. Where the worst piece of all meets, none fails. Else pieces are drawn where failures are
// likelier: a quarter as always, a quarter with plies forgotten, a quarter near the worse ends, a quarter with both; each
// failure counts for how much rarer it is in truth (importance sampling with a defensive mixture: A. B. Owen, Y. Zhou, "Safe
// and effective importance sampling", Journal of the American Statistical Association 95 (2000), p. 135). It estimates; what
// bounds the share is the counting, since failures may lie where none was looked for.

import { randomOfDraw, type Random } from '#units/random.ts';
import type { Coordinate } from './coordinates.ts';
import { wilson } from './wilson.ts';

export interface Rare {
  /** Part of pieces that fail. */
  readonly share: number;
  /** The true part lies below this, by the counted pieces (the end of their interval). */
  readonly atMost: number;
  readonly by: 'worst-case' | 'importance-sampling';
  readonly draws: number;
}

export interface RareInput {
  readonly coordinates: readonly Coordinate[];
  /** Fields that decide, heaviest first: failures lie near their worse ends. */
  readonly deciding: readonly string[];
  readonly worstHolds: boolean;
  readonly seed: number;
  readonly count: number;
  readonly meets: number;
  readonly holdsAt: (values: readonly number[]) => boolean;
}

/** Above this share counting finds failures well enough. */
const RARE = 0.001;
const DRAWS = 200;
/** Where pieces are drawn near the worse ends, a length lies in this part of its range next to its worse end. */
const NEAR = 0.5;
/** More lengths than these at once are seldom near. */
const MOST_NEAR = 4;
/** Draws of their own, so that they are not those that were counted. */
const APART = 0x5bd1e995;

export function rareOf(input: RareInput): Rare | null {
  const { coordinates, worstHolds, seed, count, meets, holdsAt } = input;
  if (count === 0 || (count - meets) / count >= RARE) return null;
  if (worstHolds) return { share: 0, atMost: 0, by: 'worst-case', draws: 0 };
  const tilts = tiltsOf(input);
  const weights = Array.from({ length: DRAWS }, (_, i) => {
    const random = randomOfDraw(seed ^ APART, i);
    const [plies, lengths] = [i % 2 === 1, i % 4 >= 2];
    const values = coordinates.map((one, k) =>
      (one.isCount ? plies : lengths) ? drawNear(one, tilts[k]!, random) : one.draw(random),
    );
    return holdsAt(values) ? 0 : weightOf(coordinates, tilts, values);
  });
  const share = weights.reduce((sum, weight) => sum + weight, 0) / DRAWS;
  return { share, atMost: 1 - wilson(meets, count)[0], by: 'importance-sampling', draws: DRAWS };
}

/** How likely each coordinate is drawn near its worse end; 0 where it is drawn as always. */
function tiltsOf({ coordinates, deciding }: RareInput): readonly number[] {
  const counts = coordinates.filter(({ isCount }) => isCount).length;
  const lengths = new Set(deciding.slice(0, MOST_NEAR));
  return coordinates.map(({ field, isCount }) => (isCount ? 1 / (counts + 1) : lengths.has(field) ? 1 : 0));
}

function drawNear({ worse, better, isCount, draw }: Coordinate, tilt: number, random: Random): number {
  if (tilt === 0) return draw(random);
  if (isCount) return random.part() < tilt ? worse : better;
  return worse + (better - worse) * NEAR * random.part();
}

/** How much rarer such a piece is in truth than among those drawn here. */
function weightOf(
  coordinates: readonly Coordinate[],
  tilts: readonly number[],
  values: readonly number[],
): number {
  const density = { plies: 1, lengths: 1 };
  coordinates.forEach(({ worse, better, isCount, once }, i) => {
    const [tilt, value] = [tilts[i]!, values[i]!];
    if (tilt === 0) return;
    if (isCount) density.plies *= value === worse ? tilt * once : (1 - tilt) / (1 - 1 / once);
    else density.lengths *= (value - worse) / (better - worse) <= NEAR ? 1 / NEAR : 0;
  });
  return 4 / ((1 + density.plies) * (1 + density.lengths));
}
