// The oracle's sections: every rectangle of the plain section, of each lead section and of their slumped forms.
// Written from the specification alone, slowly and plainly, to disagree with the solver where either is wrong.

import type { Build, BuildLayer, BuildWire, Lay } from '#solver/section/build.ts';
import type { Region, Section } from '#solver/section/section.ts';
import { nm } from '#units/quantity.ts';
import type { Box } from './box.ts';
import { box, boxes, clip, overlap, subtract } from './box.ts';
import { surroundingsOf } from './oracle-former.ts';
import type { OracleLead, OracleRiser } from './oracle-lead.ts';
import { leadsOf, limits } from './oracle-lead.ts';
import { conductor, solid } from './oracle-region.ts';
import type { Free, OracleSlump } from './oracle-slump.ts';
import { clipped, drift, stretched } from './oracle-slump.ts';
import type { OracleBand } from './oracle-stack.ts';
import { chambersOf, stackOf, stackTop } from './oracle-stack.ts';

export type OracleSection = Pick<
  Section,
  'kind' | 'slumped' | 'lays' | 'regions' | 'frame' | 'sagging' | 'potted'
>;

/** All sections of a build. A riser is strong from `leastThickness` of sleeve up. */
export function oracleSections(build: Build, leastThickness: number): OracleSection[] {
  return laySets(build).flatMap((lays) => {
    const asDrawn = oracleSection(build, lays, null, leastThickness);
    const slumps: OracleSlump[] = ['as-is'];
    if (canDrift(build, lays, 'left', leastThickness)) slumps.push('left');
    if (canDrift(build, lays, 'right', leastThickness)) slumps.push('right');
    return [asDrawn, ...slumps.map((slump) => oracleSection(build, lays, slump, leastThickness))];
  });
}

/** None, each alone, and every two of different circuits at the same side of the same chamber. */
export function laySets(build: Build): Lay[][] {
  const chamber = (lay: Lay): number => build.layers[lay.layer]!.chamber;
  const pairs = build.lays.flatMap((a, i) =>
    build.lays
      .slice(i + 1)
      .filter(
        (b) =>
          a.circuit !== b.circuit &&
          a.group !== b.group &&
          a.exit === b.exit &&
          chamber(a) === chamber(b) &&
          !a.apart &&
          !b.apart,
      )
      .map((b) => [a, b]),
  );
  return [[], ...build.lays.map((lay) => [lay]), ...pairs];
}

function canDrift(
  build: Build,
  lays: readonly Lay[],
  side: 'left' | 'right',
  leastThickness: number,
): boolean {
  const bands = stackOf(build, lays);
  const { risers } = leadsOf(build, bands, lays, leastThickness);
  const chambers = chambersOf(build);
  return bands.some((band) => drift(band, limits(band, chambers[band.chamber]!, risers), side) > 0);
}

export function oracleSection(
  build: Build,
  lays: readonly Lay[],
  slump: OracleSlump,
  leastThickness: number,
): OracleSection {
  let bodies = 0;
  const body = (): number => bodies++;
  const bands = stackOf(build, lays);
  const { leads, risers } = leadsOf(build, bands, lays, leastThickness);
  const top = Math.max(...build.chambers.map((_, i) => stackTop(bands, i)));
  const around = surroundingsOf(build, top, lays.length === 0 ? 'round' : 'inside-tube', body);
  const inWindow = bands.flatMap((band) => bandRegions(build, band, leads, risers, slump, body));
  const regions = [
    ...around.regions,
    ...inWindow,
    ...leads.flatMap((lead) => leadRegions(build, lead, body)),
  ];
  refuseOverlaps(regions);
  const { frame } = around;
  return {
    kind: lays.length === 0 ? 'plain' : 'lead',
    slumped: slump,
    lays: lays.map((lay) => lay.name),
    regions,
    frame: { x0: nm(frame.x0), y0: nm(frame.y0), x1: nm(frame.x1), y1: nm(frame.y1) },
    sagging: slump === null ? [] : saggingOf(build, bands, regions),
    potted: build.potted,
  };
}

function bandRegions(
  build: Build,
  band: OracleBand,
  leads: readonly OracleLead[],
  risers: readonly OracleRiser[],
  slump: OracleSlump,
  body: () => number,
): Region[] {
  const chamber = chambersOf(build)[band.chamber]!;
  const free = limits(band, chamber, risers);
  const found: Region[] = [];
  for (const block of band.blocks) {
    const drawn = { x0: block.x0, y0: band.y0, x1: block.x1, y1: band.y0 + block.height };
    const rect = clip(drawn, { x0: free.left, y0: band.y0, x1: free.right, y1: band.y1 });
    const margin = band.layer.margins[block.side];
    const crossing = { crossX: 'strong', crossY: margin.moulded ? 'measured' : 1 } as const;
    if (rect !== null) found.push(solid(rect, 'block', margin.stuff, body(), build.potted, crossing));
  }
  if (band.tape !== null) found.push(...plies(build, band, free, slump, body));
  else if (band.kind === 'screen') found.push(...screen(band, free));
  else if (band.kind === 'winding') found.push(...winding(build, band, free, leads, slump, body));
  return found;
}

