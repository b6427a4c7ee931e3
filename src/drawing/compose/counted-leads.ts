// Leads at the size of their wire. The worst case counts a lead that its sleeve does not reach as bare metal over the whole
// room that the sleeved wire would take: what it adds round the wire is told apart, so that the drawing shows the real part.

import type { ConductorRegion, Section } from '#solver/section/section.ts';
import { inMm } from '#units/quantity.ts';
import type { Box } from '#drawing/scene/outline.ts';

export interface CountedLead {
  /** Where metal is counted. */
  readonly counted: Box;
  /** The wire in the middle of it. */
  readonly wire: Box;
  /** Its diameter, mm. */
  readonly diameter: number;
}

const EPSILON_MM = 1e-6;

/** Null where the region is no lead, or no larger than its wire. `overall`: diameter of the wire, mm; null: not known. */
export function countedLead(
  region: ConductorRegion,
  section: Section,
  overall: number | null,
): CountedLead | null {
  if (overall === null || (region.of !== 'lead' && region.of !== 'link')) return null;
  const counted: Box = { x0: inMm(region.x0), y0: inMm(region.y0), x1: inMm(region.x1), y1: inMm(region.y1) };
  const across = climbs(region, section) ? 'x' : 'y';
  const [from, to] = across === 'x' ? [counted.x0, counted.x1] : [counted.y0, counted.y1];
  const spare = (to - from - overall) / 2;
  if (spare <= EPSILON_MM) return null;
  const wire =
    across === 'x'
      ? { ...counted, x0: from + spare, x1: to - spare }
      : { ...counted, y0: from + spare, y1: to - spare };
  return { counted, wire, diameter: overall };
}

/**
 * A sleeve is counted as closed over the flange, so that the wire in it ends a wall's thickness short of it. The real wire
 * goes on: drawn to the flange where a sleeve of its layer lies between.
 */
export function drawnToFlange(region: ConductorRegion, { chambers, regions }: Section): Box {
  const box: Box = { x0: inMm(region.x0), y0: inMm(region.y0), x1: inMm(region.x1), y1: inMm(region.y1) };
  const faces = chambers.flatMap(({ x0, x1 }) => [x0, x1]);
  const isSleeved = (from: number, to: number): boolean =>
    regions.some(
      ({ kind, layer, x0, x1, y0, y1 }) =>
        kind === 'sleeve' &&
        layer === region.layer &&
        x0 <= from &&
        to <= x1 &&
        y0 <= region.y0 &&
        region.y1 <= y1,
    );
  const left = faces.findLast((face) => face < region.x0 && isSleeved(face, region.x0));
  const right = faces.find((face) => face > region.x1 && isSleeved(region.x1, face));
  return {
    ...box,
    x0: left === undefined ? box.x0 : inMm(left),
    x1: right === undefined ? box.x1 : inMm(right),
  };
}

/** It goes up a flange: higher than wide, and out of its layer's band. */
function climbs({ layer, x0, x1, y0, y1 }: ConductorRegion, { bands }: Section): boolean {
  const tops = bands.flatMap((band) => (band.layer === layer ? [band.y1] : []));
  return y1 - y0 > x1 - x0 && y1 > Math.max(0, ...tops);
}
