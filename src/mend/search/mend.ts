// The smallest sets of acts that bring every pair to its needed grade. First every single act, then each way of the trade
// followed down (see styles.ts), then a search from the weak spots, the nearest to done first. What meets is stripped of
// every act it can spare, and each length is given back until it just holds. Every step is a judgement with all unknowns at
// worst; what is proposed is judged whole. A generator: who asks may pause, stop, or take what there is so far.

import type { FileJudge } from '#judge/judging/judge-files.ts';
import type { WeakSpot } from '#judge/verdict/spot.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { applyActs, changesOf, includesAll, type Act, type Change } from '#mend/acts/act.ts';
import { costOf, type Cost } from './cost.ts';
import { dive } from './dive.ts';
import { isMended } from './is-mended.ts';
import { LeftOut, type Left } from './left-out.ts';
import { nextSets } from './next-sets.ts';
import { noneOf, settled, type NoMend } from './no-mend.ts';
import { Nodes } from './nodes.ts';
import { shortfall } from './shortfall.ts';
import { stripped } from './stripped.ts';
import { STYLES } from './styles.ts';

export interface Proposal {
  readonly acts: readonly Act[];
  readonly changes: readonly Change[];
  readonly design: DesignFile;
  readonly verdict: Verdict;
  readonly cost: Cost;
}

export interface Mending {
  /** Best first. */
  readonly proposals: readonly Proposal[];
  readonly none: NoMend | null;
  /** Sets that come near and do not do, nearest first. */
  readonly leftOut: readonly Left[];
  /** How many builds were judged. */
  readonly judged: number;
}

export interface MendOptions {
  /** So many proposals at most. */
  readonly top: number;
  /** So many judgements at most. */
  readonly budget: number;
}

export const MEND_DEFAULTS: MendOptions = { top: 5, budget: 200 };

/** With so many ways to choose from it is not searched for more. */
const ENOUGH = 3;
/** So many judgements at most are spent on what is smaller than all that is found. */
const SMALLER = 60;

/** Yields what asks for the mending so far. */
export function* mend(
  doc: DesignFile,
  judge: FileJudge,
  { top, budget }: MendOptions = MEND_DEFAULTS,
): Generator<() => Mending, Mending, void> {
  const first = judge.whole(doc);
  if (first === null || isMended(first))
    return { proposals: [], none: settled(first), leftOut: [], judged: 0 };
  const search = new Search(doc, judge, first);
  const now = (): Mending => search.mending(top, { why: 'stopped' });
  for (const part of [
    search.singles(),
    search.dives(),
    search.smaller(),
    search.nearest(Math.min(top, ENOUGH)),
  ]) {
    for (;;) {
      if (search.judged >= budget || part.next().done === true) break;
      yield now;
    }
  }
  return search.mending(top, noneOf(first, search.deadEnds, search.judged >= budget));
}

/** What is found so far, and what is still to be looked at. */
class Search {
  judged = 0;
  deadEnds: readonly WeakSpot[] = [];
  readonly #doc: DesignFile;
  readonly #judge: FileJudge;
  readonly #first: Verdict;
  readonly #found: Proposal[] = [];
  readonly #left: LeftOut;
  readonly #nodes = new Nodes();

  constructor(doc: DesignFile, judge: FileJudge, first: Verdict) {
    this.#doc = doc;
    this.#judge = judge;
    this.#first = first;
    this.#left = new LeftOut(doc);
  }

  mending(top: number, none: NoMend): Mending {
    return {
      proposals: this.#found.toSorted((a, b) => a.cost.rank - b.cost.rank).slice(0, top),
      none: this.#found.length > 0 ? null : none,
      leftOut: this.#left.nearest(),
      judged: this.judged,
    };
  }

