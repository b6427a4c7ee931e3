// The paths between two circuits in one section, or wholly outside the window, and the grade that each gives.

import { type MetalTies, metalTies } from '#judge/conductors/metal-ties.ts';
import type { FilledOutside } from '#judge/fill/fill-outside.ts';
import {
  type Chain,
  type ChainPiece,
  type Links,
  chainLength,
  chainPlies,
  chainRank,
  chainsBetween,
  linksOf,
} from '#judge/grade/chain.ts';
import { type GradingTools, askedOfPiece, gradeOfPath } from '#judge/grade/path-grade.ts';
import type { PairQuestion } from '#judge/grade/path-requirement.ts';
import type { SearchPlan } from '#judge/grade/search-plan.ts';
import type { Design } from '#model/design.ts';
import type { Piece, SolidOptions } from '#solver/network/pieces.ts';
import type { Counting } from '#solver/paths/ply-count.ts';
import type { Build } from '#solver/section/build.ts';
import { nm } from '#units/quantity.ts';
import type { Metric } from '#units/terms.ts';
import { atBareMetal, isBareContact, isContact } from './bare-metal.ts';
import type { FoundPath } from './case-result.ts';
import { outsidePieces } from './outside-pieces.ts';
import type { KeyedLimits, PathCache } from './path-cache.ts';
import type { KeyedSection, SectionList } from '#judge/paths/keyed/section-list.ts';

export const METRICS: readonly Metric[] = ['creepage', 'clearance'];

export interface PathSearch {
  /** The same for every search of one judging. */
  readonly solidOptions: SolidOptions;
  readonly design: Design;
  readonly tools: GradingTools;
  readonly plan: SearchPlan;
  readonly cache: PathCache;
  /** Weak places at either side of every section that falls short are wanted. */
  readonly everyPlace: boolean;
  /** How the unknowns are counted, in words; empty where that is as it is drawn. */
  readonly counted: string;
  /** Whether a pair reaches what is needed is all that is wanted: the first path that does not is enough. */
  readonly reachOnly: boolean;
}

/** One build with its sections and the distances outside them. */
export interface Place {
  readonly build: Build;
  readonly sections: SectionList;
  /** More of them for one pair: loose parts of other circuits lie as they were drawn, and shut no way by having moved. */
  readonly movedAlone: (between: readonly [string, string]) => Iterable<KeyedSection>;
  readonly outside: Readonly<Record<Metric, readonly ChainPiece[]>>;
  /** The weakest path of a pair in a section, as it was found with the core bound one way; see `WorstThere`. */
  readonly worst: Map<PairQuestion, Map<KeyedSection | null, WorstThere>>;
}

/** What holds with the core bound another way too, as far as that binds nothing here. */
export interface WorstThere {
  readonly site: Site;
  readonly path: FoundPath | null;
}

export function placeOf(
  design: Design,
  filled: readonly FilledOutside[],
  build: Build,
  cache: PathCache,
  strength: SolidOptions,
): Place {
  const laid = { leastThickness: strength.leastThickness };
  const alone = new Map<string, Iterable<KeyedSection>>();
  const outside = (metric: Metric) => outsidePieces(design, filled, build, metric, strength);
  return {
    build,
    sections: cache.sections(build, laid),
    movedAlone: (between) => {
      const name = between.join();
      const known = alone.get(name) ?? cache.sectionsMovedAlone(build, between, laid);
      alone.set(name, known);
      return known;
    },
    outside: { creepage: outside('creepage'), clearance: outside('clearance') },
    worst: new Map(),
  };
}

/** One build with its core bound one way, and all that is the same there for every pair. */
export interface Site {
  readonly search: PathSearch;
  readonly place: Place;
  /** The circuit that the core is tied to; null floating. */
  readonly coreTo: string | null;
  readonly circuits: ReadonlySet<string>;
  readonly ties: MetalTies;
  /** Pieces outside the window, and where metal joins circuits. */
  readonly outside: Readonly<Record<Metric, readonly ChainPiece[]>>;
  /** By the pieces of a search, which several pairs may ask for. */
  readonly ways: Map<readonly Piece[], Ways>;
  /** The same place with its core floating, which is looked at before; null: it is this, or there is none. */
  readonly floating: Site | null;
}

interface Ways {
  readonly links: Links;
  readonly floating: ReadonlySet<string>;
}

export function siteOf(
  search: PathSearch,
  place: Place,
  coreTo: string | null,
  floating: Site | null = null,
): Site {
  const ties = metalTies(search.design, coreTo);
  const joined = contacts(ties);
  return {
    search,
    place,
    coreTo,
    circuits: new Set(search.design.circuits.map(({ id }) => id)),
    ties,
    outside: {
      creepage: [...place.outside.creepage, ...joined],
      clearance: [...place.outside.clearance, ...joined],
    },
    ways: new Map(),
    floating,
  };
}

/**
 * Where a pair is looked at, with null for what lies wholly outside; a pair of which nothing is asked only where all are.
 * Where the first place that falls short is enough, those that did before come first; not where a circuit is isolated, which
 * may count as mains by how far it falls short.
 */
