// How the sections of a build are searched so that nothing that could decide is missed and nothing else is followed:
// which solids grading counts, how far, and which tracking groups can be taken together.

import { CLASSES } from '#solver/paths/path-label.ts';
import type { Counting } from '#solver/paths/ply-count.ts';
import type { RunStep } from '#solver/network/pieces.ts';
import type { StuffId } from '#solver/section/build.ts';
import type { Metric } from '#units/terms.ts';
import { voltsPeak } from '#units/quantity.ts';
import type { PairQuestion } from './path-requirement.ts';
import { type LevelsOf, type Solid, stands } from '#books/questions/solid.ts';
import { solidInsulations, type SolidRules } from './solid-rules.ts';
import { solidKinds } from './solid-kinds.ts';
import { closedFrom } from './closed-from.ts';
import { byNumber, solidRuns } from './solid-runs.ts';
import { GROUPS, rankOfGroup, type SolidsById, type StuffNumbers } from '#judge/assume/stuff.ts';

export interface SearchPlan {
  readonly grading: Counting;
  /** As grading knows them: those that the search cannot tell apart any more are worth nothing. */
  readonly stuffs: SolidsById;
  /** A piece longer than this is reinforced by its distance alone, for every pair. */
  readonly longest: Readonly<Record<Metric, number>>;
  /** Tracking rank of every stuff; groups of which the same is asked share the worse rank. */
  readonly trackingRank: readonly number[];
  /** By stuff: from which length on a run through it is strong for every pair. */
  readonly runs: readonly (readonly RunStep[])[];
  /** From which length on a closed joint is strong; it is shown up to so many times the ordinary test and no more. */
  readonly closedFrom: number;
  /** Circuits that no piece which grading asks for lies between. */
  readonly farEnds: readonly string[];
}

export function searchPlan(
  questions: readonly PairQuestion[],
  filled: SolidsById,
  rules: SolidRules,
  numbers: StuffNumbers,
): SearchPlan {
  const { stuffs, runs } = solidRuns(questions, filled, rules, numbers);
  const ranks = mergedRanks(questions);
  const worst = (metric: Metric) =>
    Math.max(
      ...questions.flatMap(({ asked }) =>
        GROUPS.map((_, rank) => asked[metric].distance(rank).reinforced ?? Infinity),
      ),
    );
  const grading = gradingCount(questions, stuffs, rules);
  return {
    stuffs: new Map(
      [...stuffs].map(([id, stuff]) => [
        id,
        grading.classes[id] == null ? { ...stuff, strength: null, layers: null } : stuff,
      ]),
    ),
    farEnds: [...farEnds(questions)],
    grading,
    longest: { creepage: worst('creepage'), clearance: worst('clearance') },
    trackingRank: byNumber(stuffs, (_, { group }) => ranks[rankOfGroup(group)]!),
    runs,
    closedFrom: closedFrom(questions, rules),
  };
}

/**
 * Circuits that need not be searched from: the other end of every pair that asks for something is searched from, and so
 * is everything that floats.
 */
function farEnds(questions: readonly PairQuestion[]): ReadonlySet<string> {
  const circuits = [...new Set(questions.flatMap(({ between }) => between))];
  const asked = questions.filter(({ needed }) => needed !== null);
  const far = new Set<string>();
  for (const circuit of circuits) {
    const meets = asked.some(
      ({ between }) => between.includes(circuit) && between.some((end) => far.has(end)),
    );
    if (!meets) far.add(circuit);
  }
  return far;
}

/** For every group the worst one of which no pair asks more. */
function mergedRanks(questions: readonly PairQuestion[]): readonly number[] {
  const same = (a: number, b: number) =>
    questions.every(({ asked }) => {
      const [one, other] = [asked.creepage.distance(a), asked.creepage.distance(b)];
      return one.basic === other.basic && one.reinforced === other.reinforced;
    });
  return GROUPS.map((_, rank) => Math.max(...GROUPS.map((__, other) => (same(rank, other) ? other : rank))));
}

/** Counts each stuff that is worth something; enough is as many of one as are reinforced for every pair. */
function gradingCount(questions: readonly PairQuestion[], stuffs: SolidsById, rules: SolidRules): Counting {
  const classes = new Map<number, number>();
  const known = new Map<string, number>();
  const enough: (number | undefined)[] = [];
  const top = hardest(questions);
  const pliesOf = (id: StuffId) => pliesEnough(id, stuffs, top, rules);
  // where the film of a sheet counts, sheets that each stand the test are still not alike
  const kinds = solidKinds(
    stuffs,
    (id) => rules.sheets.film === undefined && standsAlone(stuffs.get(id)!, top),
  );
  for (const [id, stuff] of stuffs) {
    // more classes than a search tells apart: the rest counts for nothing, in grading too
    if (stuff.strength === null && stuff.layers === null) continue;
    const kind = kinds.get(id)!;
    if (!known.has(kind) && known.size >= CLASSES) continue;
    const cls = known.get(kind) ?? known.size;
    known.set(kind, cls);
    classes.set(id, cls);
    enough[cls] = stuff.kind === 'sheet' ? pliesOf(id) : undefined;
  }
  return { classes: byNumber(stuffs, (id) => classes.get(id) ?? null), enough, byRank: true };
}

const standsAlone = ({ strength, bonded, material }: Solid, levels: LevelsOf): boolean =>
  bonded === null && stands(strength, levels(material).reinforced);

function pliesEnough(
  id: StuffId,
  stuffs: SolidsById,
  levels: LevelsOf,
  rules: SolidRules,
): number | undefined {
  const { alone, anyTwo, film } = rules.sheets;
  const counts = [alone, film?.plies ?? null, anyTwo].filter((count) => count !== null);
  return counts.find((count) =>
    solidInsulations([{ stuff: id, count }], stuffs, levels, rules).some(({ value }) => value.reinforced),
  );
}

/** For every material the highest level that a pair asks, for both grades; null where one has no figure. */
function hardest(questions: readonly PairQuestion[]): LevelsOf {
  return (material) => {
    const all = questions.map(({ asked }) => asked.creepage.levels(material).reinforced);
    const known = all.filter((level) => level !== null);
    const level = known.length < all.length ? null : voltsPeak(Math.max(...known));
    const both = { basic: level, reinforced: level };
    return { ...both, ordinary: both };
  };
}
