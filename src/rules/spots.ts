// The weak spots: every place on a section where a pair falls short or is not shown, worst first.

import type { Design } from '#model/design.ts';
import { inMm, type Nm } from '#units/quantity.ts';
import { heightOf, printed } from './grade.ts';
import type { FoundBridge, FoundPath, PairOutcome } from './outcome.ts';
import { orientedLegs, pathPoints, type Point } from './path-legs.ts';
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
  return merged(spots).toSorted(worstFirst);
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
    says: bridgeSays(bridge, outcome.needed),
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

/** The flag stands where the path turns at a flange or is at its middle; at the origin where nothing is drawn. */
function flagPoint(path: FoundPath, points: readonly Point[]): Point {
  const section = path.section;
  const faces = section?.chambers.flatMap(({ x0, x1 }) => [inMm(x0), inMm(x1)]) ?? [];
  return points.find(([x]) => faces.includes(x)) ?? points[Math.floor(points.length / 2)] ?? [0, 0];
}

/** Equal causes are one spot: the same layers at one side, on whichever section it is worst; or at the mirror place. */
function merged(spots: readonly WeakSpot[]): readonly WeakSpot[] {
  const worst = new Map<string, WeakSpot>();
  for (const spot of spots) {
    const key = JSON.stringify([spot.kind, spot.between, spot.layers, spot.at[0]]);
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

function worstFirst(a: WeakSpot, b: WeakSpot): number {
  const grade = heightOf(a.achieved) - heightOf(b.achieved);
  if (grade !== 0) return grade;
  const share = (spot: WeakSpot) => (spot.length ?? 0) / (spot.required || 1);
  return share(a) - share(b);
}
