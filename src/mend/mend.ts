// The smallest sets of acts that bring every pair to its needed grade. A search from the weak spots: each judged build is
// mended where its first spots lie, the nearest to done first; what meets is stripped of every act it can spare, and each
// length is given back until it just holds. Every step is a whole judgement with all unknowns at worst.
// A generator: who asks may pause, stop, or take what there is so far.

import type { Verdict } from '#judge/verdict/verdict.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { applyActs, changesOf, type Act, type Change } from './act.ts';
import { actsOfSpot } from './acts-of-spot.ts';
import { costOf, type Cost } from './cost.ts';
import { isMended } from './is-mended.ts';
import { shortfall } from './shortfall.ts';
import { stripped } from './stripped.ts';

/** Null where the file would be refused. */
export type JudgeFile = (doc: DesignFile) => Verdict | null;

export interface Proposal {
  readonly acts: readonly Act[];
  readonly changes: readonly Change[];
  readonly design: DesignFile;
  readonly verdict: Verdict;
  readonly cost: Cost;
}

export type NoMend =
  /** Nothing needs mending. */
  | { readonly why: 'meets' }
  /** These pairs stay not shown whatever is mended: so much is not known. */
  | {
      readonly why: 'unknown';
      readonly pairs: readonly (readonly [string, string])[];
      readonly fields: readonly string[];
    }
  /** No act of the trade reaches it: these kinds of spots stay. */
  | { readonly why: 'no-act'; readonly spots: readonly string[] }
  /** The search ended before anything was found. */
  | { readonly why: 'stopped' };

export interface Mending {
  readonly proposals: readonly Proposal[];
  readonly none: NoMend | null;
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
  readonly verdict: Verdict;
  readonly rank: number;
}

/** More acts than this are no mending but another build. */
const MOST_ACTS = 6;
/** Spots of one build that the search begins at. */
const SPOTS_TRIED = 2;

export function* mend(
  doc: DesignFile,
  judgeFile: JudgeFile,
  { top, budget }: MendOptions = MEND_DEFAULTS,
): Generator<Mending, Mending, void> {
  let judged = 0;
  const judge = (file: DesignFile): Verdict | null => {
    judged += 1;
    return judgeFile(file);
  };
  const found: Proposal[] = [];
  const now = (none: NoMend | null): Mending => ({
    proposals: [...found].sort((a, b) => a.cost.rank - b.cost.rank).slice(0, top),
    none: found.length > 0 ? null : none,
    judged,
  });
  const first = judge(doc);
  if (first === null || isMended(first)) return now(settled(first));
  const open: Node[] = [{ acts: [], verdict: first, rank: shortfall(first) }];
  const seen = new Set<string>();
  let deadEnds: readonly string[] = [];
  while (open.length > 0 && judged < budget && found.length < top) {
    const node = takeBest(open);
    const candidates = nextActs(doc, node);
    if (candidates.length === 0) deadEnds = node.verdict.weakSpots.map(({ kind }) => kind);
    for (const acts of candidates) {
      if (judged >= budget || found.length >= top) break;
      const key = keyOf(acts);
      if (seen.has(key) || found.some((proposal) => includesAll(acts, proposal.acts))) continue;
      seen.add(key);
      const verdict = judge(applyActs(doc, acts));
      yield now({ why: 'stopped' });
      if (verdict === null) continue;
      const rank = shortfall(verdict);
      if (isMended(verdict)) {
        const proposal = proposalOf(doc, stripped(doc, acts, judge), judge);
        if (proposal !== null && !found.some((other) => keyOf(other.acts) === keyOf(proposal.acts)))
          found.push(proposal);
      } else if (rank < node.rank && acts.length < MOST_ACTS) open.push({ acts, verdict, rank });
    }
  }
  return now(noneOf(first, deadEnds, judged >= budget));
}

/** Fewest acts first among those that are equally near. */
function takeBest(open: Node[]): Node {
  const place = open.reduce((best, node, i) => (scoreOf(node) < scoreOf(open[best]!) ? i : best), 0);
  return open.splice(place, 1)[0]!;
}

const scoreOf = ({ rank, acts }: Node): number => rank + acts.length * 4;

/** Sets one act larger; an act on the same thing takes the place of the one before. */
function nextActs(doc: DesignFile, { acts, verdict }: Node): readonly (readonly Act[])[] {
  const mended = applyActs(doc, acts);
  const spots = verdict.weakSpots.slice(0, SPOTS_TRIED);
  // layers put in shift the places of those after them: acts are then read off the first build's own spots only
  if (acts.some((act) => 'insert' in act) && mended.layers.length !== doc.layers.length)
    return spots
      .flatMap((spot) => actsOfSpot(doc, { ...spot, layers: ownLayers(spot.layers, acts) }))
      .map((act) => joined(acts, act));
  return spots.flatMap((spot) => actsOfSpot(mended, spot)).map((act) => joined(acts, act));
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

const joined = (acts: readonly Act[], act: Act): readonly Act[] => [
  ...acts.filter(({ on }) => on !== act.on),
  act,
];

const keyOf = (acts: readonly Act[]): string =>
  acts
    .map((act) => JSON.stringify(act))
    .sort()
    .join('\n');

const includesAll = (acts: readonly Act[], others: readonly Act[]): boolean =>
  others.every((other) => acts.some(({ kind, on }) => kind === other.kind && on === other.on));

function proposalOf(doc: DesignFile, acts: readonly Act[], judge: JudgeFile): Proposal | null {
  const design = applyActs(doc, acts);
  const verdict = judge(design);
  const before = judge(doc);
  if (verdict === null || before === null || !isMended(verdict)) return null;
  const changes = changesOf(doc, acts);
  return { acts, changes, design, verdict, cost: costOf({ doc, design, before, after: verdict, changes }) };
}

/** Nothing falls short; what is not shown is for want of facts. */
const settled = (first: Verdict | null): NoMend =>
  first === null || first.verdict === 'meets' ? { why: 'meets' } : unknownOf(first);

function noneOf(first: Verdict, deadEnds: readonly string[], isOut: boolean): NoMend {
  const unknown = unknownOf(first);
  if (unknown.why === 'unknown' && unknown.pairs.length > 0 && unknown.fields.length > 0) return unknown;
  return isOut && deadEnds.length === 0
    ? { why: 'stopped' }
    : {
        why: 'no-act',
        spots: [...new Set(deadEnds.length > 0 ? deadEnds : first.weakSpots.map(({ kind }) => kind))],
      };
}

function unknownOf(verdict: Verdict): Extract<NoMend, { why: 'unknown' }> {
  const fields = verdict.assumptions.filter(({ decides }) => decides).map(({ field }) => field);
  const pairs = verdict.pairs.filter((pair) => pair.verdict === 'not-shown').map(({ between }) => between);
  return { why: 'unknown', pairs, fields };
}
