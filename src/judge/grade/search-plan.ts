// How the sections of a build are searched so that nothing that could decide is missed and nothing else is followed:
// which solids grading counts, how far, and which tracking groups can be taken together.

import { CLASSES } from '#solver/paths/path-label.ts';
import type { Counting } from '#solver/paths/ply-count.ts';
import type { SolidOptions } from '#solver/network/pieces.ts';
import type { StuffId } from '#solver/section/build.ts';
import type { Metric } from '#units/terms.ts';
import { voltsPeak } from '#units/quantity.ts';
import type { PairQuestion } from './path-requirement.ts';
import { type LevelsOf, type Solid, stands } from '#books/questions/solid.ts';
import { solidInsulations, type SolidRules } from './solid-rules.ts';
import { solidKinds } from './solid-kinds.ts';
import { closedFrom } from './closed-from.ts';
import { byNumber, solidRuns, type SolidRuns, withRuns } from './solid-runs.ts';
import { GROUPS, rankOfGroup, type SolidsById, type StuffNumbers } from '#judge/assume/stuff.ts';

export interface SearchPlan {
  readonly grading: Counting;
  /** As grading knows them: those that the search cannot tell apart any more are worth nothing. */
  readonly stuffs: SolidsById;
  /** A piece longer than this is reinforced by its distance alone, for every pair. */
  readonly longest: Readonly<Record<Metric, number>>;
  /**
   * How solids are passed, the same object for every search of one kind: groups of which the same is asked share the worse
   * rank, and a closed joint is shown up to so many times the ordinary test and no more.
   */
  readonly solidOptions: SolidOptions;
  /** By stuff: from which length on a run through it is strong for every pair. */
  readonly runs: SolidRuns['runs'];
  /** Circuits that no piece which grading asks for lies between. */
  readonly farEnds: readonly string[];
}

/**
 * Plans of one judging. What the same questions ask of the same solids is worked out once, over all the ways to count a
 * build; hence a class.
 */
export class SearchPlans {
  readonly #rules: SolidRules;
  readonly #numbers: StuffNumbers;
  readonly #known: QuestionPlans[] = [];

  constructor(rules: SolidRules, numbers: StuffNumbers) {
    this.#rules = rules;
    this.#numbers = numbers;
  }

  of(questions: readonly PairQuestion[], filled: SolidsById): SearchPlan {
    return this.#plansOf(questions).of(filled);
  }

  #plansOf(questions: readonly PairQuestion[]): QuestionPlans {
    const same = ({ questions: known }: QuestionPlans) =>
      known.length === questions.length && known.every((question, i) => question === questions[i]);
    const known = this.#known.find(same);
    if (known) return known;
    const plans = new QuestionPlans(questions, this.#rules, this.#numbers);
    this.#known.push(plans);
    return plans;
  }
}

/** What one list of questions asks of any solids, and of those that it was asked for before. */
class QuestionPlans {
  readonly questions: readonly PairQuestion[];
  readonly #rules: SolidRules;
  readonly #numbers: StuffNumbers;
  readonly #common: Pick<SearchPlan, 'longest' | 'farEnds'>;
  readonly #closedFrom: number;
  readonly #ranks: readonly number[];
  readonly #bySolids = new Map<string, SolidsPlan>();

  constructor(questions: readonly PairQuestion[], rules: SolidRules, numbers: StuffNumbers) {
    this.questions = questions;
    this.#rules = rules;
    this.#numbers = numbers;
    this.#ranks = mergedRanks(questions);
    this.#common = {
      longest: {
        creepage: longestAsked(questions, 'creepage'),
        clearance: longestAsked(questions, 'clearance'),
      },
      farEnds: [...farEnds(questions)],
    };
    this.#closedFrom = closedFrom(questions, rules);
  }

  of(filled: SolidsById): SearchPlan {
    // a number says all that is asked of a solid; where its figures come from is told anew
    const solids = [...filled.keys()].join();
    const plan = this.#bySolids.get(solids) ?? this.#planOf(filled);
    this.#bySolids.set(solids, plan);
    const { added, grading, runs, solidOptions } = plan;
    return {
      ...this.#common,
      grading,
      runs,
      solidOptions,
      stuffs: asCounted(withRuns(filled, added), grading),
    };
  }

  #planOf(filled: SolidsById): SolidsPlan {
    const { questions } = this;
    const { runs, added } = solidRuns(questions, filled, this.#rules, this.#numbers);
    const stuffs = withRuns(filled, added);
    const trackingRank = byNumber(stuffs, ({ group }) => this.#ranks[rankOfGroup(group)]!);
    const { leastThickness } = this.#rules;
    return {
      added,
      runs,
      grading: gradingCount(questions, stuffs, this.#rules),
      solidOptions: { leastThickness, trackingRank, runs, closedFrom: this.#closedFrom },
    };
  }
}

interface SolidsPlan extends Pick<SearchPlan, 'grading' | 'solidOptions'>, SolidRuns {}

function longestAsked(questions: readonly PairQuestion[], metric: Metric): number {
  const figures = questions.flatMap(({ asked }) =>
    GROUPS.map((_, rank) => asked[metric].distance(rank).reinforced ?? Infinity),
  );
  return Math.max(...figures);
}

/** Those that the search cannot tell apart any more are worth nothing. */
const asCounted = (stuffs: SolidsById, { classes }: Counting): SolidsById =>
  new Map(
    [...stuffs].map(([id, stuff]) => [
      id,
      classes[id] == null ? { ...stuff, strength: null, layers: null } : stuff,
    ]),
  );

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
  return { classes: byNumber(stuffs, (_, id) => classes.get(id) ?? null), enough, byRank: true };
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
