// The weak spots: every place on a section where a pair falls short or is not shown, worst first.

import type { Design } from '#model/design.ts';
import { inMm, type Nm } from '#units/quantity.ts';
import { heightOf } from '#standards/ladder.ts';
import { printed } from '#judge/grade/grade.ts';
import type { FoundBridge, FoundPath, PairOutcome } from '#judge/paths/outcome.ts';
import { orientedLegs, pathPoints, type Point } from '#judge/paths/path-legs.ts';
import { placeOf } from './spot-kind.ts';
import { bridgeSays, mendSays, spotSays } from './spot-words.ts';
import type { Answer, WeakSpot } from './verdict.ts';

export interface JudgedPair {
  readonly outcome: PairOutcome;
  readonly verdict: Answer;
}

export function weakSpots(design: Design, pairs: readonly JudgedPair[]): readonly WeakSpot[] {
  const spots = pairs
    .filter(({ verdict }) => verdict !== 'meets')
    .flatMap(({ outcome, verdict }) =>
      outcome.failing.map((failing) =>
        failing.kind === 'bridge'
          ? bridgeSpot(failing, outcome, verdict)
          : pathSpot(design, failing, outcome, verdict),
      ),
    );
  return merged(design, spots).toSorted(worstFirst);
}

function bridgeSpot(found: FoundBridge, outcome: PairOutcome, verdict: Answer): WeakSpot {
  const { bridge } = found;
  return {
    kind: bridge.unsafe === null ? 'short-clearance' : 'unsafe-bridge',
    between: outcome.between,
    section: 'outside',
    at: [0, 0],
    also: [],
    layers: [],
    metric: null,
    length: null,
    required: null,
    achieved: printed(found.grade, outcome.needed),
    needed: outcome.needed,
    verdict,
    points: [],
    says: bridgeSays(bridge, outcome.needed, verdict),
    mend: '',
  };
}

function pathSpot(design: Design, path: FoundPath, outcome: PairOutcome, verdict: Answer): WeakSpot {
  const legs = orientedLegs(design, path, outcome.between[0]);
  const place = placeOf(design, path, legs);
  const required = requiredLength(path, outcome);
  const points = pathPoints(legs);
  const spot = {
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
    points,
  };
  const facts = { ...spot, plies: path.plies, over: path.chain.over };
  return { ...spot, says: spotSays(facts), mend: mendSays(facts) };
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

/** Equal causes are one spot: the same layers at one side, on whichever section it is worst; or at the mirror place. */
function merged(design: Design, spots: readonly WeakSpot[]): readonly WeakSpot[] {
  const worst = new Map<string, WeakSpot>();
  for (const spot of spots) {
    const key = JSON.stringify([spot.kind, spot.between, spot.layers, sideOf(design, spot.at[0])]);
    const known = worst.get(key);
    if (!known || worstFirst(spot, known) < 0) worst.set(key, spot);
  }
  const kept = new Map<string, WeakSpot>();
  for (const spot of worst.values()) {
    const key = JSON.stringify([
      spot.kind,
      spot.between,
      spot.layers,
      spot.length,
      spot.metric,
      spot.achieved,
    ]);
    const known = kept.get(key);
    if (!known) kept.set(key, spot);
    else if (known.section === spot.section) kept.set(key, { ...known, also: [...known.also, spot.at] });
  }
  return [...kept.values()];
}

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
