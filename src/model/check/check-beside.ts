// Two windings side by side in one band: each must say where it lies, and their places may not overlap.

import { nm, type Nm } from '#units/quantity.ts';
import type { BadInput } from '#model/faults/bad-input.ts';
import { badField } from '#model/faults/bad-field.ts';
import type { Keys } from './check-ids.ts';
import type { Design } from '#model/design.ts';
import type { Layer, WindingLayer } from '#model/design/layer.ts';
import { isKnown } from '#model/quantity/reading.ts';

export function checkBeside(design: Design, index: number): readonly BadInput[] {
  const keys: Keys = ['layers', index, 'beside'];
  const own = design.layers[index] as WindingLayer;
  const others = bandOf(design.layers, index);
  if (others === null)
    return [badField(keys, true, 'a winding in the same chamber as the layer before it, to lie beside')];
  const place = placeOf(design, own);
  if (place === null)
    return [badField(keys, true, 'margins that are known, or an extent, to say where this winding lies')];
  for (const other of others) {
    const its = placeOf(design, other);
    if (its === null)
      return [
        badField(keys, true, 'margins that are known, or an extent, of the winding that it lies beside'),
      ];
    if (place.from < its.to && its.from < place.to) {
      const found = `from ${shown(place.from)} to ${shown(place.to)}`;
      const free = `a place clear of ${other.winding}, which lies from ${shown(its.from)} to ${shown(its.to)}`;
      return [badField(keys, found, free)];
    }
  }
  return [];
}

/** The windings already in the band; null where the layer before is none, or lies in another chamber. */
function bandOf(layers: readonly Layer[], index: number): readonly WindingLayer[] | null {
  const { chamber } = layers[index]!;
  const band: WindingLayer[] = [];
  for (let i = index - 1; i >= 0; i -= 1) {
    const layer = layers[i]!;
    if (layer.chamber !== chamber) continue;
    if (layer.kind !== 'winding') return null;
    band.push(layer);
    if (!layer.beside) return band;
  }
  return null;
}

function placeOf(
  { former }: Design,
  { extent, margins, chamber }: WindingLayer,
): { readonly from: Nm; readonly to: Nm } | null {
  if (extent !== null) return { from: extent.from.value, to: extent.to.value };
  const width = former.chambers[chamber]?.width.value;
  const { left, right } = margins;
  if (width === undefined || !isKnown(left.width) || !isKnown(right.width)) return null;
  return { from: left.width.value, to: nm(width - right.width.value) };
}

const shown = (value: Nm): string => `${value / 1e6} mm`;
