// The rated breakdown of the weakest solid that a design puts between two circuits: a ply of tape, the enamel of a wire.

import type { Design } from '#model/design.ts';
import type { Layer } from '#model/design/layer.ts';
import { tapeById } from '#standards/materials/materials.ts';
import { voltsRms, type VoltsRms } from '#units/quantity.ts';

import { enamelHolds } from './enamel-holds.ts';

/** Null without tape, or where one tape's strength is not known. A stated withstand counts as what it breaks down at. */
export function weakestPly({ layers }: Design): VoltsRms | null {
  const tapes = layers.filter((layer) => layer.kind === 'tape').map(plyBreakdown);
  return weakest(tapes);
}

/** Of all wires of two circuits; null where one is not known. */
export function weakestEnamel({ windings }: Design, between: readonly [string, string]): VoltsRms | null {
  const wires = windings
    .filter(({ circuit }) => between.includes(circuit))
    .map(({ wire }) => enamelHolds(wire));
  return weakest(wires.map((held) => held?.value ?? null));
}

function plyBreakdown(layer: Layer): VoltsRms | null {
  if (layer.kind !== 'tape') return null;
  const { plyWithstand, material } = layer;
  if (plyWithstand.kind === 'rms') return plyWithstand.value;
  if (plyWithstand.kind === 'dc') return voltsRms(plyWithstand.value / Math.SQRT2);
  return (material === null ? null : tapeById(material)?.leastBreakdown?.value) ?? null;
}

function weakest(all: readonly (VoltsRms | null)[]): VoltsRms | null {
  const known = all.filter((one) => one !== null);
  return known.length === 0 || known.length < all.length ? null : voltsRms(Math.min(...known));
}
