// Failures too rare to be counted. Where the worst piece of all meets, none fails. Else pieces are drawn where failures are
// likelier, half of them near the worse ends, and each failure counts for how much rarer it is in truth (importance
// sampling with a defensive mixture: A. B. Owen, Y. Zhou, "Safe and effective importance sampling", Journal of the American
// Statistical Association 95 (2000), p. 135); the weights stay below two.

import { randomOfDraw, type Random } from '#units/random.ts';
import type { Coordinate } from './coordinates.ts';

export interface Rare {
  /** Part of pieces that fail. */
  readonly share: number;
  /** The true part lies below this 19 times in 20, as far as the drawn pieces tell. */
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
/** Of the normal distribution, one-sided for 95 %. */
const Z = 1.644854;
/** Draws of their own, so that they are not those that were counted. */
const APART = 0x5bd1e995;

export function rareOf(input: RareInput): Rare | null {
  const { coordinates, worstHolds, seed, count, meets, holdsAt } = input;
  if (count === 0 || (count - meets) / count >= RARE) return null;
  if (worstHolds) return { share: 0, atMost: 0, by: 'worst-case', draws: 0 };
  const tilts = tiltsOf(input);
  const weights = Array.from({ length: DRAWS }, (_, i) => {
    const random = randomOfDraw(seed ^ APART, i);
    const isNear = random.part() < 0.5;
    const values = coordinates.map((one, k) =>
      isNear ? drawNear(one, tilts[k]!, random) : one.draw(random),
    );
    return holdsAt(values) ? 0 : weightOf(coordinates, tilts, values);
  });
  const mean = weights.reduce((sum, weight) => sum + weight, 0) / DRAWS;
  const spread = weights.reduce((sum, weight) => sum + (weight - mean) ** 2, 0) / (DRAWS - 1);
  // where no failure was drawn at all, three in so many is what may still be there
  const atMost = mean === 0 ? 3 / count : Math.min(1, mean + Z * Math.sqrt(spread / DRAWS));
  return { share: mean, atMost, by: 'importance-sampling', draws: DRAWS };
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
  const near = coordinates.reduce((density, { worse, better, isCount, once }, i) => {
    const [tilt, value] = [tilts[i]!, values[i]!];
    if (tilt === 0) return density;
    if (isCount) return density * (value === worse ? tilt * once : (1 - tilt) / (1 - 1 / once));
    return density * ((value - worse) / (better - worse) <= NEAR ? 1 / NEAR : 0);
  }, 1);
  return 1 / (0.5 + 0.5 * near);
}
