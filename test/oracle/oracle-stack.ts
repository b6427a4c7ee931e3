// The oracle's first step: where every layer's band lies, with the leads of one section laid in or none.
// Written from the specification alone, slowly and plainly, to disagree with the solver where either is wrong.

import type { Build, BuildLayer, BuildTapeLayer, BuildWindingLayer, Lay } from '#solver/section/build.ts';
import type { Side } from '#units/terms.ts';

export interface OracleBlock {
  readonly side: Side;
  readonly x0: number;
  readonly x1: number;
  /** From the floor of the band. */
  readonly height: number;
}

export interface OracleBand {
  readonly kind: 'winding' | 'tape' | 'screen' | 'cross-tape' | 'crossing-lead';
  readonly chamber: number;
  /** Position in the build's layers; of a crossing band, that of the winding below it. */
  readonly position: number;
  readonly layer: BuildLayer;
  /** Plies of a tape band. */
  readonly tape: { readonly plies: number; readonly of: BuildTapeLayer } | null;
  readonly lay: Lay | null;
  readonly y0: number;
  readonly y1: number;
  /** Height of the layer itself, without what lifts the band. */
  readonly own: number;
  readonly x0: number;
  readonly x1: number;
  /** What stands beyond its ends. */
  readonly ends: OracleChamber;
  readonly blocks: readonly OracleBlock[];
  /** As they are where no lead takes their place: these hold a thing all round the coil. */
  readonly holding: readonly OracleBlock[];
  /** Floor of the lead that lies in it. */
  readonly leadAt?: number;
}

export interface OracleChamber {
  readonly x0: number;
  readonly x1: number;
}

export const boxHeight = (lay: Lay): number => lay.wire.overall + 2 * (lay.sleeve?.wall ?? 0);

/** Over its own winding, or over one that lies in the same band on its way out. */
const crosses = (lay: Lay, own: OracleChamber, all: readonly OracleChamber[]): boolean =>
  lay.at !== lay.exit ||
  all.some((other) => other !== own && (lay.exit === 'left' ? other.x0 < own.x0 : other.x0 > own.x0));

export function chambersOf(build: Build): OracleChamber[] {
  const found: OracleChamber[] = [];
  let x = 0;
  build.chambers.forEach((width, index) => {
    found.push({ x0: x, x1: x + width });
    x += width + (build.dividers[index] ?? 0);
  });
  return found;
}

/** Bands in the order of the build's layers; crossing bands right after the windings that they belong to. */
export function stackOf(build: Build, lays: readonly Lay[]): OracleBand[] {
  const chambers = chambersOf(build);
  const tops = chambers.map(() => 0);
  const bands: OracleBand[] = [];
  for (const group of groupsOf(build)) {
    const at = build.layers[group[0]!]!.chamber;
    const spans = group.map((position) => occupied(build.layers[position]!, chambers[at]!));
    const own = lays.filter((lay) => group.includes(lay.layer));
    const straight = own.filter((lay) => !crosses(lay, spans[group.indexOf(lay.layer)]!, spans));
    const made = group.map((position, i) => {
      const lay = straight.find((one) => one.layer === position) ?? null;
      return bandOf(build.layers[position]!, position, chambers[at]!, tops[at]!, lay, spans[i]!, spans);
    });
    oneBlockAGap(made);
    const y1 = Math.max(...made.map((band) => band.y1));
    const nominal = Math.max(...made.map((band) => band.nominal));
    bands.push(...made.map((band) => withLead(band, y1, nominal)));
    tops[at] = y1;
    for (const lay of own) {
      if (straight.includes(lay)) continue;
      for (const band of crossingBands(
        build,
        build.layers[lay.layer]!,
        lay.layer,
        chambers[at]!,
        tops[at],
        lay,
      )) {
        bands.push(band);
        tops[at] = band.y1;
      }
    }
  }
  return bands;
}

/** Positions of the layers that share a band. */
function groupsOf(build: Build): number[][] {
  const groups: number[][] = [];
  build.layers.forEach((layer, position) => {
    const last = groups.findLast((group) => build.layers[group[0]!]!.chamber === layer.chamber);
    const joins = layer.kind === 'winding' && layer.beside === true;
    if (joins && last !== undefined && build.layers[last[0]!]!.kind === 'winding') last.push(position);
    else groups.push([position]);
  });
  return groups;
}

export const stackTop = (bands: readonly OracleBand[], chamber: number): number =>
  Math.max(0, ...bands.filter((b) => b.chamber === chamber).map((b) => b.y1));

interface MadeBand extends OracleBand {
  /** Height without the lead. */
  readonly nominal: number;
}

function bandOf(
  layer: BuildLayer,
  position: number,
  chamber: OracleChamber,
  y0: number,
  lay: Lay | null,
  span: OracleChamber,
  all: readonly OracleChamber[],
): MadeBand {
  const own = ownHeight(layer, chamber);
  const blocks = blocksOf(layer, chamber, own, span, all);
  const nominal = Math.max(own, ...blocks.map((block) => block.height));
  return {
    kind: layer.kind,
    chamber: layer.chamber,
    position,
    layer,
    tape: layer.kind === 'tape' ? { plies: layer.plies, of: layer } : null,
    lay,
    y0,
    y1: y0 + Math.max(nominal, lay === null ? 0 : boxHeight(lay)),
    own,
    ...span,
    ends: endsOf(chamber, span, all),
    blocks,
    holding: blocks,
    nominal,
  };
}

