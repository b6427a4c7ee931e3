// A found path as it is printed and drawn: legs in order from the first circuit to the second, in millimetres, each
// with a few words on where it runs.

import type { Design } from '#model/design.ts';
import type { Leg } from '#solver/paths/pieces.ts';
import type { Region, Section, SolidRegion } from '#solver/section/section.ts';
import { inMm, nm, type Nm } from '#units/quantity.ts';
import type { FoundPath } from './outcome.ts';
import type { PathLeg } from '#judge/verdict/verdict.ts';
import { metalTies } from '#judge/grade/metal-ties.ts';

export type Point = readonly [number, number];

export const pointMm = ([x, y]: readonly [Nm, Nm]): Point => [inMm(x), inMm(y)];

/** A leg with the solver's own, for looking at what lies beside it. */
export interface OrientedLeg extends Leg {
  readonly conductors: readonly [string, string];
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
    if (legs.length === 0) {
      const touch: OrientedLeg = {
        kind: 'surface',
        from: piece.piece.from,
        to: piece.piece.to,
        length: nm(0),
        stuff: null,
        plies: 0,
        conductors,
      };
      return here === '' ? [] : [touch];
    }
    const along = forward ? legs : legs.toReversed().map((leg) => ({ ...leg, from: leg.to, to: leg.from }));
    return along.map((leg) => ({ ...leg, conductors }));
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
  let climbed: PathLeg | null = null;
  legs.forEach((leg, i) => {
    const before = legs[i - 1];
    if (before && (before.to[0] !== leg.from[0] || before.to[1] !== leg.from[1])) {
      const over = leg.conductors[0];
      out.push({
        kind: 'over',
        from: pointMm(before.to),
        to: pointMm(leg.from),
        length: 0,
        plies: 0,
        says: over === 'core' ? 'over the core' : `over ${over}`,
      });
    }
    const words = legWords(section, leg, climbed !== null && out.at(-1)?.kind === 'surface');
    const printed: PathLeg = {
      kind: leg.kind,
      from: pointMm(leg.from),
      to: pointMm(leg.to),
      length: inMm(leg.length),
      plies: leg.plies,
      says: words,
    };
    if (words.startsWith('up the tape edges') || words.startsWith('down the tape edges')) climbed = printed;
    out.push(printed);
  });
  return out;
}

function legWords(section: Section, leg: Leg, back: boolean): string {
  const beside = regionsAt(section, middle(leg));
  const kinds = new Set(beside.map((r) => r.kind));
  const vertical = leg.from[0] === leg.to[0];
  const up = leg.to[1] >= leg.from[1] ? 'up' : 'down';
  switch (leg.kind) {
    case 'air':
      return 'through air';
    case 'closed-joint':
      return 'through a closed joint';
    case 'through':
      return throughWords(beside, leg);
    case 'surface':
      if (leg.length === 0 && leg.from[0] === leg.to[0] && leg.from[1] === leg.to[1]) return 'in contact';
      if (kinds.has('sleeve')) return 'along the sleeve';
      if (kinds.has('wireCover')) return 'along the wire’s cover';
      if (vertical) {
        const face = section.chambers.some(({ x0, x1 }) => x0 === leg.from[0] || x1 === leg.from[0]);
        if (kinds.has('ply')) return face ? `${up} the tape edges at the flange` : `${up} the tape’s edge`;
        if (kinds.has('moulding')) return `${up} the flange`;
        return `${up} the block`;
      }
      if (kinds.has('block')) return back ? 'back along the margin' : 'along the margin';
      if (kinds.has('ply')) return back ? 'back along the tape' : 'along the tape';
      return kinds.has('moulding') ? 'over the former' : 'along the surface';
  }
}

function throughWords(beside: readonly Region[], leg: Leg): string {
  const solid = beside.find((r): r is SolidRegion => r.kind !== 'conductor');
  const plies = leg.plies === 1 ? 'one ply' : `${leg.plies} plies`;
  switch (solid?.kind) {
    case 'block':
      return 'through the margin block';
    case 'sleeve':
      return 'through the sleeve';
    case 'wireCover':
      return leg.plies === 1 ? 'through the wire’s cover' : `through the wire’s cover of ${leg.plies} layers`;
    case 'moulding':
      return 'through the former’s thin wall';
    case 'wrap':
      return `through ${plies} round the core`;
    case 'ply':
    case undefined:
      return `through ${plies}`;
  }
}

const middle = (leg: Leg): readonly [number, number] => [
  (leg.from[0] + leg.to[0]) / 2,
  (leg.from[1] + leg.to[1]) / 2,
];

/** Regions that hold or touch a point. */
export const regionsAt = (section: Section, [x, y]: readonly [number, number]): readonly Region[] =>
  section.regions.filter((r) => r.x0 <= x && r.x1 >= x && r.y0 <= y && r.y1 >= y);
