// Which unknowns decide: set alone at their best they change a pair's verdict; if none alone does, the smallest set
// that was found. A set is looked for by adding unknowns until the verdict changes and then dropping what it can spare.

import type { Design } from '#model/design.ts';
import type { Judging } from '#judge/once/judging.ts';
import { reachedAtWorst, type WorstCase } from './worst-case.ts';

export interface Deciders {
  readonly deciding: ReadonlySet<string>;
  /** For each unknown alone at its best: the pairs that then reach what is needed. */
  readonly reached: ReadonlyMap<string, ReadonlySet<number>>;
}

/** `open`: places of the pairs that fall short at worst and not at best; `worst`: how they were found. */
export function decidersOf(
  judging: Judging,
  design: Design,
  fields: readonly string[],
  open: ReadonlySet<number>,
  worst: WorstCase,
): Deciders {
  const deciding = new Set<string>();
  const reached = new Map<string, ReadonlySet<number>>();
  if (open.size === 0) return { deciding, reached };
  const reach = { ...judging, reachOnly: true };
  const reachedWith = (best: readonly string[], among: ReadonlySet<number>): ReadonlySet<number> =>
    reachedAtWorst(reach, design, new Set(best), worst, among);
  for (const field of fields) {
    const pairs = reachedWith([field], open);
    reached.set(field, pairs);
    if (pairs.size > 0) deciding.add(field);
  }
  for (const pair of open) {
    const alone = fields.some((field) => reached.get(field)?.has(pair));
    if (alone) continue;
    for (const field of smallestSet(fields, (set) => reachedWith(set, new Set([pair])).size > 0))
      deciding.add(field);
  }
  return { deciding, reached };
}

/**
 * Each is dropped in turn where the others do without it. Tried many at a time: what does without several does without each
 * of them, since knowing more never makes a build worse.
 */
function smallestSet(
  fields: readonly string[],
  holds: (set: readonly string[]) => boolean,
): readonly string[] {
  if (!holds(fields)) return [];
  let set = fields;
  const drop = (some: readonly string[]): void => {
    const without = set.filter((field) => !some.includes(field));
    if (without.length > 0 && holds(without)) set = without;
    else if (some.length > 1) {
      const half = some.length >> 1;
      drop(some.slice(0, half));
      drop(some.slice(half));
    }
  };
  if (fields.length > 1) {
    const half = fields.length >> 1;
    drop(fields.slice(0, half));
    drop(fields.slice(half));
  }
  return set;
}