function plies(build: Build, band: OracleBand, free: Free, slump: OracleSlump, body: () => number): Region[] {
  const { plies: count, of } = band.tape!;
  let { x0, x1 } = clipped(band, free);
  const shift =
    slump === 'left' ? -drift(band, free, 'left') : slump === 'right' ? drift(band, free, 'right') : 0;
  x0 += shift;
  x1 += shift;
  const closed = build.potted || (of.cemented && band.kind === 'tape');
  return Array.from({ length: count }, (_, ply) => {
    const y0 = band.y0 + ply * of.plyThickness;
    const extra = { layer: of.index, ply, turnUp: band.kind === 'tape' ? of.turnUp : 0 };
    return boxes(box(x0, y0, x1, y0 + of.plyThickness)).map((rect) =>
      solid(rect, 'ply', of.stuff, body(), closed, extra),
    );
  }).flat();
}

function screen(band: OracleBand, free: Free): Region[] {
  const { x0, x1 } = clipped(band, free);
  const id = band.layer.kind === 'screen' ? (band.layer.circuit ?? band.layer.id) : '';
  return boxes(box(x0, band.y0, x1, band.y0 + band.own)).map((rect) =>
    conductor(rect, id, 'screen', band.layer.index),
  );
}

function winding(
  build: Build,
  band: OracleBand,
  free: Free,
  leads: readonly OracleLead[],
  slump: OracleSlump,
  body: () => number,
): Region[] {
  const { layer } = band;
  if (layer.kind !== 'winding') return [];
  const hull = { ...clipped(band, free), y0: band.y0, y1: band.y0 + band.own };
  if (hull.x0 >= hull.x1) return [];
  const found = covered(build, layer.wire, hull, body).map((part) =>
    part.kind === 'metal' ? conductor(part.rect, layer.circuit, 'winding', layer.index) : part.region,
  );
  if (slump === null) return found;
  const chamber = chambersOf(build)[band.chamber]!;
  const plain = stackOf(build, []).find((b) => b.position === band.position)!;
  const wide = stretched(band, plain, free, { left: chamber.x0, right: chamber.x1 });
  // What is left of the room beside the lead is all that an end can move into.
  const inTheWay = leads.flatMap((lead) => [...lead.sleeves, ...lead.covers, ...lead.conductors]);
  const ends = boxes(box(wide.x0, hull.y0, hull.x0, hull.y1), box(hull.x1, hull.y0, wide.x1, hull.y1));
  const loose = subtract(ends, inTheWay).map((rect) =>
    conductor(rect, layer.circuit, 'winding', layer.index),
  );
  return [...found, ...loose];
}

type Part =
  { readonly kind: 'metal'; readonly rect: Box } | { readonly kind: 'cover'; readonly region: Region };

function covered(build: Build, wire: BuildWire, hull: Box, body: () => number): Part[] {
  if (wire.cover === null) return [{ kind: 'metal', rect: hull }];
  const c = wire.cover.thickness;
  const metal = boxes(box(hull.x0 + c, hull.y0 + c, hull.x1 - c, hull.y1 - c));
  const crossing = wire.cover.plies ?? 'strong';
  const { stuff } = wire.cover;
  const of = body();
  return [
    ...metal.map((rect): Part => ({ kind: 'metal', rect })),
    ...subtract([hull], metal).map((rect): Part => ({
      kind: 'cover',
      region: solid(rect, 'wireCover', stuff, of, build.potted, { crossX: crossing, crossY: crossing }),
    })),
  ];
}

function leadRegions(build: Build, lead: OracleLead, body: () => number): Region[] {
  const { lay } = lead;
  const layer: BuildLayer = build.layers[lay.layer]!;
  const crossing = lay.wire.cover?.plies ?? 'strong';
  const cover = body();
  const sleeve = body();
  return [
    ...lead.conductors.map((rect) => conductor(rect, lay.circuit, lay.kind, layer.index)),
    ...lead.covers.map((rect) =>
      solid(rect, 'wireCover', lay.wire.cover!.stuff, cover, build.potted, {
        crossX: crossing,
        crossY: crossing,
      }),
    ),
    ...lead.sleeves.map((rect) => solid(rect, 'sleeve', lay.sleeve!.stuff, sleeve, build.potted)),
  ];
}

/** The air of the bands of windings and crossing leads, from face to face. */
function saggingOf(
  build: Build,
  bands: readonly OracleBand[],
  regions: readonly Region[],
): OracleSection['sagging'] {
  return bands
    .filter((band) => band.kind === 'winding' || band.kind === 'crossing-lead')
    .flatMap((band) => {
      const chamber = chambersOf(build)[band.chamber]!;
      return subtract([{ x0: chamber.x0, y0: band.y0, x1: chamber.x1, y1: band.y1 }], regions);
    })
    .map((b) => ({ x0: nm(b.x0), y0: nm(b.y0), x1: nm(b.x1), y1: nm(b.y1) }));
}

/** Two things in one place would make every answer worthless; conductors of one circuit may share it. */
function refuseOverlaps(regions: readonly Region[]): void {
  regions.forEach((a, i) =>
    regions.slice(i + 1).forEach((b) => {
      const same = a.kind === 'conductor' && b.kind === 'conductor' && a.conductor === b.conductor;
      if (!same && overlap(a, b)) throw new Error(`regions overlap: ${JSON.stringify([a, b])}`);
    }),
  );
}