export function* sectionsFor(
  { place, search }: Site,
  { between, needed }: PairQuestion,
): Generator<KeyedSection | null, void, void> {
  const { past } = place.build;
  if (past && (needed === null || between.includes(past.circuit))) return;
  const isOrderFree = search.reachOnly && search.design.circuits.every(({ role }) => role !== 'isolated');
  yield* isOrderFree ? place.sections.from(search.cache.shortAt(between)) : place.sections;
  if (needed !== null) yield* place.movedAlone(between);
  yield null;
}

export interface PathsFrom {
  readonly section: KeyedSection | null;
  readonly question: PairQuestion;
  readonly metric: Metric;
  readonly counting: Counting;
  readonly limits: KeyedLimits;
  /** What makes a chain stronger in this search besides its length; see `ChainLimits`. */
  readonly weigh: (piece: ChainPiece) => readonly number[];
}

/** Every path of a pair that may count; graded by `gradedPath`. */
export function* pathsFrom(site: Site, from: PathsFrom): Generator<Chain> {
  const { section, question, metric, limits, weigh } = from;
  if (section === null && site.outside[metric].length === 0) return;
  const { links, floating } = waysOf(site, from);
  const [first, last] = question.between;
  const { x } = question.asked[metric];
  for (const chain of chainsBetween(links, first, last, floating, { x, longest: limits.length[0]!, weigh })) {
    // without a section only what lies wholly outside; with one only what is not wholly outside
    const whollyOutside = chain.pieces.every((piece) => piece.kind === 'outside');
    if (whollyOutside === (section === null)) yield chain;
  }
}

export function gradedPath(site: Site, { section, question, metric }: PathsFrom, chain: Chain): FoundPath {
  const { tools } = site.search;
  const pair = question.asked[metric];
  const graded = gradeOfPath(chain, pair, tools);
  // a distance outside that stands alone is held to the voltage of its place
  const asked = chain.pieces.length === 1 ? askedOfPiece(chain.pieces[0]!, pair) : pair;
  const bare = graded.value === 'functional' && chain.pieces.every((piece) => isBareContact(section, piece));
  return {
    kind: 'path',
    metric,
    section,
    build: site.place.build,
    counted: site.search.counted,
    chain,
    grade: bare ? 'none' : graded.value,
    reasons: graded,
    length: chainLength(chain, asked.x),
    plies: chainPlies(chain),
    rank: chainRank(chain),
    coreTo: site.coreTo,
    asked,
    tools,
  };
}

function waysOf(site: Site, { section, metric, counting, limits }: PathsFrom): Ways {
  if (section === null) return waysOver(site, site.outside[metric]);
  const pieces = piecesIn(site, section, counting, limits);
  const known = site.ways.get(pieces);
  if (known) return known;
  const inside = pieces.map((piece): ChainPiece => ({
    kind: 'inside',
    piece: isContact(piece) ? atBareMetal(section, piece, limits.window) : piece,
    length: piece.length,
    plies: piece.plies,
    rank: piece.rank,
  }));
  const ways = waysOver(site, [...inside, ...site.outside[metric]]);
  site.ways.set(pieces, ways);
  return ways;
}

function piecesIn(
  { search, place }: Site,
  section: KeyedSection,
  counting: Counting,
  limits: KeyedLimits,
): readonly Piece[] {
  return search.cache.pieces(section, search.solidOptions, place.build.closedJoint, counting, limits);
}

function waysOver(site: Site, pieces: readonly ChainPiece[]): Ways {
  const linked = (all: readonly ChainPiece[]): Ways => {
    const links = linksOf(all, site.ties.nameOf);
    return { links, floating: new Set([...links.keys()].filter((end) => !site.circuits.has(end))) };
  };
  const ways = linked(pieces);
  return ways.floating.size > MOST_APART ? linked(alongTheWorst(pieces)) : ways;
}

/** So much may float in this build that material groups are not kept apart. */
export const mayBeTakenTogether = ({ search: { design } }: Site): boolean =>
  design.parts.length + design.layers.filter(({ kind }) => kind === 'screen').length + 1 > MOST_APART;

/** Over more floating conductors than this, material groups are not kept apart: there are too many ways to run. */
const MOST_APART = 8;

/** As if every piece ran along the worst material that any of them runs along. */
function alongTheWorst(pieces: readonly ChainPiece[]): readonly ChainPiece[] {
  const rank = Math.max(...pieces.map((piece) => piece.rank));
  return pieces.map((piece) => ({ ...piece, rank }));
}

/** Circuits that metal joins touch, wherever that is. */
const contacts = ({ joined }: MetalTies): readonly ChainPiece[] =>
  joined.map((between) => ({
    kind: 'outside',
    between,
    length: nm(0),
    plies: 0,
    rank: 0,
    what: 'metal joins them',
    group: 'IIIb',
    entry: null,
    isBare: true,
  }));