/** Where both windings have filled the gap between them, the higher block is there, over all that either fills. */
function oneBlockAGap(bands: MadeBand[]): void {
  for (const [i, band] of bands.entries()) {
    for (const [k, other] of bands.entries()) {
      if (other.x0 <= band.x0) continue;
      const mine = band.blocks.find((b) => b.side === 'right' && b.x1 === other.x0);
      const theirs = other.blocks.find((b) => b.side === 'left' && b.x0 === band.x1);
      if (!mine || !theirs) continue;
      const [x0, x1] = [band.x1, other.x0];
      const isMine = mine.height >= theirs.height;
      bands[i] = {
        ...band,
        blocks: band.blocks.flatMap((b) => (b !== mine ? [b] : isMine ? [{ ...b, x0, x1 }] : [])),
      };
      bands[k] = {
        ...other,
        blocks: other.blocks.flatMap((b) => (b !== theirs ? [b] : isMine ? [] : [{ ...b, x0, x1 }])),
      };
    }
  }
}

/** As high as everything in it; the block beside a lead loses the lead's height, or is gone. */
function withLead({ nominal: before, ...band }: MadeBand, y1: number, nominal: number): OracleBand {
  void before;
  const { lay } = band;
  if (lay === null) return { ...band, y1 };
  const lead = boxHeight(lay);
  const floor = lead > nominal ? band.y0 : y1 - lead;
  const blocks = band.blocks.flatMap((block) =>
    block.side === lay.exit ? [{ ...block, height: Math.min(block.height, floor - band.y0) }] : [block],
  );
  return { ...band, y1, blocks: blocks.filter((block) => block.height > 0), leadAt: floor };
}

/** Faces of the chamber, or the windings beside it. */
function endsOf(chamber: OracleChamber, own: OracleChamber, all: readonly OracleChamber[]): OracleChamber {
  const before = all.filter((other) => other.x0 < own.x0).map((other) => other.x1);
  const after = all.filter((other) => other.x0 > own.x0).map((other) => other.x0);
  return { x0: Math.max(chamber.x0, ...before), x1: Math.min(chamber.x1, ...after) };
}

/** The plies of the next tape that lie over the winding, then the band that the lead has to itself. */
function crossingBands(
  build: Build,
  layer: BuildLayer,
  position: number,
  chamber: OracleChamber,
  floor: number,
  lay: Lay,
): OracleBand[] {
  const next = build.layers.find(
    (l, i): l is BuildTapeLayer => l.kind === 'tape' && l.chamber === layer.chamber && i > position,
  );
  const plies = next === undefined ? 0 : lay.crossTape;
  const mid = floor + plies * (next?.plyThickness ?? 0);
  const common = {
    chamber: layer.chamber,
    position,
    layer,
    ...chamber,
    ends: chamber,
    blocks: [],
    holding: [],
  };
  const found: OracleBand[] = [];
  if (next !== undefined && plies > 0) {
    const tape = { plies, of: next };
    found.push({ ...common, kind: 'cross-tape', tape, lay: null, y0: floor, y1: mid, own: mid - floor });
  }
  const height = boxHeight(lay);
  found.push({
    ...common,
    kind: 'crossing-lead',
    tape: null,
    lay,
    y0: mid,
    y1: mid + height,
    own: height,
    leadAt: mid,
  });
  return found;
}

function ownHeight(layer: BuildLayer, chamber: OracleChamber): number {
  if (layer.kind === 'tape') return layer.plies * layer.plyThickness;
  if (layer.kind === 'screen') {
    const over = layer.overlap;
    return over === null ? layer.thickness : 2 * layer.thickness + over.plies * over.plyThickness;
  }
  return Math.ceil(layer.turns / turnsPerRow(layer, chamber)) * layer.wire.overall;
}

function turnsPerRow(layer: BuildWindingLayer, chamber: OracleChamber): number {
  const [from, to] = woundBetween(layer, chamber);
  return Math.max(1, Math.floor((to - from) / (layer.wire.overall * layer.strands)));
}

/** From the chamber's left face. */
function woundBetween(layer: BuildLayer, chamber: OracleChamber): [number, number] {
  if (layer.kind === 'winding' && layer.extent !== null) return [layer.extent.from, layer.extent.to];
  return [layer.margins.left.width, chamber.x1 - chamber.x0 - layer.margins.right.width];
}

function occupied(layer: BuildLayer, chamber: OracleChamber): { x0: number; x1: number } {
  const [from, to] = woundBetween(layer, chamber);
  const x0 = chamber.x0 + from;
  const x1 = chamber.x0 + to;
  if (layer.kind !== 'winding') return { x0: x0 + layer.inset.left, x1: x1 - layer.inset.right };
  if (layer.spread || layer.turns >= turnsPerRow(layer, chamber)) return { x0, x1 };
  const width = layer.turns * layer.strands * layer.wire.overall;
  return layer.startsAt === 'left' ? { x0, x1: x0 + width } : { x0: x1 - width, x1 };
}

/** A margin is measured from the flange; its block ends at the winding, and at one beside it. */
function blocksOf(
  layer: BuildLayer,
  chamber: OracleChamber,
  own: number,
  span: OracleChamber,
  all: readonly OracleChamber[],
): OracleBlock[] {
  const { left, right } = layer.margins;
  const ends = endsOf(chamber, span, all);
  const blocks: OracleBlock[] = [
    { side: 'left', x0: ends.x0, x1: Math.min(span.x0, chamber.x0 + left.width), height: left.height ?? own },
    {
      side: 'right',
      x0: Math.max(span.x1, chamber.x1 - right.width),
      x1: ends.x1,
      height: right.height ?? own,
    },
  ];
  return blocks.filter((b) => layer.margins[b.side].filled && b.x0 < b.x1 && b.height > 0);
}
