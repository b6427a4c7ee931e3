// The weakest path of every pair over the sections of one build: every chain of every section is graded.

import { isOutOfRange, type OutOfRange } from '#standards/out-of-range.ts';
import type { Judged } from '#standards/because.ts';
import type { Grade, MaterialGroup } from '#standards/grade.ts';
import type { Design } from '#model/design.ts';
import type { Build } from '#solver/build.ts';
import { countAll, type Counting } from '#solver/counting.ts';
import type { Metric } from '#solver/pieces.ts';
import type { ConductorRegion, Section } from '#solver/section.ts';
import { nm, type Nm, type VoltsPeak } from '#units/quantity.ts';
import {
  type Chain,
  type ChainPiece,
  chainLength,
  chainPlies,
  chainRank,
  chainsBetween,
  linksOf,
} from './chain.ts';
import { heightOf, reaches } from './grade.ts';
import type { FoundPath } from './outcome.ts';
import { outsidePieces } from './outside-pieces.ts';
import { type Asked, gradeOfChain, type GradingTools } from './path-grade.ts';
import type { KeyedSection, NamedLimits, PathCache } from './path-cache.ts';
import type { PairRequired } from './required.ts';
import type { SearchPlan } from './search-plan.ts';
import { GROUPS } from './stuff.ts';

export const PRINTED_PLIES = [0, 1, 2, 3] as const;

export interface PairQuestion {
  readonly between: readonly [string, string];
  readonly needed: Grade | null;
  readonly required: PairRequired;
  readonly asked: Readonly<Record<Metric, Asked>>;
}

export interface PairPaths {
  /** The weakest that is not reinforced by its length alone; null: none. */
  readonly worst: FoundPath | null;
  readonly failing: readonly FoundPath[];
}

const METRICS: readonly Metric[] = ['creepage', 'clearance'];

export interface PathSearch {
  readonly leastThickness: Nm;
  readonly design: Design;
  readonly tools: GradingTools;
  readonly plan: SearchPlan;
  readonly cache: PathCache;
  /** The shortest paths by plies are wanted too, and weak places at either side of every section that falls short. */
  readonly printed: boolean;
  /** Whether a pair reaches what is needed is all that is wanted: the first path that does not is enough. */
  readonly reachOnly: boolean;
}

/** One build with its sections and the distances outside them. */
export interface Place {
  readonly build: Build;
  readonly sections: readonly KeyedSection[];
  readonly outside: Readonly<Record<Metric, readonly ChainPiece[]>>;
}

export function placeOf(
  design: Design,
  outsideGroups: readonly MaterialGroup[],
  build: Build,
  cache: PathCache,
  leastThickness: Nm,
): Place {
  const outside = (metric: Metric) => outsidePieces(design, outsideGroups, build, metric, leastThickness);
  return {
    build,
    sections: cache.sections(build, leastThickness),
    outside: { creepage: outside('creepage'), clearance: outside('clearance') },
  };
}

/** Everything about one pair in the sections of one build. */
export function pathsOfPair(
  search: PathSearch,
  place: Place,
  coreTo: string | null,
  question: PairQuestion,
): PairPaths {
  const found = { worst: null as FoundPath | null, failing: [] as FoundPath[] };
  for (const section of [...place.sections, null]) {
    const worstHere = worstPath(search, place, section, coreTo, question, null);
    if (isWorse(worstHere, found.worst)) found.worst = worstHere;
    if (!worstHere || reaches(worstHere.grade, question.needed)) continue;
    found.failing.push(worstHere);
    if (search.reachOnly) break;
    // a path of no length is everywhere, not at one side; leads are looked at as they are laid, not slumped as well
    if (!search.printed || !section || worstHere.length === 0) continue;
    if (section.kind === 'lead' && section.slumped !== null) continue;
    for (const window of halvesOf(section)) {
      const there = worstPath(search, place, section, coreTo, question, window);
      if (there && !reaches(there.grade, question.needed)) found.failing.push(there);
    }
  }
  return found;
}

/** The weakest path of a section among those that are not reinforced by their length alone. */
function worstPath(
  search: PathSearch,
  place: Place,
  section: KeyedSection | null,
  coreTo: string | null,
  question: PairQuestion,
  window: readonly [Nm, Nm] | null,
): FoundPath | null {
  // where nothing is asked the printed paths tell enough
  if (question.needed === null) return null;
  let worst: FoundPath | null = null;
  for (const metric of METRICS) {
    const limits = {
      metric,
      x: question.asked[metric].x,
      length: [search.plan.longest[metric]],
      window,
      ends: search.plan.ends,
      name: search.plan.endsName,
    };
    const from = { search, place, section, coreTo, question, metric, counting: search.plan.grading, limits };
    for (const path of gradedPaths(from)) if (isWorse(path, worst)) worst = path;
  }
  return worst;
}

