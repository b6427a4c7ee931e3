// The weakest path of a pair over the sections of one build: the lowest grade over all of them.

import type { Section } from '#solver/section/section.ts';
import type { Metric } from '#units/terms.ts';
import { nm, type Nm } from '#units/quantity.ts';
import type { PairQuestion } from '#judge/grade/path-requirement.ts';
import type { ChainPiece } from '#judge/grade/chain.ts';
import { heightOf, reaches } from '#standards/ladder.ts';
import { holdsBound } from './bound-core.ts';
import { gradedPath, METRICS, pathsFrom, sectionsFor, type Site, type WorstThere } from './graded-paths.ts';
import { isBareContact } from './bare-metal.ts';
import type { FoundPath } from './case-result.ts';
import type { KeyedLimits } from './path-cache.ts';
import type { KeyedSection } from '#judge/paths/keyed/section-list.ts';
import { type GradingTools, seriesWeights } from '#judge/grade/path-grade.ts';

export interface PairPaths {
  /** The weakest that is not reinforced by its length alone; null: none. */
  readonly worst: FoundPath | null;
  readonly failing: readonly FoundPath[];
}

/** Everything about one pair in the sections of one build. */
export function pathsOfPair(site: Site, question: PairQuestion): PairPaths {
  const { search } = site;
  const found = { worst: null as FoundPath | null, failing: [] as FoundPath[] };
  const whole = limitsOf(site, question, null);
  for (const section of sectionsFor(site, question)) {
    const worstHere = worstOfWhole(site, section, question, whole);
    if (isWorse(worstHere, found.worst)) found.worst = worstHere;
    if (!worstHere || reaches(worstHere.grade, question.needed)) continue;
    found.failing.push(worstHere);
    if (search.reachOnly) break;
    if (section) search.cache.noteShort(question.between, section);
    // a path of no length is everywhere, not at one side; leads are looked at as they are laid, not slumped as well
    if (!search.everyPlace || !section || worstHere.length === 0) continue;
    if (section.kind === 'lead' && section.slumped !== null) continue;
    for (const window of halvesOf(section)) {
      // the weakest of all is the weakest there, too
      if (liesWithin(worstHere, window)) continue;
      const there = worstPath(site, section, question, limitsOf(site, question, window));
      if (there && !reaches(there.grade, question.needed)) found.failing.push(there);
    }
  }
  return found;
}

type Limits = Readonly<Record<Metric, KeyedLimits>>;

function limitsOf({ search }: Site, { asked }: PairQuestion, window: KeyedLimits['window']): Limits {
  const { longest, farEnds } = search.plan;
  const along = (metric: Metric): KeyedLimits => ({
    metric,
    x: asked[metric].x,
    length: [longest[metric]],
    window,
    farEnds,
    sightsUpTo: longest.clearance,
  });
  return { creepage: along('creepage'), clearance: along('clearance') };
}

/** As found with the core floating, where binding it changes nothing of that. */
function worstOfWhole(
  site: Site,
  section: KeyedSection | null,
  question: PairQuestion,
  limits: Limits,
): FoundPath | null {
  const { worst } = site.place;
  const known = site.floating && worst.get(question)?.get(section);
  if (known && known.site === site.floating && holdsBound(site, question, known.path)) return known.path;
  const path = worstPath(site, section, question, limits);
  if (site.coreTo !== null) return path;
  const ofPair = worst.get(question) ?? new Map<KeyedSection | null, WorstThere>();
  worst.set(question, ofPair.set(section, { site, path }));
  return path;
}

/** The weakest path of a section among those that are not reinforced by their length alone. */
function worstPath(
  site: Site,
  section: KeyedSection | null,
  question: PairQuestion,
  limits: Limits,
): FoundPath | null {
  // where nothing is asked the printed paths tell enough
  if (question.needed === null) return null;
  const { tools, plan } = site.search;
  let worst: FoundPath | null = null;
  for (const metric of METRICS) {
    const weigh = (piece: ChainPiece): readonly number[] => [
      isBareContact(section, piece) ? 0 : 1,
      worthyPlies(piece, tools),
      ...seriesWeights(piece, question.asked[metric], tools),
    ];
    const from = { section, question, metric, counting: plan.grading, limits: limits[metric], weigh };
    for (const chain of pathsFrom(site, from)) {
      const path = gradedPath(site, from, chain);
      if (isWorse(path, worst)) worst = path;
    }
  }
  return worst;
}

/** The two halves of every chamber's width, with what lies outside the outermost. */
function halvesOf({ chambers, frame }: Section): readonly (readonly [Nm, Nm])[] {
  return chambers.flatMap(({ x0, x1 }, i) => {
    const middle = nm(Math.floor((x0 + x1) / 2));
    const from = i === 0 ? frame.x0 : x0;
    const to = i === chambers.length - 1 ? frame.x1 : x1;
    return [[from, middle] as const, [middle, to] as const];
  });
}

function liesWithin({ chain }: FoundPath, [from, to]: readonly [Nm, Nm]): boolean {
  const isThere = ([x]: readonly [Nm, Nm]): boolean => x >= from && x <= to;
  return chain.pieces.every(
    (step) =>
      step.kind === 'outside' ||
      (isThere(step.piece.from) &&
        isThere(step.piece.to) &&
        step.piece.trace().every((leg) => isThere(leg.from) && isThere(leg.to))),
  );
}

/** Lower on the ladder first, then fewer plies that are worth anything, then a smaller part of what would do. */
export function isWorse(path: FoundPath | null, than: FoundPath | null): boolean {
  if (!path || !than) return path !== null;
  const height = heightOf(path.grade) - heightOf(than.grade);
  if (height !== 0) return height < 0;
  const plies = worthyPliesOf(path) - worthyPliesOf(than);
  return plies !== 0 ? plies < 0 : shareOf(path) < shareOf(than);
}

function worthyPlies(step: ChainPiece, { stuffs }: GradingTools): number {
  if (step.kind === 'outside') return 0;
  let plies = 0;
  for (const { stuff, count } of step.piece.punctured) {
    const { strength, layers } = stuffs.get(stuff)!;
    if (strength !== null || layers !== null) plies += count;
  }
  return plies;
}

const worthyPliesOf = ({ chain, tools }: FoundPath): number =>
  chain.pieces.reduce((sum, piece) => sum + worthyPlies(piece, tools), 0);

const shareOf = ({ length, asked, rank }: FoundPath): number =>
  length / (asked.distance(rank).reinforced ?? Infinity);
