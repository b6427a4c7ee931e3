// The weakest path of every pair over the sections of one build: every chain of every section is graded.

import type { Book } from '#standards/book.ts';
import { isOutOfRange, type OutOfRange } from '#standards/out-of-range.ts';
import type { Judged } from '#standards/because.ts';
import type { Grade, MaterialGroup } from '#standards/grade.ts';
import type { Design } from '#model/design.ts';
import type { Build } from '#solver/build.ts';
import { sectionsOf } from '#solver/lay-out.ts';
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
import { type Asked, gradeOfChain, type GradingTools } from './path-grade.ts';
import { type PathCache, sectionKeyOf } from './path-cache.ts';
import type { PairRequired } from './required.ts';
import { GROUPS, rankOfGroup, type Stuff } from './stuff.ts';

export const PRINTED_PLIES = [0, 1, 2, 3] as const;

export interface PairQuestion {
  readonly between: readonly [string, string];
  readonly needed: Grade | null;
  readonly required: PairRequired;
  readonly asked: Readonly<Record<Metric, Asked>>;
}

export interface PairPaths {
  readonly worst: FoundPath | null;
  readonly shortest: Record<Metric, (FoundPath | null)[]>;
  readonly failing: readonly FoundPath[];
}

const METRICS: readonly Metric[] = ['creepage', 'clearance'];

export interface PathSearch {
  readonly book: Book;
  readonly design: Design;
  readonly stuffs: readonly Stuff[];
  readonly tools: GradingTools;
  readonly cache: PathCache;
  /** Looks for weak places at either side of every section that falls short, not only for its weakest. */
  readonly bothSides: boolean;
}

/** Sections of a build, each distinct geometry once. */
export function distinctSections(build: Build, book: Book): readonly (Section & { readonly key: string })[] {
  const seen = new Set<string>();
  const sections = sectionsOf(build, { leastThickness: book.leastThickness().value });
  return sections.flatMap((section) => {
    const key = sectionKeyOf(section);
    if (seen.has(key)) return [];
    seen.add(key);
    return [{ ...section, key }];
  });
}

export function pathsOfPair(
  search: PathSearch,
  build: Build,
  sections: readonly (Section & { readonly key: string })[],
  coreTo: string | null,
  question: PairQuestion,
): PairPaths {
  const found: PairPaths & { worst: FoundPath | null; failing: FoundPath[] } = {
    worst: null,
    shortest: { creepage: PRINTED_PLIES.map(() => null), clearance: PRINTED_PLIES.map(() => null) },
    failing: [],
  };
  for (const section of [...sections, null]) {
    let worstHere: FoundPath | null = null;
    for (const metric of METRICS) {
      for (const path of gradedPaths(search, build, section, coreTo, question, metric)) {
        note(found.shortest[metric], path);
        if (isWorse(path, worstHere)) worstHere = path;
      }
    }
    if (worstHere && isWorse(worstHere, found.worst)) found.worst = worstHere;
    if (!worstHere || reaches(worstHere.grade, question.needed)) continue;
    found.failing.push(worstHere);
    if (!search.bothSides || !section) continue;
    for (const window of halvesOf(section)) {
      const there = METRICS.flatMap((metric) => [
        ...gradedPaths(search, build, section, coreTo, question, metric, window),
      ]).reduce<FoundPath | null>((worst, path) => (isWorse(path, worst) ? path : worst), null);
      if (there && !reaches(there.grade, question.needed)) found.failing.push(there);
    }
  }
  return found;
}

/** The two halves of every chamber's width. */
function halvesOf(section: Section): readonly (readonly [Nm, Nm])[] {
  return section.chambers.flatMap(({ x0, x1 }) => {
    const middle = nm(Math.floor((x0 + x1) / 2));
    return [
      [section.frame.x0 < x0 && x0 === 0 ? section.frame.x0 : x0, middle] as const,
      [middle, x1 === section.chambers.at(-1)!.x1 ? section.frame.x1 : x1] as const,
    ];
  });
}

/** Lower on the ladder first, then fewer plies, then shorter. */
export function isWorse(path: FoundPath, than: FoundPath | null): boolean {
  if (!than) return true;
  const height = heightOf(path.grade) - heightOf(than.grade);
  if (height !== 0) return height < 0;
  return path.plies !== than.plies ? path.plies < than.plies : path.length < than.length;
}

function note(shortest: (FoundPath | null)[], path: FoundPath): void {
  for (const k of PRINTED_PLIES) {
    const known = shortest[k];
    if (path.plies > k) continue;
    if (!known || path.length < known.length || (path.length === known.length && path.plies < known.plies)) {
      shortest[k] = path;
    }
  }
}

function* gradedPaths(
  search: PathSearch,
  build: Build,
  section: (Section & { readonly key: string }) | null,
  coreTo: string | null,
  question: PairQuestion,
  metric: Metric,
  window?: readonly [Nm, Nm],
): Generator<FoundPath> {
  const { book, stuffs, cache, tools } = search;
  const asked = question.asked[metric];
  const inside: readonly ChainPiece[] =
    section === null
      ? []
      : cache
          .pieces(
            section,
            section.key,
            {
              metric,
              x: asked.x,
              leastThickness: book.leastThickness().value,
              trackingRank: stuffs.map((stuff) => rankOfGroup(stuff.group)),
              ...(window && { window }),
            },
            build.closedJoint,
          )
          .pieces.map((piece) => ({
            kind: 'inside',
            piece,
            length: piece.length,
            plies: piece.plies,
            rank: piece.rank,
          }));
  const outside = outsidePieces(search.design, metric);
  if (section === null && outside.length === 0) return;
  const tied = tiesOf(search.design, coreTo);
  const links = linksOf([...inside, ...outside], tied);
  const circuits = new Set(search.design.circuits.map((circuit) => circuit.id));
  const floating = new Set([...links.keys()].filter((conductor) => !circuits.has(conductor)));
  const [from, to] = question.between;
  for (const chain of chainsBetween(links, from, to, floating)) {
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

/** Distances that the file states outside the window; one without this metric says nothing of it. */
function outsidePieces(design: Design, metric: Metric): readonly ChainPiece[] {
  return design.outside.flatMap((entry, index): readonly ChainPiece[] => {
    const length = entry[metric]?.value;
    if (length === undefined) return [];
    const group: MaterialGroup = typeof entry.materialGroup === 'string' ? entry.materialGroup : 'IIIb';
    const rank = metric === 'creepage' ? rankOfGroup(group) : 0;
    return [
      {
        kind: 'outside',
        entry: index,
        between: entry.between,
        length,
        plies: 0,
        rank,
        what: entry.what,
        group,
      },
    ];
  });
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

/** What a pair asks along each metric, ready for grading. `withEstimate` raises the test to the high-frequency level. */
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
