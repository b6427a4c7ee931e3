// What lies between two points of a section that someone measures on the drawing: the straight way and the solids that it goes
// through, and the shortest way along surfaces. The points count as specks of metal; gaps are followed, however narrow, for
// which gap counts as bridged depends on the voltage of a pair and not on two points.

import { shortestPieces } from '#solver/paths/find-pieces.ts';
import type { ConductorRegion, Region, Section } from '#solver/section/section.ts';
import { inMm, nm, type Nm } from '#units/quantity.ts';

export interface MeasuredWay {
  /** Millimetres. */
  readonly straight: number;
  /** Plies of tape that the straight way goes through. */
  readonly plies: number;
  /** Other solids on it, each once. */
  readonly solids: readonly Region['kind'][];
  /** It goes through metal. */
  readonly metal: boolean;
  /** Along surfaces and through air that lies between them, without going through a ply; null where there is no such way. */
  readonly surface: number | null;
}

type Spot = readonly [Nm, Nm];

/** From this thickness up nothing is gone through here: a surface way goes through nothing at all. */
const NOTHING_THIN = nm(1);
/** Half the side of a speck. */
const SPECK = 500;
const ASIDE = 2000;
const [FROM, TO] = ['measured from', 'measured to'];

export function measuredWay(section: Section, from: Spot, to: Spot): MeasuredWay {
  const crossed = section.regions.filter((region) => crosses(region, from, to));
  const kinds = crossed.map(({ kind }) => kind);
  const solids = [...new Set(kinds.filter((kind) => kind !== 'ply' && kind !== 'conductor'))];
  return {
    straight: inMm(nm(Math.round(Math.hypot(to[0] - from[0], to[1] - from[1])))),
    plies: kinds.filter((kind) => kind === 'ply').length,
    solids,
    metal: kinds.includes('conductor'),
    surface: surfaceWay(section, from, to),
  };
}

function surfaceWay(section: Section, from: Spot, to: Spot): number | null {
  const stuffs = section.regions.flatMap((region) => (region.kind === 'conductor' ? [] : [region.stuff]));
  const ranks = Array.from({ length: Math.max(0, ...stuffs) + 1 }, () => 0);
  const specks = [...specksAt(FROM, from, section), ...specksAt(TO, to, section)];
  const probed = { ...section, regions: [...section.regions, ...specks] };
  const options = {
    metric: 'creepage',
    x: nm(0),
    leastThickness: NOTHING_THIN,
    trackingRank: ranks,
  } as const;
  const ways = shortestPieces(probed, options, 0, 1).filter(
    ({ between, plies }) => plies === 0 && between.includes(FROM) && between.includes(TO),
  );
  return ways.length === 0 ? null : inMm(nm(Math.min(...ways.map(({ length }) => length))));
}

/** A point on metal is taken a hair's breadth beside it, on every side that is free: from the metal itself nothing is gone. */
function specksAt(name: string, [x, y]: Spot, { regions }: Section): readonly ConductorRegion[] {
  const isFree = (one: ConductorRegion): boolean =>
    !regions.some(
      (region) =>
        region.kind === 'conductor' &&
        region.x0 <= one.x1 &&
        one.x0 <= region.x1 &&
        region.y0 <= one.y1 &&
        one.y0 <= region.y1,
    );
  const here = speck(name, [x, y]);
  if (isFree(here)) return [here];
  return [-1, 0, 1]
    .flatMap((i) => [-1, 0, 1].map((j) => speck(name, [nm(x + i * ASIDE), nm(y + j * ASIDE)])))
    .filter(isFree);
}

const speck = (conductor: string, [x, y]: Spot): ConductorRegion => ({
  kind: 'conductor',
  conductor,
  of: 'lead',
  layer: null,
  bare: true,
  crossing: false,
  strippedLead: false,
  stretched: false,
  x0: nm(x - SPECK),
  x1: nm(x + SPECK),
  y0: nm(y - SPECK),
  y1: nm(y + SPECK),
});

/** The straight way runs inside it for a length; along its edge is not through it. */
function crosses({ x0, x1, y0, y1 }: Region, from: Spot, to: Spot): boolean {
  let [enters, leaves] = [0, 1];
  for (const [a, b, least, most] of [
    [from[0], to[0], x0, x1],
    [from[1], to[1], y0, y1],
  ] as const) {
    if (a === b) {
      if (a <= least || a >= most) return false;
      continue;
    }
    const [first, last] = [(least - a) / (b - a), (most - a) / (b - a)];
    enters = Math.max(enters, Math.min(first, last));
    leaves = Math.min(leaves, Math.max(first, last));
  }
  return leaves - enters > 1e-9;
}
