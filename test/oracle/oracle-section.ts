// The oracle's sections: every rectangle of the plain section, of each lead section and of their slumped forms.
// Written from the specification alone, slowly and plainly, to disagree with the solver where either is wrong.

import type { Build, BuildLayer, BuildWire, Lay } from '#solver/section/build.ts';
import type { Region, Section } from '#solver/section/section.ts';
import { nm } from '#units/quantity.ts';
import type { Box } from './box.ts';
import { box, boxes, clip, erode, overlap, subtract } from './box.ts';
import { surroundingsOf } from './oracle-former.ts';
import type { OracleLead, OracleRiser } from './oracle-lead.ts';
import { leadsOf, limits } from './oracle-lead.ts';
import { conductor, solid } from './oracle-region.ts';
import type { Free, OracleHandling, OracleSlump, PlainBand } from './oracle-slump.ts';
import { clipped, drift, facesAnother, isLoose, stretchedRows } from './oracle-slump.ts';
import type { OracleBand, OracleChamber } from './oracle-stack.ts';
import { chambersOf, stackOf, stackTop } from './oracle-stack.ts';

export type OracleSection = Pick<
  Section,
  'kind' | 'slumped' | 'lays' | 'regions' | 'frame' | 'sagging' | 'potted'
>;

/** All sections of a build. A riser is strong from `leastThickness` of sleeve up. */
export function oracleSections(build: Build, leastThickness: number): OracleSection[] {
  const everything = (): boolean => true;
  return laySets(build).flatMap((lays) => [
    oracleSection(build, lays, { slump: null, moves: everything }, leastThickness),
    ...slumpsOf(build, everything).map((slump) =>
      oracleSection(build, lays, { slump, moves: everything }, leastThickness),
    ),
  ]);
}

/** Slumped sections in which only layers of these circuits, and of none, have moved. */
export function oracleSectionsMovedAlone(
  build: Build,
  circuits: readonly string[],
  leastThickness: number,
): OracleSection[] {
  const moves = (layer: BuildLayer): boolean =>
    layer.kind === 'tape' || layer.circuit === null || circuits.includes(layer.circuit);
  return laySets(build).flatMap((lays) =>
    slumpsOf(build, moves).map((slump) => oracleSection(build, lays, { slump, moves }, leastThickness)),
  );
}

/** None, each alone, and every two of different circuits at the same face of a chamber, through a divider or not. */
export function laySets(build: Build): Lay[][] {
  const faces = (lay: Lay): string[] => {
    const { chamber } = build.layers[lay.layer]!;
    const next = lay.exit === 'left' ? chamber - 1 : chamber + 1;
    const through = lay.kind !== 'link' && next >= 0 && next < build.chambers.length;
    return [
      `${chamber}${lay.exit}`,
      ...(through ? [`${next}${lay.exit === 'left' ? 'right' : 'left'}`] : []),
    ];
  };
  const pairs = build.lays.flatMap((a, i) =>
    build.lays
      .slice(i + 1)
      .filter(
        (b) =>
          a.circuit !== b.circuit &&
          a.group !== b.group &&
          faces(a).some((face) => faces(b).includes(face)) &&
          !a.apart &&
          !b.apart,
      )
      .map((b) => [a, b]),
  );
  return [[], ...build.lays.map((lay) => [lay]), ...pairs];
}

/** Left and right where anything can go either way, judged as it was wound. */
function slumpsOf(build: Build, moves: OracleHandling['moves']): OracleSlump[] {
  const bands = stackOf(build, []).filter((band) => moves(band.layer));
  const faces = chambersOf(build);
  const goes = bands.some((band) => {
    const free = { left: faces[band.chamber]!.x0, right: faces[band.chamber]!.x1 };
    return (['left', 'right'] as const).some((side) => {
      if (band.kind !== 'winding') return drift(band, free, side) > 0;
      const plain = plainOf(build, band.position);
      return isLoose(plain, side) && facesAnother(plain, side, moves);
    });
  });
  return goes ? ['left', 'right'] : ['as-is'];
}

function plainOf(build: Build, position: number): PlainBand {
  const all = stackOf(build, []);
  const band = all.find((one) => one.position === position)!;
  return { band, mates: all.filter((one) => one.chamber === band.chamber && one.y0 === band.y0) };
}

export function oracleSection(
  build: Build,
  lays: readonly Lay[],
  handling: OracleHandling,
  leastThickness: number,
): OracleSection {
  let bodies = 0;
  const body = (): number => bodies++;
  const bands = stackOf(build, lays);
  const { leads, risers } = leadsOf(build, bands, lays, leastThickness, handling);
  const top = Math.max(...build.chambers.map((_, i) => stackTop(bands, i)));
  const around = surroundingsOf(build, top, lays.length === 0 ? 'round' : 'inside-tube', body);
  const inWindow = bands.flatMap((band) => bandRegions(build, band, leads, risers, handling, body));
  const regions = [
    ...around.regions,
    ...inWindow,
    ...leads.flatMap((lead) => leadRegions(build, lead, body)),
  ];
  refuseOverlaps(regions);
  const { frame } = around;
  return {
    kind: lays.length === 0 ? 'plain' : 'lead',
    slumped: handling.slump,
    lays: lays.map((lay) => lay.name),
    regions,
    frame: { x0: nm(frame.x0), y0: nm(frame.y0), x1: nm(frame.x1), y1: nm(frame.y1) },
    sagging: handling.slump === null ? [] : saggingOf(build, bands, regions),
    potted: build.potted,
  };
}