export const noPaths = (): Record<Metric, (FoundPath | null)[]> => ({
  creepage: PRINTED_PLIES.map(() => null),
  clearance: PRINTED_PLIES.map(() => null),
});

/** Per pair the shortest paths that puncture at most k plies, over all sections of one build. */
export function shortestOfPairs(
  search: PathSearch,
  place: Place,
  coreTo: string | null,
  questions: readonly PairQuestion[],
): readonly Record<Metric, (FoundPath | null)[]>[] {
  const shortest = questions.map(noPaths);
  const tied = tiesOf(search.design, coreTo);
  for (const metric of METRICS) {
    for (const section of [...place.sections, null]) {
      // longer than what the pairs have already is not looked for
      const known = questions.map(({ asked }, i) =>
        PRINTED_PLIES.map((k) => Math.max(shortest[i]![metric][k]?.length ?? Infinity, asked[metric].x)),
      );
      const length = longestOf(known);
      const between = knownBetween(questions, known, tied);
      const name = known.flat().join(',');
      questions.forEach((question, i) => {
        const limits = { metric, x: question.asked[metric].x, length, window: null, between, name };
        const from = { search, place, section, coreTo, question, metric, counting: COUNT_PRINTED, limits };
        for (const path of gradedPaths(from)) note(shortest[i]![metric], path);
      });
    }
  }
  return shortest;
}

const longestOf = (known: readonly (readonly number[])[]): readonly number[] =>
  PRINTED_PLIES.map((k) => Math.max(...known.map((lengths) => lengths[k]!)));

/** What is known for two conductors: that of their pair; over a floating one that of all pairs with the other end. */
function knownBetween(
  questions: readonly PairQuestion[],
  known: readonly (readonly number[])[],
  tied: (conductor: string) => string,
): (a: string, b: string) => readonly number[] {
  const circuits = new Set(questions.flatMap(({ between }) => between));
  return (a, b) => {
    const ends = [tied(a), tied(b)].filter((end) => circuits.has(end));
    return longestOf(known.filter((_, i) => ends.every((end) => questions[i]!.between.includes(end))));
  };
}

const COUNT_PRINTED = countAll(PRINTED_PLIES.length - 1);

/** The two halves of every chamber's width, with what lies outside the outermost. */
function halvesOf({ chambers, frame }: Section): readonly (readonly [Nm, Nm])[] {
  return chambers.flatMap(({ x0, x1 }, i) => {
    const middle = nm(Math.floor((x0 + x1) / 2));
    const from = i === 0 ? frame.x0 : x0;
    const to = i === chambers.length - 1 ? frame.x1 : x1;
    return [[from, middle] as const, [middle, to] as const];
  });
}

/** Lower on the ladder first, then fewer plies that are worth anything, then a smaller part of what would do. */
export function isWorse(path: FoundPath | null, than: FoundPath | null): boolean {
  if (!path || !than) return path !== null;
  const height = heightOf(path.grade) - heightOf(than.grade);
  if (height !== 0) return height < 0;
  const plies = worthyPlies(path) - worthyPlies(than);
  return plies !== 0 ? plies < 0 : shareOf(path) < shareOf(than);
}

function worthyPlies({ chain, tools }: FoundPath): number {
  let plies = 0;
  for (const step of chain.pieces) {
    if (step.kind === 'outside') continue;
    for (const { stuff, count } of step.piece.punctured) {
      const { strength, layers } = tools.stuffs[stuff]!;
      if (strength !== null || layers !== null) plies += count;
    }
  }
  return plies;
}

const shareOf = ({ length, asked, rank }: FoundPath): number =>
  length / (asked.distance(rank).reinforced ?? Infinity);

function note(shortest: (FoundPath | null)[], path: FoundPath): void {
  for (const k of PRINTED_PLIES) {
    const known = shortest[k];
    if (path.plies > k) continue;
    if (!known || path.length < known.length || (path.length === known.length && path.plies < known.plies)) {
      shortest[k] = path;
    }
  }
}

interface GradingFrom {
  readonly search: PathSearch;
  readonly place: Place;
  readonly section: KeyedSection | null;
  readonly coreTo: string | null;
  readonly question: PairQuestion;
  readonly metric: Metric;
  readonly counting: Counting;
  readonly limits: NamedLimits;
}

