// A found path as it is printed and drawn: legs in order from the first circuit to the second, in millimetres, each
// with what it runs along.

import type { Design } from '#model/design.ts';
import type { Leg } from '#solver/network/pieces.ts';
import type { Region, Section, SolidRegion } from '#solver/section/section.ts';
import { inMm, nm, type Nm } from '#units/quantity.ts';
import type { FoundPath } from './case-result.ts';
import type { LegCourse, PathLeg } from '#judge/verdict/path.ts';
import { metalTies } from '#judge/conductors/metal-ties.ts';
import { countedLength } from '#judge/grade/chain.ts';

export type Point = readonly [number, number];

export const pointMm = ([x, y]: readonly [Nm, Nm]): Point => [inMm(x), inMm(y)];

/** A leg with the solver's own, for looking at what lies beside it. */
export interface OrientedLeg extends Leg {
  readonly conductors: readonly [string, string];
  /** Its piece is too short to count. */
  readonly isUncounted: boolean;
}

/** Legs of all pieces inside the section, oriented along the chain; outside entries have none. */
export function orientedLegs(design: Design, path: FoundPath, from: string): readonly OrientedLeg[] {
  const tied = metalTies(design, path.coreTo).nameOf;
  let at = from;
  return path.chain.pieces.flatMap((piece, i): readonly OrientedLeg[] => {
    const next = path.chain.over[i] ?? '';
    const [a, b] = piece.kind === 'inside' ? piece.piece.between : piece.between;
    const forward = tied(a) === at;
    const here = at;
    at = next;
    if (piece.kind === 'outside') return [];
    const legs = piece.piece.trace();
    const conductors = [forward ? a : b, forward ? b : a] as const;
    const isUncounted = piece.length > 0 && countedLength(path.chain, piece, path.asked.x) === 0;
    if (legs.length === 0) {
      const touch: OrientedLeg = {
        kind: 'surface',
        from: piece.piece.from,
        to: piece.piece.to,
        length: nm(0),
        stuff: null,
        plies: 0,
        conductors,
        isUncounted,
      };
      return here === '' ? [] : [touch];
    }
    const along = forward ? legs : legs.toReversed().map((leg) => ({ ...leg, from: leg.to, to: leg.from }));
    return along.map((leg) => ({ ...leg, conductors, isUncounted }));
  });
}

/** Where the whole path turns, with the way over floating conductors drawn straight. */
export function pathPoints(legs: readonly OrientedLeg[]): readonly Point[] {
  const points: Point[] = [];
  for (const leg of legs) {
    for (const point of [pointMm(leg.from), pointMm(leg.to)]) {
      const last = points.at(-1);
      if (!last || last[0] !== point[0] || last[1] !== point[1]) points.push(point);
    }
  }
  return points;
}

export function printedLegs(section: Section, legs: readonly OrientedLeg[]): readonly PathLeg[] {
  const out: PathLeg[] = [];
  let hasClimbed = false;
  legs.forEach((leg, i) => {
    const before = legs[i - 1];
    if (before && (before.to[0] !== leg.from[0] || before.to[1] !== leg.from[1])) {
      out.push({
        kind: 'over',
        from: pointMm(before.to),
        to: pointMm(leg.from),
        length: 0,
        plies: 0,
        course: { by: 'over', conductor: leg.conductors[0] },
      });
    }
    const course = courseOf(section, leg, hasClimbed && out.at(-1)?.kind === 'surface');
    out.push({
      kind: leg.kind,
      from: pointMm(leg.from),
      to: pointMm(leg.to),
      length: inMm(leg.length),
      plies: leg.plies,
      course,
      ...(leg.isUncounted && leg.length > 0 ? { counts: false as const } : {}),
    });
    hasClimbed ||= 'what' in course && course.what === 'tape-edges-at-flange';
  });
  return out;
}

/** `back`: the way has climbed past tape edges at a flange before. */
function courseOf(section: Section, leg: Leg, back: boolean): LegCourse {
  const beside = regionsAt(section, middle(leg));
  switch (leg.kind) {
    case 'air':
    case 'closed-joint':
      return { by: leg.kind };
    case 'through':
      return { by: 'through', what: solidThrough(beside) };
    case 'surface':
      return onSurface(section, leg, new Set(beside.map((r) => r.kind)), back);
  }
}

function onSurface(section: Section, leg: Leg, kinds: ReadonlySet<Region['kind']>, back: boolean): LegCourse {
  const vertical = leg.from[0] === leg.to[0];
  if (leg.length === 0 && vertical && leg.from[1] === leg.to[1]) return { by: 'contact' };
  if (kinds.has('sleeve')) return { by: 'along', what: 'sleeve', back: false };
  if (kinds.has('wireCover')) return { by: 'along', what: 'cover', back: false };
  if (vertical) {
    const by = leg.to[1] >= leg.from[1] ? 'up' : 'down';
    const atFlange = section.chambers.some(({ x0, x1 }) => x0 === leg.from[0] || x1 === leg.from[0]);
    if (kinds.has('ply')) return { by, what: atFlange ? 'tape-edges-at-flange' : 'tape-edge' };
    return { by, what: kinds.has('moulding') ? 'flange' : 'block' };
  }
  if (kinds.has('block')) return { by: 'along', what: 'margin', back };
  if (kinds.has('ply')) return { by: 'along', what: 'tape', back };
  return { by: 'along', what: kinds.has('moulding') ? 'former' : 'surface', back: false };
}

function solidThrough(beside: readonly Region[]): Extract<LegCourse, { by: 'through' }>['what'] {
  const solid = beside.find((r): r is SolidRegion => r.kind !== 'conductor');
  switch (solid?.kind) {
    case 'block':
    case 'sleeve':
    case 'wrap':
      return solid.kind;
    case 'wireCover':
      return 'cover';
    case 'moulding':
      return 'wall';
    case 'ply':
    case undefined:
      return 'plies';
  }
}

const middle = (leg: Leg): readonly [number, number] => [
  (leg.from[0] + leg.to[0]) / 2,
  (leg.from[1] + leg.to[1]) / 2,
];

/** Regions that hold or touch a point. */
export const regionsAt = (section: Section, [x, y]: readonly [number, number]): readonly Region[] =>
  section.regions.filter((r) => r.x0 <= x && r.x1 >= x && r.y0 <= y && r.y1 >= y);
