// The smallest sets of acts that bring every pair to its needed grade. A search from the weak spots: each judged build is
// mended where its first spots lie, the nearest to done first; what meets is stripped of every act it can spare, and each
// length is given back until it just holds. Every step is a judgement with all unknowns at worst; what is proposed is judged
// whole. A generator: who asks may pause, stop, or take what there is so far.

import type { FileJudge } from '#judge/judging/judge-files.ts';
import type { ShortJudgement } from '#judge/judging/short-judgement.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { applyActs, changesOf, includesAll, keyOf, shapeOf, type Act, type Change } from '#mend/acts/act.ts';
import { costOf, type Cost } from './cost.ts';
import { isMended } from './is-mended.ts';
import { LeftOut, type Left } from './left-out.ts';
import { nextSets } from './next-sets.ts';
import { noneOf, settled, type NoMend } from './no-mend.ts';
import { shortfall } from './shortfall.ts';
import { stripped } from './stripped.ts';

export interface Proposal {
  readonly acts: readonly Act[];
  readonly changes: readonly Change[];
  readonly design: DesignFile;
  readonly verdict: Verdict;
  readonly cost: Cost;
}

export interface Mending {
  readonly proposals: readonly Proposal[];
  readonly none: NoMend | null;
  /** Sets that come near and do not do, nearest first. */
  readonly leftOut: readonly Left[];
  /** How many builds were judged. */
  readonly judged: number;
}

export interface MendOptions {
  /** So many proposals are enough. */
  readonly top: number;
  /** So many judgements at most. */
  readonly budget: number;
}

export const MEND_DEFAULTS: MendOptions = { top: 5, budget: 400 };

interface Node {
  readonly acts: readonly Act[];
  readonly rank: number;
}

/** More acts than this are no mending but another build. */
const MOST_ACTS = 6;
/** Sets that differ in their amounts only: more than so many of one shape tell nothing new. */
const MOST_OF_SHAPE = 3;
/** Each act more has to bring a build nearer by so much. */
const ACT_WEIGHT = 4;

/** Yields what asks for the mending so far. */
export function* mend(
  doc: DesignFile,
  judge: FileJudge,
  { top, budget }: MendOptions = MEND_DEFAULTS,
): Generator<() => Mending, Mending, void> {
  let judged = 0;
  const short = (file: DesignFile): ShortJudgement | null => {
    judged += 1;
    return judge.short(file);
  };
  const found: Proposal[] = [];
  const left = new LeftOut(doc);
  const now = (none: NoMend | null = { why: 'stopped' }): Mending => ({
    proposals: [...found].sort((a, b) => a.cost.rank - b.cost.rank).slice(0, top),
    none: found.length > 0 ? null : none,
    leftOut: left.nearest(),
    judged,
  });
  const first = judge.whole(doc);
  if (first === null || isMended(first)) return now(settled(first));
  const open: Node[] = [{ acts: [], rank: Infinity }];
  const seen = new Set<string>();
  const shapes = new Map<string, number>();
  let deadEnds: readonly string[] = [];
  while (open.length > 0 && judged < budget && found.length < top) {
    const node = takeBest(open);
    const verdict = node.acts.length === 0 ? first : judge.whole(applyActs(doc, node.acts));
    if (verdict === null) continue;
    const candidates = nextSets(doc, node.acts, verdict.weakSpots);
    if (candidates.length === 0) deadEnds = verdict.weakSpots.map(({ kind }) => kind);
    for (const acts of candidates) {
      if (judged >= budget || found.length >= top) break;
      const key = keyOf(acts);
      const ofShape = shapes.get(shapeOf(acts)) ?? 0;
      if (seen.has(key) || ofShape >= MOST_OF_SHAPE) continue;
      if (found.some((proposal) => includesAll(acts, proposal.acts))) continue;
      seen.add(key);
      shapes.set(shapeOf(acts), ofShape + 1);
      const tried = short(applyActs(doc, acts));
      yield now;
      if (tried === null) continue;
      const rank = shortfall(tried);
      if (tried.mended) {
        const isHeld = (file: DesignFile): boolean => short(file)?.mended === true;
        const proposal = proposalOf(doc, stripped(doc, acts, isHeld), first, judge);
        if (proposal !== null && !found.some((other) => keyOf(other.acts) === keyOf(proposal.acts)))
          found.push(proposal);
        yield now;
        continue;
      }
      left.add(acts, tried, rank);
      if (rank < node.rank && acts.length < MOST_ACTS) open.push({ acts, rank });
    }
  }
  return now(noneOf(first, deadEnds, judged >= budget));
}

/** Fewest acts first among those that are equally near. */
function takeBest(open: Node[]): Node {
  const place = open.reduce((best, node, i) => (scoreOf(node) < scoreOf(open[best]!) ? i : best), 0);
  return open.splice(place, 1)[0]!;
}

const scoreOf = ({ rank, acts }: Node): number => rank + acts.length * ACT_WEIGHT;

function proposalOf(
  doc: DesignFile,
  acts: readonly Act[],
  before: Verdict,
  judge: FileJudge,
): Proposal | null {
  const design = applyActs(doc, acts);
  const verdict = judge.whole(design);
  if (verdict === null || !isMended(verdict)) return null;
  const changes = changesOf(doc, acts);
  return { acts, changes, design, verdict, cost: costOf({ doc, design, before, after: verdict, changes }) };
}