function* gradedPaths(from: GradingFrom): Generator<FoundPath> {
  const { search, section, coreTo, question, metric } = from;
  const { tools, design } = search;
  const asked = question.asked[metric];
  const inside = section === null ? [] : piecesInside(from, section);
  const outside = from.place.outside[metric];
  if (section === null && outside.length === 0) return;
  const links = linksOf([...inside, ...outside], tiesOf(design, coreTo));
  const circuits = new Set(design.circuits.map((circuit) => circuit.id));
  const floating = new Set([...links.keys()].filter((conductor) => !circuits.has(conductor)));
  const [first, last] = question.between;
  for (const chain of chainsBetween(links, first, last, floating, {
    x: asked.x,
    longest: from.limits.length[0]!,
  })) {
    // without a section only what lies wholly outside; with one only what is not wholly outside
    const whollyOutside = chain.pieces.every((piece) => piece.kind === 'outside');
    if (whollyOutside !== (section === null)) continue;
    const graded = gradeOfChain(chain, asked, tools);
    const bare = graded === 'functional' && section !== null && isBareContact(section, chain);
    yield {
      kind: 'path',
      metric,
      section,
      chain,
      grade: bare ? 'none' : graded,
      length: chainLength(chain, asked.x),
      plies: chainPlies(chain),
      rank: chainRank(chain),
      coreTo,
      asked,
      tools,
    };
  }
}

function piecesInside(from: GradingFrom, section: KeyedSection): readonly ChainPiece[] {
  const { search, place, counting, limits } = from;
  const options = {
    leastThickness: search.leastThickness,
    trackingRank: search.plan.trackingRank,
    weak: counting.byRank ? search.plan.weak : [],
  };
  const pieces = search.cache.pieces(section, options, place.build.closedJoint, counting, limits);
  return pieces.map((piece) => ({
    kind: 'inside',
    piece,
    length: piece.length,
    plies: piece.plies,
    rank: piece.rank,
  }));
}

/** A conductor's own name, or that of the circuit it is tied to. */
function tiesOf(design: Design, coreTo: string | null): (conductor: string) => string {
  const ties = new Map<string, string>();
  if (coreTo !== null) ties.set('core', coreTo);
  for (const part of design.parts) {
    if (part.bond !== 'floating') ties.set(part.id, part.bond);
    else if (part.touches.includes('core')) ties.set(part.id, coreTo ?? 'core');
  }
  for (const layer of design.layers) {
    if (layer.kind === 'screen' && layer.circuit !== null && layer.id !== null)
      ties.set(layer.id, layer.circuit);
  }
  return (conductor) => ties.get(conductor) ?? conductor;
}

/** Every step of the chain is a contact of bare metal. */
export function isBareContact(section: Section, chain: Chain): boolean {
  return chain.pieces.every((piece) => {
    if (piece.kind === 'outside' || piece.length > 0 || piece.plies > 0) return false;
    const [x, y] = piece.piece.from;
    const bare = (conductor: string) =>
      section.regions.some(
        (r): r is ConductorRegion =>
          r.kind === 'conductor' &&
          r.conductor === conductor &&
          r.bare &&
          r.x0 <= x &&
          r.x1 >= x &&
          r.y0 <= y &&
          r.y1 >= y,
      );
    return piece.piece.between.every(bare);
  });
}

/** What a pair asks along each metric, ready for grading; `highFrequency` raises the test to that level where larger. */
export function askedOf(required: PairRequired, highFrequency: boolean): Readonly<Record<Metric, Asked>> {
  const value = <T extends number>(found: Judged<T> | OutOfRange): T | null =>
    isOutOfRange(found) ? null : found.value;
  const level = (column: 'basic' | 'reinforced'): VoltsPeak | null => {
    const ordinary = value(required.test[column]);
    const raised = highFrequency ? required.highFrequencyTest[column] : null;
    if (ordinary === null) return null;
    return raised && raised.value > ordinary ? raised.value : ordinary;
  };
  const levels = { basic: level('basic'), reinforced: level('reinforced') };
  const x = required.x.value;
  const clearance = {
    basic: value(required.clearance.basic),
    reinforced: value(required.clearance.reinforced),
  };
  const byRank: ({ basic: Nm | null; reinforced: Nm | null } | undefined)[] = [];
  const creepage = (rank: number) => {
    const found = required.creepage(GROUPS[rank]!);
    return { basic: value(found.basic), reinforced: value(found.reinforced) };
  };
  return {
    creepage: { distance: (rank) => (byRank[rank] ??= creepage(rank)), levels, x },
    clearance: { distance: () => clearance, levels, x },
  };
}
