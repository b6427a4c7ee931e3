// Which windings and screens face each other: those of one band and the next with nothing or tape between, and those side
// by side in one band. Chambers stand apart.

import type { Layer, TapeLayer } from './layer.ts';

export interface FacingLayers {
  /** Indices in the file's `layers`, the inner first; of two side by side the one named first. */
  readonly inner: number;
  readonly outer: number;
  readonly tapes: readonly TapeLayer[];
}

interface Band {
  readonly layers: readonly number[];
  /** Over it so far. */
  readonly tapes: readonly TapeLayer[];
  readonly under: Band | null;
}

export function facingLayers(layers: readonly Layer[]): readonly FacingLayers[] {
  const found: FacingLayers[] = [];
  const last = new Map<number, Band>();
  const faces = (band: Band | null, outer: number, tapes: readonly TapeLayer[]) => {
    for (const inner of band?.layers ?? []) found.push({ inner, outer, tapes });
  };
  layers.forEach((layer, index) => {
    const band = last.get(layer.chamber) ?? null;
    if (layer.kind === 'tape') {
      if (band) last.set(layer.chamber, { ...band, tapes: [...band.tapes, layer] });
    } else if (layer.kind === 'winding' && layer.beside && band) {
      faces(band.under, index, band.under?.tapes ?? []);
      faces(band, index, []);
      last.set(layer.chamber, { ...band, layers: [...band.layers, index] });
    } else {
      faces(band, index, band?.tapes ?? []);
      last.set(layer.chamber, { layers: [index], tapes: [], under: band });
    }
  });
  return found;
}