  /** Each act alone. */
  *singles(): Generator<void, void, void> {
    const sets = nextSets(this.#doc, [], this.#first.weakSpots);
    if (sets.length === 0) this.deadEnds = this.#first.weakSpots;
    for (const acts of sets) yield* this.#try(acts, Infinity);
  }

  *dives(): Generator<void, void, void> {
    for (const style of STYLES) {
      const acts = yield* this.#dive(style);
      if (acts !== null) yield* this.#propose(acts);
    }
  }

  /** On from what came nearest, until there are enough. */
  *nearest(enough: number): Generator<void, void, void> {
    yield* this.#onwards(() => (this.#found.length < enough ? Infinity : -1));
  }

  /** A way of the trade may hold more acts than another set would: what is smaller than all that is found is looked for. */
  *smaller(): Generator<void, void, void> {
    const until = this.judged + SMALLER;
    yield* this.#onwards(() =>
      this.#found.length > 0 && this.judged < until
        ? Math.min(...this.#found.map(({ acts }) => acts.length)) - 2
        : -1,
    );
  }

  /** `most`: of so many acts at most a set is gone on from; asked before each step. */
  *#onwards(most: () => number): Generator<void, void, void> {
    for (;;) {
      const node = most() < 0 ? null : this.#nodes.takeBest(most());
      if (node === null) return;
      this.judged += 1;
      const spots = this.#judge.spots(applyActs(this.#doc, node.acts)) ?? [];
      yield;
      const sets = nextSets(this.#doc, node.acts, spots);
      if (sets.length === 0) this.deadEnds = spots;
      for (const acts of sets) if (acts.length <= most() + 1) yield* this.#try(acts, node.rank);
    }
  }

  *#dive(style: (typeof STYLES)[number]): Generator<void, readonly Act[] | null, void> {
    const search = dive(this.#doc, style, this.#first.weakSpots, this.#judge);
    for (;;) {
      const step = search.next();
      if (step.done === true) return step.value;
      this.judged += 1;
      yield;
    }
  }

  *#try(acts: readonly Act[], before: number): Generator<void, void, void> {
    if (this.#holds(acts) || !this.#nodes.isNew(acts)) return;
    this.judged += 1;
    const tried = this.#judge.short(applyActs(this.#doc, acts));
    yield;
    if (tried === null) return;
    if (tried.mended) yield* this.#propose(acts);
    else {
      const rank = shortfall(tried);
      this.#left.add(acts, tried, rank);
      if (rank < before) this.#nodes.add({ acts, rank });
    }
  }

  /** Another proposal does with less of the same. */
  #holds(acts: readonly Act[]): boolean {
    return this.#found.some(
      (proposal) => includesAll(acts, proposal.acts) || doesTheSame(this.#doc, acts, proposal),
    );
  }

  *#propose(acts: readonly Act[]): Generator<void, void, void> {
    if (this.#holds(acts)) return;
    const search = stripped(this.#doc, acts, this.#judge);
    let step = search.next();
    while (step.done !== true) {
      this.judged += 1;
      yield;
      step = search.next();
    }
    if (this.#holds(step.value)) return;
    const proposal = this.#proposalOf(step.value);
    if (proposal !== null) this.#found.push(proposal);
    yield;
  }

  #proposalOf(acts: readonly Act[]): Proposal | null {
    const [doc, before] = [this.#doc, this.#first];
    const design = applyActs(doc, acts);
    const verdict = this.#judge.whole(design);
    if (verdict === null || !isMended(verdict)) return null;
    const changes = changesOf(doc, acts);
    return { acts, changes, design, verdict, cost: costOf({ doc, design, before, after: verdict, acts }) };
  }
}

/** The same fields to the same values, whatever acts they come from. */
function doesTheSame(doc: DesignFile, acts: readonly Act[], { changes }: Proposal): boolean {
  const told = (all: readonly Change[]): string =>
    JSON.stringify(all.map(({ field, to }) => [field, to]).toSorted());
  return told(changesOf(doc, acts)) === told(changes);
}
