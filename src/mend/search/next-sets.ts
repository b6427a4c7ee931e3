// From a set of acts the sets that are one act larger: acts that could mend a weak spot that is left. An act on the same
// thing takes the place of the one before.

import type { WeakSpot } from '#judge/verdict/verdict.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { applyActs, keyOf, type Act } from '#mend/acts/act.ts';
import { actsOfSpot } from '#mend/acts/acts-of-spot.ts';

/** Spots of a build already mended in part that the search goes on at; of the first build all are tried. */
const SPOTS_TRIED = 2;

export function nextSets(
  doc: DesignFile,
  acts: readonly Act[],
  weakSpots: readonly WeakSpot[],
): readonly (readonly Act[])[] {
  const spots = acts.length === 0 ? weakSpots : weakSpots.slice(0, SPOTS_TRIED);
  // layers put in shift the places of those after them: acts are then read off the first build's own layers only
  const isShifted = acts.some((act) => 'insert' in act);
  const next = isShifted
    ? spots.flatMap((spot) => actsOfSpot(doc, { ...spot, layers: ownLayers(spot.layers, acts) }))
    : spots.flatMap((spot) => actsOfSpot(applyActs(doc, acts), spot));
  // a new order is an act on the first build only: the places that other acts name are places in it
  const fitting = next.filter(({ kind }) => kind !== 'order' || acts.length === 0);
  const sets = fitting.map((act) => [...acts.filter(({ on }) => on !== act.on), act]);
  return [...new Map(sets.map((set) => [keyOf(set), set])).values()];
}

/** Indices in the first build of layers of the mended one; those put in have none. */
function ownLayers(layers: readonly number[], acts: readonly Act[]): readonly number[] {
  const places = acts.flatMap((act) => ('insert' in act ? [act.insert.index] : [])).sort((a, b) => a - b);
  return layers.flatMap((layer) => {
    let own = layer;
    for (const [i, place] of places.entries()) {
      if (layer === place + i) return [];
      if (layer > place + i) own -= 1;
    }
    return [own];
  });
}
