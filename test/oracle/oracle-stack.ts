// The oracle's first step: where every layer's band lies, with the leads of one section laid in or none.
// Written from the specification alone, slowly and plainly, to disagree with the solver where either is wrong.

import type {
  Build,
  BuildLayer,
  BuildTapeLayer,
  BuildWindingLayer,
  Lay,
  Side,
} from '#solver/section/build.ts';

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
  readonly blocks: readonly OracleBlock[];
}

export interface OracleChamber {
  readonly x0: number;
  readonly x1: number;
}

export const boxHeight = (lay: Lay): number => lay.wire.overall + 2 * (lay.sleeve?.wall ?? 0);

export const crosses = (lay: Lay): boolean => lay.at !== lay.exit;

export function chambersOf(build: Build): OracleChamber[] {
  const found: OracleChamber[] = [];
  let x = 0;
  build.chambers.forEach((width, index) => {
    found.push({ x0: x, x1: x + width });
    x += width + (build.dividers[index] ?? 0);
  });
  return found;
}

/** Bands in the order of the build's layers; crossing bands right after the winding that they belong to. */
export function stackOf(build: Build, lays: readonly Lay[]): OracleBand[] {
  const chambers = chambersOf(build);
  const tops = chambers.map(() => 0);
  const bands: OracleBand[] = [];
  build.layers.forEach((layer, position) => {
    const chamber = chambers[layer.chamber]!;
    const lay = lays.find((l) => l.layer === position) ?? null;
    const own = bandOf(
      layer,
      position,
      chamber,
      tops[layer.chamber]!,
      lay !== null && !crosses(lay) ? lay : null,
    );
    bands.push(own);
    tops[layer.chamber] = own.y1;
    if (lay === null || !crosses(lay)) return;
    for (const band of crossingBands(build, layer, position, chamber, own.y1, lay)) {
      bands.push(band);
      tops[layer.chamber] = band.y1;
    }
  });
  return bands;
}

export const stackTop = (bands: readonly OracleBand[], chamber: number): number =>
  Math.max(0, ...bands.filter((b) => b.chamber === chamber).map((b) => b.y1));

function bandOf(
  layer: BuildLayer,
  position: number,
  chamber: OracleChamber,
  y0: number,
  lay: Lay | null,
): OracleBand {
  const own = ownHeight(layer, chamber);
  const drawn = blocksOf(layer, chamber, own);
  const nominal = Math.max(own, ...drawn.map((b) => b.height));
  const lead = lay === null ? 0 : boxHeight(lay);
  const height = Math.max(nominal, lead);
  const blocks = drawn.flatMap((block) => {
    if (lay === null || block.side !== lay.exit) return [block];
    if (lead > nominal) return [];
    return [{ ...block, height: Math.min(block.height, height - lead) }];
  });
  return {
    kind: layer.kind,
    chamber: layer.chamber,
    position,
    layer,
    tape: layer.kind === 'tape' ? { plies: layer.plies, of: layer } : null,
    lay,
    y0,
    y1: y0 + height,
    own,
    ...occupied(layer, chamber),
    blocks: blocks.filter((b) => b.height > 0),
  };
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
  const common = { chamber: layer.chamber, position, layer, x0: chamber.x0, x1: chamber.x1, blocks: [] };
  const found: OracleBand[] = [];
  if (next !== undefined && plies > 0) {
    const tape = { plies, of: next };
    found.push({ ...common, kind: 'cross-tape', tape, lay: null, y0: floor, y1: mid, own: mid - floor });
  }
  const height = boxHeight(lay);
  found.push({ ...common, kind: 'crossing-lead', tape: null, lay, y0: mid, y1: mid + height, own: height });
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

function blocksOf(layer: BuildLayer, chamber: OracleChamber, own: number): OracleBlock[] {
  const measured = layer.kind === 'winding' && layer.extent !== null ? occupied(layer, chamber) : null;
  const { left, right } = layer.margins;
  const leftWidth = measured === null ? left.width : Math.min(left.width, measured.x0 - chamber.x0);
  const rightWidth = measured === null ? right.width : Math.min(right.width, chamber.x1 - measured.x1);
  const found: OracleBlock[] = [];
  if (left.filled && leftWidth > 0) {
    found.push({ side: 'left', x0: chamber.x0, x1: chamber.x0 + leftWidth, height: left.height ?? own });
  }
  if (right.filled && rightWidth > 0) {
    found.push({ side: 'right', x0: chamber.x1 - rightWidth, x1: chamber.x1, height: right.height ?? own });
  }
  return found.filter((b) => b.height > 0);
}
