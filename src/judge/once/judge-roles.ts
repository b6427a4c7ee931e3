// Every pair of a filled build graded, with the roles of its circuits as they count now.

import type { Choice } from '#judge/assume/assumption.ts';
import { voltagesAs } from '#judge/assume/counted-stress.ts';
import type { Filled } from '#judge/fill/fill-build.ts';
import { lowest, printed } from '#judge/grade/grade.ts';
import { searchPlan } from '#judge/grade/search-plan.ts';
import { solidRules } from '#judge/grade/solid-rules.ts';
import { strongSolids } from '#judge/grade/strong-solids.ts';
import type { FoundBridge, FoundPath, Outcome, PairOutcome } from '#judge/paths/case-result.ts';
import { placeOf, sectionsFor, siteOf } from '#judge/paths/graded-paths.ts';
import { noPaths, type Shortest, shortestOfPairs } from '#judge/paths/shortest-paths.ts';
import { type PairPaths, isWorse, pathsOfPair } from '#judge/paths/weakest-path.ts';
import type { Design } from '#model/design.ts';
import { chamberFits } from '#solver/placing/chamber-fits.ts';
import type { ChamberFit } from '#solver/section/section.ts';
import { heightOf, reaches } from '#standards/ladder.ts';
import type { Grade } from '#units/terms.ts';
import { askPair } from './asked-pair.ts';
import { type Judging, isEveryPairJudged, isEveryPlace } from './judging.ts';
import { bridgesOf } from './pair-bridges.ts';

export function judgeRoles(
  judging: Judging,
  design: Design,
  choice: Choice,
  filled: Filled,
  coreBonds: readonly (string | null)[],
  demoted: ReadonlySet<string>,
): Outcome & { readonly filled: Filled } {
  const { book } = judging;
  const asMains: Design = {
    ...design,
    circuits: design.circuits.map((circuit) =>
      demoted.has(circuit.id) ? { ...circuit, role: 'mains' } : circuit,
    ),
  };
  const plain = voltagesAs(design, choice);
  const raised = demoted.size === 0 ? plain : voltagesAs(asMains, choice);
  const least = book.leastThickness().value;
  const all = plain.map((_, i) => i);
  const asked = (isEveryPairJudged(judging, design) ? all : judging.only!).map((i) =>
    askPair(book, design, asMains, demoted, choice, plain[i]!, raised[i]!),
  );
  const questions = asked.map(({ question }) => question);
  const rules = solidRules(book);
  const plan = searchPlan(questions, filled.stuffs, rules, judging.cache.stuffs);
  const strength = {
    leastThickness: least,
    trackingRank: plan.trackingRank,
    runs: plan.runs,
    closedFrom: plan.closedFrom,
  };
  const search = {
    solidOptions: strength,
    design,
    tools: { stuffs: plan.stuffs, rules },
    plan,
    cache: judging.cache,
    counted: countedAs(choice),
    everyPlace: isEveryPlace(judging),
    reachOnly: judging.reachOnly,
  };
  const places = filled.builds.map((worse) =>
    worse.map((build) => placeOf(design, filled.outside, build, judging.cache, strength)),
  );
  const bonds = filled.bestBond ? coreBonds.map((core) => [core]) : [coreBonds];
  const sites = places.flatMap((worse) =>
    bonds.map((all) => worse.flatMap((place) => all.map((core) => siteOf(search, place, core)))),
  );
  const shortestIn = memoized((choice: number) =>
    judging.printed
      ? sites[choice]!.reduce<readonly Shortest[]>(
          (known, site) => shortestOfPairs(site, questions, known),
          questions.map(noPaths),
        )
      : questions.map(noPaths),
  );
  // first where there is no choice: sight lines longer than any that grading wants are then collected once for both
  if (judging.printed && sites.length === 1) shortestIn(0);
  // an isolated circuit may count as mains by how far it falls short
  const isReachEnough = judging.reachOnly && design.circuits.every(({ role }) => role !== 'isolated');
  const pairs = asked.map(({ question, neededBecause, stress, entering, required }, i): PairOutcome => {
    const { needed } = question;
    const falls = ({ worst }: PairPaths) => worst !== null && !reaches(worst.grade, needed);
    const choices = upTo(
      sites.map((worse) => () => {
        const each = worse.map((site) => () => pathsOfPair(site, question));
        return worstOf(upTo(each, isReachEnough ? falls : undefined));
      }),
      isReachEnough ? (paths) => !falls(paths) : undefined,
    );
    const paths = bestOf(choices);
    // printed of the choice that counts: another's ways say nothing of it
    const shortest = shortestIn(choices.indexOf(paths))[i]!;
    const printedPaths = [...shortest.creepage, ...shortest.clearance];
    // a pair that holds by length alone is still shown with its weakest path
    const worst = printedPaths.reduce((a, b) => (isWorse(b, a) ? b : a), paths.worst);
    const bridges = bridgesOf(judging, design, choice, question, stress);
    const fromPaths = worst ? worst.grade : 'reinforced';
    const low = bridges.reduce<FoundBridge | null>(
      (worst, one) => (worst === null || heightOf(one.grade) < heightOf(worst.grade) ? one : worst),
      null,
    );
    const byBridge = low !== null && heightOf(low.grade) < heightOf(fromPaths);
    const holding = byBridge ? low : worst;
    const failing = bridges.filter((one) => one.bridge.unsafe !== null || !reaches(one.grade, needed));
    return {
      between: question.between,
      needed,
      neededBecause,
      stress,
      transients: entering,
      required,
      places: question.places,
      achieved: printed(low ? lowest(fromPaths, low.grade) : fromPaths, needed),
      strong: () => strongSolids(design, plan, question.between),
      holding,
      shortest,
      failing: [...failing, ...paths.failing, ...besideThem(printedPaths, needed, paths.failing)],
    };
  });
  const { build } = places[0]![0]!;
  const looked = judging.printed
    ? questions.flatMap((question) => [...sectionsFor(sites[0]![0]!, question)])
    : [];
  const sections = [...new Set(looked)].filter((section) => section !== null);
  const overfull = chamberFits(build).some(doesNotFit);
  return { design, pairs, sections, build, coreBonds, overfull, filled };
}

