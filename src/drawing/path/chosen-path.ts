// Which path of a verdict is to be drawn on a section: that of a spot, a printed one, or what limits the pair; where that
// lies on another section, the worst of the pair that is known on this one.

import type { Verdict } from '#judge/verdict/verdict.ts';
import type { WeakSpot } from '#judge/verdict/spot.ts';
import type { PathLeg } from '#judge/verdict/path.ts';
import type { Limiting, PairVerdict } from '#judge/verdict/pair.ts';
import type { Metric } from '#units/terms.ts';
import { leadingPath } from '#words/paths/leading-path.ts';
import { gradeHeight } from '#words/verdict/grade-height.ts';
import type { Point } from '#drawing/scene/outline.ts';
import type { SceneChoices } from '#drawing/scene/scene.ts';

export interface ChosenPath {
  readonly between: readonly [string, string];
  readonly metric: Metric;
  readonly length: number;
  readonly required: number | null;
  readonly section: string;
  readonly legs: readonly PathLeg[];
  readonly short: boolean;
}

/** Null where the pair has no path with a length there, or asks nothing. */
export function chosenPath(verdict: Verdict, section: string, choices: SceneChoices): ChosenPath | null {
  const path = namedPath(verdict, section, choices);
  return path?.section === section ? path : null;
}

function namedPath(verdict: Verdict, shown: string, choices: SceneChoices): ChosenPath | null {
  const spot = verdict.weakSpots[choices.spot ?? -1];
  if (spot !== undefined) return pathOfSpot(verdict, spot);
  const pair = pairOf(verdict, choices.pair ?? null);
  if (pair === null) return null;
  const short = pair.verdict === 'falls-short';
  const printed = pair.paths[choices.printed ?? -1];
  if (printed !== undefined) {
    const { metric, length, section, legs } = printed;
    if (length === null || section === null) return null;
    const required = printed.required === null ? null : askedFor(pair.needed, printed.required);
    return { between: pair.between, metric, length, section, legs, required, short };
  }
  const leading = leadingPath(pair);
  const limiting = leading === null ? null : limitingPath(pair.between, leading, short);
  return limiting === null || limiting.section === shown ? limiting : worstHere(verdict, pair, shown);
}

/** A weak spot of the pair, worst first; else of its printed paths the one of the lowest grade, through the fewest plies. */
function worstHere(verdict: Verdict, pair: PairVerdict, shown: string): ChosenPath | null {
  const isHere = ({ between, section }: WeakSpot) =>
    section === shown && between !== null && between.join() === pair.between.join();
  const spot = verdict.weakSpots.find(isHere);
  if (spot !== undefined) return pathOfSpot(verdict, spot);
  const here = pair.paths.flatMap(({ metric, length, section, legs, required, grade, plies }) => {
    if (section !== shown || length === null || required === null || grade === null) return [];
    const asked = askedFor(pair.needed, required);
    const path = { between: pair.between, metric, length, section, legs, required: asked, short: false };
    return [{ path, order: [gradeHeight(grade), plies, shareOf(path)] as const }];
  });
  const [worst] = here.sort(
    (a, b) => a.order[0] - b.order[0] || a.order[1] - b.order[1] || a.order[2] - b.order[2],
  );
  return worst?.path ?? null;
}

const shareOf = ({ length, required }: ChosenPath): number => length / (required ?? Infinity);

/** The named pair; else the worst one, which the verdict lists first among those that ask something. */
function pairOf(verdict: Verdict, named: readonly [string, string] | null) {
  if (named === null) {
    const rank = (pair: Verdict['pairs'][number]): number => WORST_FIRST.indexOf(pair.verdict);
    return (
      [...verdict.pairs].filter((pair) => pair.required !== null).sort((a, b) => rank(a) - rank(b))[0] ?? null
    );
  }
  return verdict.pairs.find(({ between }) => named.every((id) => between.includes(id))) ?? null;
}

const WORST_FIRST = ['falls-short', 'not-shown', 'meets'] as const;

export function limitingPath(
  between: readonly [string, string],
  path: Limiting,
  short: boolean,
): ChosenPath | null {
  const { metric, length, required, section, legs } = path;
  if (metric !== 'creepage' && metric !== 'clearance') return null;
  if (length === null || section === null) return null;
  return { between, metric, length, required, section, legs, short };
}

/** A spot keeps only the corners of its path; its legs are taken from the pair where they are the same path. */
function pathOfSpot(verdict: Verdict, spot: WeakSpot): ChosenPath | null {
  if (spot.between === null || spot.length === null || spot.points.length < 2) return null;
  const pair = pairOf(verdict, spot.between);
  const known = pathsOf(pair).find(
    (path) => path.section === spot.section && JSON.stringify(path.points) === JSON.stringify(spot.points),
  );
  return {
    between: spot.between,
    metric: spot.metric ?? 'creepage',
    length: spot.length,
    required: spot.required,
    section: spot.section,
    legs: known?.legs ?? legsBetween(spot.points),
    short: spot.verdict === 'falls-short',
  };
}

/** What the pair is told by, what limits it at worst, and its printed paths. */
function pathsOf(pair: PairVerdict | null) {
  if (pair === null) return [];
  return [leadingPath(pair), pair.limiting, ...pair.paths].filter((path) => path !== null);
}

const legsBetween = (points: readonly Point[]): readonly PathLeg[] =>
  points.slice(1).map((to, k) => {
    const from = points[k] ?? to;
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    return { kind: 'surface', from, to, length, plies: 0, course: null };
  });

const askedFor = (
  needed: string,
  required: { readonly basic: number | null; readonly reinforced: number | null },
): number | null => (needed === 'reinforced' || needed === 'double' ? required.reinforced : required.basic);
