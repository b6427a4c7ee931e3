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
  const reachedWith = remembered((best, among) =>
    reachedAtWorst(reach, design, new Set(best), worst, among),
  );
  // knowing more never makes a build worse: where some together are not enough none of them is
  const tryAlone = (some: readonly string[], among: ReadonlySet<number>): void => {
    const pairs = reachedWith(some, among);
    if (some.length > 1 && pairs.size > 0) for (const half of halvesOf(some)) tryAlone(half, pairs);
    else for (const field of some) reached.set(field, pairs);
    if (some.length === 1 && pairs.size > 0) deciding.add(some[0]!);
  };
  tryAlone(fields, open);
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
    else if (some.length > 1) halvesOf(some).forEach(drop);
  };
  if (fields.length > 1) halvesOf(fields).forEach(drop);
  return set;
}

const halvesOf = (all: readonly string[]): readonly (readonly string[])[] => [
  all.slice(0, all.length >> 1),
  all.slice(all.length >> 1),
];

type Reach = (best: readonly string[], among: ReadonlySet<number>) => ReadonlySet<number>;

/** Asked once for each set of unknowns, unless more pairs are asked for than before. */
function remembered(reach: Reach): Reach {
  const known = new Map<string, { readonly among: ReadonlySet<number>; readonly reached: ReadonlySet<number> }>();
  return (best, among) => {
    const name = JSON.stringify(best);
    const before = known.get(name);
    if (before && [...among].every((pair) => before.among.has(pair)))
      return new Set([...among].filter((pair) => before.reached.has(pair)));
    const reached = reach(best, among);
    known.set(name, { among, reached });
    return reached;
  };
}
