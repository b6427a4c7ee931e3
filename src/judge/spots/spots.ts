// The weak spots: every place on a section where a pair falls short or is not shown, worst first.

import type { Design } from '#model/design.ts';
import { inMm, type Nm } from '#units/quantity.ts';
import { heightOf } from '#standards/ladder.ts';
import { printed } from '#judge/grade/grade.ts';
import type { FoundBridge, FoundPath, PairOutcome } from '#judge/paths/case-result.ts';
import { orientedLegs, pathPoints, type Point } from '#judge/paths/path-legs.ts';
import { conditionsOf, type Unknowns } from './conditions.ts';
import { placeOf } from './spot-kind.ts';
import type { Answer, SpotBridge, SpotKind, WeakSpot } from '#judge/verdict/verdict.ts';

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
    cause: { of: 'path', plies: path.plies, over: path.chain.over },
  };
}

/** Distance that would reach the needed grade along the path's metric, mm. */
export function requiredLength(path: FoundPath, { needed }: PairOutcome): number | null {
  const limits = path.asked.distance(path.rank);
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

/**
 * Places that one act would mend are one spot, on whichever section it is worst; so are mirror places that are alike.
 */
function merged(design: Design, spots: readonly WeakSpot[]): readonly WeakSpot[] {
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
const placesOf = (design: Design, spot: WeakSpot): readonly string[] =>
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

function worstFirst(a: WeakSpot, b: WeakSpot): number {
  const grade = heightOf(a.achieved) - heightOf(b.achieved);
  if (grade !== 0) return grade;
  const share = (spot: WeakSpot) => (spot.length ?? 0) / (spot.required || 1);
  return share(a) - share(b);
}
