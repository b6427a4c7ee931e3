// Many weak spots, few acts: what each spot would have done to it, gathered over all of them. An act stands once, with the
// spots that name it; those come first that most spots name, then what disturbs the build least.

import type { WeakSpot } from '#judge/verdict/spot.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Act, ActKind } from './act.ts';
import { actsOfSpot } from './acts-of-spot.ts';

export interface GatheredAct {
  readonly act: Act;
  /** Places of the spots in the verdict's list. */
  readonly spots: readonly number[];
}

/** From what a hand does in a minute to another former. */
const DISTURBS: readonly ActKind[] = [
  ...['margin', 'fill', 'tape-wide', 'plies', 'sleeve', 'slot', 'tape-between'],
  ...['outer-gap', 'wire', 'wrap', 'bridge', 'wall', 'height', 'width'],
] as readonly ActKind[];

export function actsOfSpots(doc: DesignFile, spots: readonly WeakSpot[]): readonly GatheredAct[] {
  const gathered = new Map<string, { act: Act; spots: Set<number> }>();
  spots.forEach((spot, place) => {
    for (const act of actsOfSpot(doc, spot)) {
      const key = `${act.kind} ${act.on}`;
      const held = gathered.get(key);
      // of two lengths on the same thing the larger serves both spots
      if (held === undefined) gathered.set(key, { act, spots: new Set([place]) });
      else {
        held.spots.add(place);
        if ((act.amount ?? 0) > (held.act.amount ?? 0)) held.act = act;
      }
    }
  });
  return [...gathered.values()]
    .map(({ act, spots: named }) => ({ act, spots: [...named].sort((a, b) => a - b) }))
    .sort(
      (a, b) =>
        b.spots.length - a.spots.length ||
        DISTURBS.indexOf(a.act.kind) - DISTURBS.indexOf(b.act.kind) ||
        sizeOf(a.act) - sizeOf(b.act) ||
        (a.spots[0] ?? 0) - (b.spots[0] ?? 0),
    );
}

/** Fields that it changes. */
const sizeOf = (act: Act): number => ('set' in act ? act.set.length : 1);