function bandRegions(
  build: Build,
  band: OracleBand,
  leads: readonly OracleLead[],
  risers: readonly OracleRiser[],
  handling: OracleHandling,
  body: () => number,
): Region[] {
  const chamber = chambersOf(build)[band.chamber]!;
  const free = limits(band, chamber, risers);
  const found: Region[] = [];
  for (const block of band.blocks) {
    const drawn = { x0: block.x0, y0: band.y0, x1: block.x1, y1: band.y0 + block.height };
    const rect = clip(drawn, { x0: free.left, y0: band.y0, x1: free.right, y1: band.y1 });
    const margin = band.layer.margins[block.side];
    const turns = Math.max(1, Math.floor(block.height / margin.turn));
    const crossing = { crossX: 'strong', crossY: margin.moulded ? 'measured' : turns } as const;
    if (rect !== null) found.push(solid(rect, 'block', margin.stuff, body(), build.potted, crossing));
  }
  if (band.tape !== null) found.push(...plies(build, band, chamber, risers, handling, body));
  else if (band.kind === 'screen') found.push(...screen(band, free, handling));
  else if (band.kind === 'winding') found.push(...winding(build, band, free, leads, handling, body));
  return found;
}

/** How far handling has pushed a tape or screen, to the right. */
function pushed(band: OracleBand, free: Free, { slump, moves }: OracleHandling): number {
  if (!moves(band.layer) || (slump !== 'left' && slump !== 'right')) return 0;
  return slump === 'left' ? -drift(band, free, 'left') : drift(band, free, 'right');
}

/** Every ply ends by itself at a riser that stands beside it. */
function plies(
  build: Build,
  band: OracleBand,
  chamber: OracleChamber,
  risers: readonly OracleRiser[],
  handling: OracleHandling,
  body: () => number,
): Region[] {
  const { plies: count, of } = band.tape!;
  const shift = band.kind === 'tape' ? pushed(band, limits(band, chamber, risers), handling) : 0;
  const closed = build.potted || (of.cemented && band.kind === 'tape');
  const turnUp = band.kind === 'tape' ? Math.max(0, Math.min(of.turnUp, build.height - band.y1)) : 0;
  return Array.from({ length: count }, (_, ply) => {
    const y0 = band.y0 + ply * of.plyThickness;
    const y1 = y0 + of.plyThickness;
    const { x0, x1 } = clipped(band, limits({ ...band, y1 }, chamber, risers));
    const extra = { layer: of.index, ply, turnUp };
    return boxes(box(x0 + shift, y0, x1 + shift, y1)).map((rect) =>
      solid(rect, 'ply', of.stuff, body(), closed, extra),
    );
  }).flat();
}

function screen(band: OracleBand, free: Free, handling: OracleHandling): Region[] {
  const { x0, x1 } = clipped(band, free);
  const shift = pushed(band, free, handling);
  const id = band.layer.kind === 'screen' ? (band.layer.circuit ?? band.layer.id) : '';
  return boxes(box(x0 + shift, band.y0, x1 + shift, band.y0 + band.own)).map((rect) =>
    conductor(rect, id, 'screen', band.layer.index),
  );
}

function winding(
  build: Build,
  band: OracleBand,
  free: Free,
  leads: readonly OracleLead[],
  handling: OracleHandling,
  body: () => number,
): Region[] {
  const { layer } = band;
  if (layer.kind !== 'winding') return [];
  const span = clipped(band, free);
  const hull = { ...span, y0: band.y0, y1: band.y0 + band.own };
  if (hull.x0 >= hull.x1) return [];
  const plain = plainOf(build, band.position);
  // What is left of the room beside the lead is all that an end can move into.
  const inTheWay = leads.flatMap((lead) => [...lead.sleeves, ...lead.covers, ...lead.conductors]);
  const ends = (['left', 'right'] as const).flatMap((side) =>
    stretchedRows(plain, span, free, band.y0, side, handling),
  );
  const rows = [hull, ...subtract(ends, inTheWay)];
  return covered(build, layer.wire, rows, body).map((part) =>
    part.kind === 'metal' ? conductor(part.rect, layer.circuit, 'winding', layer.index) : part.region,
  );
}

type Part =
  { readonly kind: 'metal'; readonly rect: Box } | { readonly kind: 'cover'; readonly region: Region };

function covered(build: Build, wire: BuildWire, rows: readonly Box[], body: () => number): Part[] {
  if (wire.cover === null) return rows.map((rect): Part => ({ kind: 'metal', rect }));
  const metal = erode(rows, wire.cover.thickness);
  const crossing = wire.cover.plies ?? 'strong';
  const { stuff } = wire.cover;
  const of = body();
  return [
    ...metal.map((rect): Part => ({ kind: 'metal', rect })),
    ...subtract(rows, metal).map((rect): Part => ({
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
