// The weak spots: every place on a section where a pair falls short or is not shown, worst first.

import { printed } from '#judge/grade/grade.ts';
import type { FoundBridge, FoundPath, PairOutcome } from '#judge/paths/case-result.ts';
import { askedRank } from '#judge/paths/asked-rank.ts';
import { type Point, orientedLegs, pathPoints } from '#judge/paths/path-legs.ts';
import type { Answer } from '#judge/verdict/answer.ts';
import type { SpotBridge, WeakSpot } from '#judge/verdict/spot.ts';
import type { Design } from '#model/design.ts';
import { heightOf } from '#standards/ladder.ts';
import { type Nm, inMm } from '#units/quantity.ts';
import { type Unknowns, conditionsOf } from './conditions.ts';
import { merged, placesOf, worstFirst } from './merged-spots.ts';
import { placeOf } from './spot-kind.ts';

export interface JudgedPair {
  readonly worst: PairOutcome;
  readonly best: PairOutcome;
  readonly verdict: Answer;
  readonly unknowns: Unknowns;
}

/** Proven before assumed, what falls short before what is not shown, then worst first. */
export function weakSpots(design: Design, pairs: readonly JudgedPair[]): readonly WeakSpot[] {
  const told = pairs.map((pair) => {
    const spots = spotsOf(design, pair);
    return { spots, first: spots.filter(leadsTo(design, pair)) };
  });
  const leading = new Set(told.flatMap(({ first }) => first));
  return told.flatMap(({ spots }) => spots).toSorted((a, b) => firstTold(a, b, leading));
}

/** Whether a spot is that of the path that the pair is told by: it comes before others of its grade. */
function leadsTo(design: Design, { worst, best, verdict }: JudgedPair): (spot: WeakSpot) => boolean {
  const { holding, between } = verdict === 'falls-short' ? best : worst;
  if (holding?.kind !== 'path') return () => false;
  const section = holding.section?.name ?? 'outside';
  const points = JSON.stringify(pathPoints(orientedLegs(design, holding, between[0])));
  return (spot) => spot.section === section && JSON.stringify(spot.points) === points;
}

/** Of a pair that falls short whatever the unknowns are, first what is so then; the rest is not shown. */
function spotsOf(design: Design, { worst, best, verdict, unknowns }: JudgedPair): readonly WeakSpot[] {
  if (verdict === 'meets') return [];
  const isProven = verdict === 'falls-short';
  const proven = isProven ? merged(design, spotsIn(design, best, verdict, null)) : [];
  const causes = new Set(proven.flatMap((spot) => placesOf(design, spot)));
  const assumed = spotsIn(design, worst, 'not-shown', unknowns).filter(
    (spot) => !placesOf(design, spot).some((place) => causes.has(place)),
  );
  return [...proven, ...merged(design, assumed)];
}

const spotsIn = (
  design: Design,
  outcome: PairOutcome,
  verdict: Answer,
  unknowns: Unknowns | null,
): readonly WeakSpot[] =>
  outcome.failing.map((failing) => ({
    ...(failing.kind === 'bridge'
      ? bridgeSpot(failing, outcome, verdict)
      : pathSpot(design, failing, outcome, verdict, unknowns)),
    proven: unknowns === null,
  }));

function firstTold(a: WeakSpot, b: WeakSpot, leading: ReadonlySet<WeakSpot>): number {
  const order = (spot: WeakSpot): number => Number(!spot.proven) * 2 + Number(spot.verdict !== 'falls-short');
  const grade = heightOf(a.achieved) - heightOf(b.achieved);
  return order(a) - order(b) || grade || Number(leading.has(b)) - Number(leading.has(a)) || worstFirst(a, b);
}

type BareSpot = Omit<WeakSpot, 'proven'>;

function bridgeSpot(found: FoundBridge, outcome: PairOutcome, verdict: Answer): BareSpot {
  const { bridge } = found;
  return {
    kind: bridge.unsafe === null ? 'weak-bridge' : 'unsafe-bridge',
    between: outcome.between,
    section: 'outside',
    at: [0, 0],
    also: [],
    layers: [],
    metric: bridge.short?.metric ?? null,
    length: bridge.short?.length == null ? null : inMm(bridge.short.length),
    required: bridge.short === null ? null : inMm(bridge.short.required),
    achieved: printed(found.grade, outcome.needed),
    needed: outcome.needed,
    verdict,
    conditions: [],
    points: [],
    cause: { of: 'bridge', bridge: spotBridge(bridge) },
  };
}

const spotBridge = ({ id, grade, unsafe, short }: FoundBridge['bridge']): SpotBridge => ({
  id,
  grade,
  unsafe,
  short: short && {
    metric: short.metric,
    length: short.length === null ? null : inMm(short.length),
    required: inMm(short.required),
  },
});

function pathSpot(
  design: Design,
  path: FoundPath,
  outcome: PairOutcome,
  verdict: Answer,
  unknowns: Unknowns | null,
): BareSpot {
  const legs = orientedLegs(design, path, outcome.between[0]);
  const place = placeOf(design, path, legs);
  const { screen, lead, sleeved } = place;
  const required = requiredLength(path, outcome);
  const points = pathPoints(legs);
  return {
    kind: place.kind,
    between: outcome.between,
    section: path.section?.name ?? 'outside',
    at: flagPoint(path, points),
    also: [],
    layers: place.layers,
    metric: path.metric,
    length: inMm(path.length as Nm),
    required,
    achieved: printed(path.grade, outcome.needed),
    needed: outcome.needed,
    verdict,
    conditions: unknowns === null ? [] : conditionsOf(design, path, place, unknowns),
    points,
    cause: { of: 'path', plies: path.plies, over: path.chain.over, screen, lead, sleeved },
  };
}

/** Distance that would reach the needed grade along the path's metric, mm. */
export function requiredLength(path: FoundPath, pair: PairOutcome): number | null {
  const { needed } = pair;
  const limits = path.asked.distance(path.metric === 'creepage' ? askedRank(path, pair) : path.rank);
  const wanted = needed === 'reinforced' || needed === 'double' ? limits.reinforced : limits.basic;
  return wanted === null ? null : inMm(wanted);
}

/**
 * The flag stands where the path turns at a flange, the lowest of such places, or halfway along it: the same whichever way
 * the path is walked. At the origin where nothing is drawn.
 */
function flagPoint(path: FoundPath, points: readonly Point[]): Point {
  const faces = path.section?.chambers.flatMap(({ x0, x1 }) => [inMm(x0), inMm(x1)]) ?? [];
  const atFaces = points.filter(([x]) => faces.includes(x));
  const [first] = atFaces;
  if (first === undefined) return halfway(points);
  return atFaces.reduce((low, point) => (point[1] < low[1] ? point : low), first);
}

function halfway(points: readonly Point[]): Point {
  const steps = points.slice(1).map((to, i) => {
    const from = points[i] ?? to;
    return { from, to, long: Math.hypot(to[0] - from[0], to[1] - from[1]) };
  });
  let left = steps.reduce((sum, { long }) => sum + long, 0) / 2;
  for (const { from, to, long } of steps) {
    const share = long === 0 ? 0 : left / long;
    if (left <= long) return [along(from[0], to[0], share), along(from[1], to[1], share)];
    left -= long;
  }
  return points[0] ?? [0, 0];
}

/** To the nanometre. */
const along = (from: number, to: number, share: number): number =>
  Math.round((from + (to - from) * share) * 1e6) / 1e6;
