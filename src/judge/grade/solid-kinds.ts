// Solids that no grading can tell apart, so that a search need not either: it knows only a few kinds at a time, and what
// is left over would count for nothing.

import type { Solid } from '#books/questions/solid.ts';
import type { SolidsById } from '#judge/assume/stuff.ts';
import type { StuffId } from '#solver/section/build.ts';

/**
 * By stuff: its kind, the same for those that are worth the same in every path. `standsAlone`: a ply of it stands every
 * test that is asked, so that it is worth what any other such ply is.
 */
export function solidKinds(
  stuffs: SolidsById,
  standsAlone: (stuff: StuffId) => boolean,
): ReadonlyMap<StuffId, string> {
  // plies of one make add up, so one that stands every test is worth more beside a weaker one of its make
  const makeStands = (make: string): boolean =>
    [...stuffs].every(([id, stuff]) => stuff.kind !== 'sheet' || stuff.alike !== make || standsAlone(id));
  const kindOf = (id: StuffId, stuff: Solid): string => {
    if (stuff.kind === 'cover')
      return `cover ${[stuff.layers, stuff.strength, stuff.perMm, stuff.material].join()}`;
    const isFreePly = stuff.kind === 'sheet' && stuff.bonded === null;
    return isFreePly && makeStands(stuff.alike) ? 'ply that stands every test' : `stuff ${id}`;
  };
  return new Map([...stuffs].map(([id, stuff]) => [id, kindOf(id, stuff)]));
}
