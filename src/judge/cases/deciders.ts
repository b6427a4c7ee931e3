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
  const { reachedWith, smallestFor } = remembered((best, among) =>
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
    const enough = smallestFor(pair);
    if (enough === null) continue;
    for (const field of smallestSet(enough, (set) => reachedWith(set, new Set([pair])).size > 0))
      deciding.add(field);
  }
  return { deciding, reached };
}

/**
 * Of a set that is enough each is dropped in turn where the others do without it. Tried many at a time: what does without several does without each
 * of them, since knowing more never makes a build worse.
 */
function smallestSet(
  fields: readonly string[],
  holds: (set: readonly string[]) => boolean,
): readonly string[] {
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

/** Asked only where what was found of other sets does not answer it; also tells the smallest set that is enough for a pair. */
function remembered(reach: Reach) {
  const known: { readonly set: ReadonlySet<string>; readonly pair: number; readonly isEnough: boolean }[] =
    [];
  const answered = (best: ReadonlySet<string>, pair: number): boolean | undefined =>
    known.find(
      (one) => one.pair === pair && (one.isEnough ? isWithin(one.set, best) : isWithin(best, one.set)),
    )?.isEnough;
  const reachedWith: Reach = (best, among) => {
    const set = new Set(best);
    const open = new Set([...among].filter((pair) => answered(set, pair) === undefined));
    const found = open.size > 0 ? reach(best, open) : open;
    for (const pair of open) known.push({ set, pair, isEnough: found.has(pair) });
    return new Set([...among].filter((pair) => answered(set, pair)));
  };
  const smallestFor = (pair: number): readonly string[] | null => {
    const enough = known.filter((one) => one.pair === pair && one.isEnough).map(({ set }) => set);
    return enough.length === 0 ? null : [...enough.reduce((a, b) => (b.size < a.size ? b : a))];
  };
  return { reachedWith, smallestFor };
}

const isWithin = (part: ReadonlySet<string>, whole: ReadonlySet<string>): boolean =>
  part.size <= whole.size && [...part].every((field) => whole.has(field));
