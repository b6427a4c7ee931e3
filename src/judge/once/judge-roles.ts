// Every pair of a filled build graded, with the roles of its circuits as they count now.

import type { Choice } from '#judge/assume/assumption.ts';
import type { Filled } from '#judge/fill/fill-build.ts';
import type { PairQuestion } from '#judge/grade/path-requirement.ts';
import type { Outcome } from '#judge/paths/case-result.ts';
import {
  type Place,
  placeOf,
  type PathSearch,
  sectionsFor,
  type Site,
  siteOf,
} from '#judge/paths/graded-paths.ts';
import type { Design } from '#model/design.ts';
import { chamberFits } from '#solver/placing/chamber-fits.ts';
import type { ChamberFit, Section } from '#solver/section/section.ts';
import { type Judging, isEveryPairJudged, isEveryPlace } from './judging.ts';
import { pairOutcome } from './pair-outcome.ts';
import { printedPaths } from './printed-paths.ts';

export function judgeRoles(
  judging: Judging,
  design: Design,
  choice: Choice,
  filled: Filled,
  coreBonds: readonly (string | null)[],
  demoted: ReadonlySet<string>,
): Outcome & { readonly filled: Filled } {
  const only = isEveryPairJudged(judging, design) ? null : judging.only!;
  const asked = judging.asked.of(design, choice, demoted, only);
  const questions = asked.map(({ question }) => question);
  const search = searchFor(judging, design, choice, filled, questions);
  const sites = sitesOf(search, filled, coreBonds);
  const shortestIn = printedPaths(judging, sites, questions);
  // an isolated circuit may count as mains by how far it falls short
  const isReachEnough = judging.reachOnly && design.circuits.every(({ role }) => role !== 'isolated');
  const pairs = asked.map((each, i) =>
    pairOutcome({ judging, design, choice, isReachEnough }, sites, each, (of) => shortestIn(of)[i]!),
  );
  const [drawn] = sites[0]!;
  const sections = judging.printed ? sectionsOf(drawn!, questions) : [];
  const { build } = drawn!.place;
  const overfull = chamberFits(build).some(doesNotFit);
  return { design, pairs, sections, build, coreBonds, overfull, filled };
}

function searchFor(
  judging: Judging,
  design: Design,
  choice: Choice,
  { stuffs }: Filled,
  questions: readonly PairQuestion[],
): PathSearch {
  const plan = judging.plans.of(questions, stuffs);
  return {
    solidOptions: plan.solidOptions,
    design,
    tools: { stuffs: plan.stuffs, rules: judging.rules },
    plan,
    cache: judging.cache,
    counted: countedAs(choice),
    everyPlace: isEveryPlace(judging),
    reachOnly: judging.reachOnly,
  };
}

/** By choice of place, of which the best counts: every place and bond of the core, of which the worst does. */
function sitesOf(
  search: PathSearch,
  { builds, outside, bestBond }: Filled,
  coreBonds: readonly (string | null)[],
): readonly (readonly Site[])[] {
  const { design, cache, solidOptions } = search;
  const places = builds.map((worse) =>
    worse.map((build) => placeOf(design, outside, build, cache, solidOptions)),
  );
  const bonds = bestBond ? coreBonds.map((core) => [core]) : [coreBonds];
  return places.flatMap((worse) =>
    bonds.map((all) => worse.flatMap((place) => boundSites(search, place, all))),
  );
}

/** The floating core first, as far as it is one of them. */
function boundSites(search: PathSearch, place: Place, bonds: readonly (string | null)[]): readonly Site[] {
  const [first, ...others] = bonds;
  const floating = siteOf(search, place, first ?? null);
  return [floating, ...others.map((core) => siteOf(search, place, core, first === null ? floating : null))];
}

function sectionsOf(site: Site, questions: readonly PairQuestion[]): readonly Section[] {
  const looked = questions.flatMap((question) => [...sectionsFor(site, question)]);
  return [...new Set(looked)].filter((section) => section !== null);
}

/** What a section is called after beside the one that is drawn. */
function countedAs({ at, turned }: Choice): string {
  const others = 'other circuits at their other end';
  if (at === 'best') return turned.size > 0 ? `unknowns at their best, ${others}` : 'unknowns at their best';
  return turned.size > 0 ? others : '';
}

/** Too high for the former, or a turn too wide for its place. */
const doesNotFit = ({ used, available, layers }: ChamberFit): boolean =>
  used > available || layers.some(({ tooWide }) => tooWide);