/**
 * Of ways straight through solids and of ways through none, what is not enough beside what was found: a way of the other kind
 * may be worse, and mending that one does not mend these.
 */
function besideThem(
  paths: readonly (FoundPath | null)[],
  needed: Grade | null,
  known: readonly FoundPath[],
): readonly FoundPath[] {
  const isStraight = ({ plies, length }: FoundPath) => plies > 0 && length === 0;
  const isRound = ({ plies }: FoundPath) => plies === 0;
  return [isStraight, isRound].flatMap((isOf) => {
    const found = paths.find((path) => path !== null && isOf(path) && !reaches(path.grade, needed));
    return found && !known.some(isOf) ? [found] : [];
  });
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

/** Alternatives that an unknown leaves open: the worse counts. */
const worstOf = (all: readonly PairPaths[]): PairPaths =>
  all.reduce((a, b) => ({
    worst: isWorse(b.worst, a.worst) ? b.worst : a.worst,
    failing: [...a.failing, ...b.failing],
  }));

/** Made one after the other, up to the first that is enough. */
function upTo<T>(make: readonly (() => T)[], isEnough: (made: T) => boolean = () => false): readonly T[] {
  const made: T[] = [];
  for (const one of make) {
    made.push(one());
    if (isEnough(made.at(-1)!)) break;
  }
  return made;
}

function memoized<T>(make: (key: number) => T): (key: number) => T {
  const known = new Map<number, T>();
  return (key) => {
    const value = known.get(key) ?? make(key);
    known.set(key, value);
    return value;
  };
}

/** Choices of place at best: the better counts; no weak path at all is best. */
const bestOf = (all: readonly PairPaths[]): PairPaths =>
  all.reduce((a, b) => (isWorse(a.worst, b.worst) ? b : a));
