// From a set of acts the sets that are one act larger: acts that could mend a weak spot that is left. An act on the same
// thing takes the place of the one before.

import type { WeakSpot } from '#judge/verdict/spot.ts';
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
  const sets = nextActs(doc, acts, spots)
    .flat()
    .map((act) => withAct(acts, act));
  return [...new Map(sets.map((set) => [keyOf(set), set])).values()];
}

export const withAct = (acts: readonly Act[], act: Act): readonly Act[] => [
  ...acts.filter(({ on }) => on !== act.on),
  act,
];

/** To each spot of the build with these acts what could mend it, as acts upon the first build. */
export function nextActs(
  doc: DesignFile,
  acts: readonly Act[],
  spots: readonly WeakSpot[],
): readonly (readonly Act[])[] {
  // layers put in shift the places of those after them: acts are then read off the first build's own layers only
  const isShifted = acts.some((act) => 'insert' in act);
  const mended = isShifted ? doc : applyActs(doc, acts);
  return spots.map((spot) => {
    const here = isShifted ? { ...spot, layers: ownLayers(spot.layers, acts) } : spot;
    // a new order is an act on the first build only: the places that other acts name are places in it
    return actsOfSpot(mended, here).filter(({ kind }) => kind !== 'order' || acts.length === 0);
  });
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
