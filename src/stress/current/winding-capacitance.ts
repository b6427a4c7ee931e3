// The capacitance between neighbouring layers of different circuits, as of two parallel layers: an estimate until a
// field solver has it. Round wires count as plates set back: D - 1.15 d + 0.26 p, with D between the axes, d the bare
// wire and p the pitch. Length of a turn and permittivity are of our own: see the constants.
//
// Step: layers-capacitance {farads, width, meanTurn, distance, permittivity}, lengths in mm.

import type { Design } from '#model/design.ts';
import { facingLayers } from '#model/design/facing-layers.ts';
import type { Margin, TapeLayer } from '#model/design/layer.ts';
import type { Wire } from '#model/design/winding.ts';
import { isKnown } from '#model/quantity/reading.ts';
import { UNKNOWN_PLY } from '#model/unknown-counts.ts';
import { because, type Because } from '#standards/because.ts';
import { isOutOfRange } from '#standards/tables/out-of-range.ts';
import { tapeById } from '#standards/materials/materials.ts';
import { roundWire } from '#standards/materials/wires.ts';
import { farads, inMm, nm, type Farads, type Nm } from '#units/quantity.ts';

export interface LayersCapacitance {
  readonly between: readonly [string, string];
  /** Null where it is of all layers of both circuits together. */
  readonly layers: readonly [number, number] | null;
  readonly farads: Farads;
  readonly from: 'estimate' | 'field';
  readonly because: Because;
}

const VACUUM_F_PER_MM = 8.8541878188e-15;
/** Enamel, tape and the air of the grooves together; within 10 % of two cells solved by finite elements. */
const PERMITTIVITY = 2.5;
/** A mean turn over the width of the winding window: small coil formers have 2.5 to 4.7 (memory). */
export const MEAN_TURN_PER_WIDTH = 4;

export const windingCapacitances = (design: Design): readonly LayersCapacitance[] =>
  facingLayers(design.layers).flatMap(({ inner, outer, tapes }) =>
    betweenLayers(
      design,
      inner,
      outer,
      tapes.reduce((sum, tape) => sum + tapeThickness(tape), 0),
    ),
  );

function betweenLayers(design: Design, a: number, b: number, tape: number): readonly LayersCapacitance[] {
  const [inner, outer] = [faceOf(design, a), faceOf(design, b)];
  if (inner === null || outer === null || inner.circuit === outer.circuit) return [];
  const width = Math.min(inner.width, outer.width);
  const turn = Math.round(meanTurn(design.former));
  const distance = tape + inner.setBack + outer.setBack;
  if (width <= 0 || distance <= 0) return [];
  const value = farads((VACUUM_F_PER_MM * PERMITTIVITY * (width / 1e6) * (turn / 1e6)) / (distance / 1e6));
  const values = {
    farads: value,
    width: inMm(nm(width)),
    meanTurn: inMm(nm(turn)),
    distance: distance / 1e6,
    permittivity: PERMITTIVITY,
  };
  return [
    {
      between: [inner.circuit, outer.circuit],
      layers: [a, b],
      farads: value,
      from: 'estimate',
      because: because('layers-capacitance', values),
    },
  ];
}

/** By the tube where the file gives it, half way up to the rim; else a rule of thumb. */
function meanTurn({ tube, height, chambers }: Design['former']): number {
  if (tube === null) return MEAN_TURN_PER_WIDTH * chambers.reduce((sum, { width }) => sum + width.value, 0);
  const round = Math.PI * height.value;
  return tube.shape === 'round'
    ? Math.PI * tube.width.value + round
    : 2 * (tube.width.value + tube.depth.value) + round;
}

interface Face {
  readonly circuit: string;
  /** Along the axis, nm. */
  readonly width: number;
  /** How far its plate lies behind its surface, nm. */
  readonly setBack: number;
}

/** Null for a floating screen, which belongs to no circuit. */
function faceOf(design: Design, index: number): Face | null {
  const layer = design.layers[index];
  if (layer === undefined || layer.kind === 'tape') return null;
  const chamber = design.former.chambers[layer.chamber]?.width.value ?? 0;
  if (layer.kind === 'screen') {
    const width = chamber - layer.inset.left.value - layer.inset.right.value;
    return layer.circuit === null ? null : { circuit: layer.circuit, width, setBack: 0 };
  }
  const winding = design.windings.find(({ id }) => id === layer.winding);
  if (winding === undefined) return null;
  const free =
    layer.extent === null
      ? chamber - widthOf(layer.margins.left) - widthOf(layer.margins.right)
      : layer.extent.to.value - layer.extent.from.value;
  const wire = sizesOf(winding.wire);
  const wound =
    wire === null || layer.spread || typeof layer.turns !== 'number'
      ? free
      : Math.min(free, layer.turns * layer.strands * wire.overall);
  return { circuit: winding.circuit, width: wound, setBack: wire === null ? 0 : setBackOf(wire) };
}

/** An unknown margin is counted as none: the layers then face each other the widest. */
const widthOf = ({ width }: Margin): number => (isKnown(width) ? width.value : 0);

const setBackOf = ({ bare, overall }: { readonly bare: Nm; readonly overall: Nm }): number =>
  overall / 2 - (1.15 * bare) / 2 + (0.26 * overall) / 2;

/** Null where a size is not known: the layer then counts as a plate at its surface. */
function sizesOf({
  conductor,
  overallDiameter,
  grade,
}: Wire): { readonly bare: Nm; readonly overall: Nm } | null {
  if (conductor?.kind !== 'known') return null;
  const bare = conductor.value;
  if (overallDiameter !== null) return { bare, overall: overallDiameter.value };
  const found = roundWire(bare, typeof grade === 'number' && grade <= 3 ? (grade as 1 | 2 | 3) : 1);
  return isOutOfRange(found) ? null : { bare, overall: found.value.overall };
}

/** Plies that nobody counted are one: the layers then lie the closest. */
function tapeThickness(layer: TapeLayer): number {
  const listed = layer.material === null ? null : tapeById(layer.material);
  const stated = layer.plyThickness?.kind === 'known' ? layer.plyThickness.value : null;
  const ply = stated ?? listed?.total.value ?? UNKNOWN_PLY;
  return ply * (typeof layer.plies === 'number' ? layer.plies : 1);
}
