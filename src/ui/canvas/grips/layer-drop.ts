// Where a layer in the hand would go: between which layers of its chamber the pointer stands, and which place in the file
// that is.

import type { LayerPlace } from '#drawing/scene/scene.ts';

export interface LayerDrop {
  readonly layer: number;
  /** Index in the file that the layer would have afterwards. */
  readonly index: number;
  /** Height of the gap on the drawing, mm. */
  readonly to: number;
}

/** Null where the layer has no neighbours. */
export function layerDrop(places: readonly LayerPlace[], layer: number, y: number): LayerDrop | null {
  const own = places.find((place) => place.layer === layer);
  const others = places
    .filter((place) => place.chamber === own?.chamber && place.layer !== layer)
    .sort((a, b) => a.layer - b.layer);
  if (own === undefined || others.length === 0) return null;
  const below = others.filter(({ y0, y1 }) => (y0 + y1) / 2 < y);
  const [under, over] = [below.at(-1), others[below.length]];
  const after = (place: LayerPlace): number => (place.layer > layer ? place.layer - 1 : place.layer);
  const index = under !== undefined ? after(under) + 1 : over !== undefined ? after(over) : layer;
  return { layer, index, to: under?.y1 ?? over?.y0 ?? own.y0 };
}

/** The layer that lies under this point of the drawing, anywhere between its chamber's faces. */
export function layerAt(
  places: readonly LayerPlace[],
  chambers: readonly { readonly x0: number; readonly x1: number }[],
  x: number,
  y: number,
): number | null {
  const found = places.find(({ chamber, y0, y1 }) => {
    const face = chambers[chamber];
    return face !== undefined && x >= face.x0 && x <= face.x1 && y >= y0 && y <= y1;
  });
  return found?.layer ?? null;
}
