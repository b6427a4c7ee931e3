// One judging of a design with its unknowns counted one way: builds filled, sections laid out, every pair graded.

import { because, type Because } from '#standards/because.ts';
import type { Book } from '#books/questions/book.ts';
import { isOutOfRange } from '#standards/tables/out-of-range.ts';
import type { Design, Role } from '#model/design.ts';
import type { Grade } from '#standards/grade.ts';
import { chamberFits } from '#solver/placing/lay-out.ts';
import type { ChamberFit } from '#solver/section/section.ts';
import type { BridgeQuestion, OpenKey } from '#books/shared/parts/bridge-grade.ts';
import type { Required, Transients } from '#books/questions/required.ts';
import { mainsOf } from '#books/shared/mains.ts';
import type { OpenVoltage, PairStressResult } from '#stress/pair/pair-stress.ts';
import {
  countedStress,
  type CountedStress,
  stressAtPlace,
  voltagesAs,
} from '#judge/assume/counted-stress.ts';
import type { Choice } from '#judge/assume/assumption.ts';
import { isBest, settled } from '#judge/assume/assumption.ts';
import { bridgeField } from '#judge/conductors/open-bridges.ts';
import { type AskedAtPlaces, askedOf, type PairQuestion, withPlaces } from '#judge/grade/path-requirement.ts';
import { type Filled, fillBuild } from '#judge/fill/fill-build.ts';
import { heightOf, reaches } from '#standards/ladder.ts';
import { lowest, printed } from '#judge/grade/grade.ts';
import { placeOf, sectionsFor, siteOf } from '#judge/paths/graded-paths.ts';
import type { FoundBridge, FoundPath, Outcome, PairOutcome } from '#judge/paths/case-result.ts';
import type { PathCache } from '#judge/paths/path-cache.ts';
import { meansOf } from '#judge/grade/means.ts';
import { requiredFor } from '#judge/grade/required.ts';
import { strongSolids } from '#judge/grade/strong-solids.ts';
import { searchPlan } from '#judge/grade/search-plan.ts';
import { noPaths, shorterOf, shortestOfPairs } from '#judge/paths/shortest-paths.ts';
import { solidRules } from '#judge/grade/solid-rules.ts';
import { isWorse, type PairPaths, pathsOfPair } from '#judge/paths/weakest-path.ts';

export interface Judging {
  readonly book: Book;
  readonly cache: PathCache;
  /** Shortest paths by plies and every weak place are wanted, not only the grades. */
  readonly printed: boolean;
  /** Every weak place is wanted; left out: where paths are printed. */
  readonly places?: boolean;
  /** Only whether each pair reaches what is needed. */
  readonly reachOnly: boolean;
  /** Places of the pairs that are asked for, in their order; left out: all. */
  readonly only?: readonly number[];
}

/** `coreTo` overrides the core's bond: undefined leaves it to the file. */
export function judgeOnce(
  judging: Judging,
  design: Design,
  choice: Choice,
  coreTo?: string | null,
): Outcome & { readonly filled: Filled } {
  const stated = settled(design, choice.ends);
  const filled = fillBuild(stated, judging.book, choice);
  const { pollutionDegree } = filled;
  const now: Design = { ...stated, surroundings: { ...stated.surroundings, pollutionDegree } };
  const coreBonds = coreTo === undefined ? filled.coreBonds : [coreTo];
  let demoted: ReadonlySet<string> = new Set();
  for (;;) {
    const outcome = judgeRoles(judging, now, choice, filled, coreBonds, demoted);
    const further = demotedCircuits(now, outcome.pairs, demoted);
    if (further.size === demoted.size) {
      const pairs = withoutBehindReinforced(now, outcome.pairs);
      return { ...outcome, pairs: askedFor(judging, now, pairs) };
    }
    demoted = further;
  }
}

/**
 * An isolated circuit that is reinforced towards every mains circuit needs no second barrier: nothing is asked between it
 * and what may be touched.
 */
function withoutBehindReinforced(
  { circuits }: Design,
  pairs: readonly PairOutcome[],
): readonly PairOutcome[] {
  const idsOf = (role: Role) => circuits.filter((one) => one.role === role).map(({ id }) => id);
  const [mains, touchable] = [idsOf('mains'), idsOf('touchable')];
  const isBehind = (id: string) =>
    mains.length > 0 &&
    mains.every((one) =>
      pairs.some(
        ({ between, achieved }) =>
          between.includes(id) && between.includes(one) && reaches(achieved, 'reinforced'),
      ),
    );
  const behind = idsOf('isolated').filter(isBehind);
  return pairs.map((pair) => {
    const own = pair.between.find((id) => behind.includes(id));
    if (own === undefined || !pair.between.some((id) => touchable.includes(id))) return pair;
    const why = because('behind-reinforced', { circuit: own }, [], [pair.neededBecause]);
    return { ...pair, needed: null, neededBecause: why, failing: [] };
  });
}

/** An isolated circuit may count as mains by what is between two others: then all pairs are judged. */
const isEveryPairJudged = ({ only }: Judging, { circuits }: Design): boolean =>
  only === undefined || circuits.some(({ role }) => role === 'isolated');

const askedFor = (judging: Judging, design: Design, pairs: readonly PairOutcome[]): readonly PairOutcome[] =>
  judging.only !== undefined && isEveryPairJudged(judging, design)
    ? judging.only.map((i) => pairs[i]!)
    : pairs;

/**
 * Isolated circuits that fall below basic towards the mains, or towards one that did so before: they count as mains
 * everywhere else.
 */
function demotedCircuits(
  design: Design,
  pairs: readonly PairOutcome[],
  before: ReadonlySet<string>,
): ReadonlySet<string> {
  const role = (id: string) =>
    before.has(id) ? 'mains' : design.circuits.find((circuit) => circuit.id === id)?.role;
  const demoted = pairs.flatMap(({ between, achieved }) => {
    const roles = between.map(role);
    const isolated = roles.indexOf('isolated');
    return isolated >= 0 && roles.includes('mains') && !reaches(achieved, 'basic')
      ? [between[isolated]!]
      : [];
  });
  return new Set([...before, ...demoted]);
}

function judgeRoles(
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
  const plan = searchPlan(questions, filled.stuffs, rules);
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
    everyPlace: judging.places ?? judging.printed,
    reachOnly: judging.reachOnly,
  };
  const places = filled.builds.map((worse) =>
    worse.map((build) => placeOf(design, filled.outside, build, judging.cache, strength)),
  );
  const bonds = filled.bestBond ? coreBonds.map((core) => [core]) : [coreBonds];
  const sites = places.flatMap((worse) =>
    bonds.map((all) => worse.flatMap((place) => all.map((core) => siteOf(search, place, core)))),
  );
  const shortest = judging.printed
    ? sites[0]!
        .map((site) => shortestOfPairs(site, questions))
        .reduce((a, b) => a.map((one, i) => shorterOf(one, b[i]!)))
    : questions.map(noPaths);
  const pairs = asked.map(({ question, neededBecause, stress, entering, required }, i): PairOutcome => {
    const { needed } = question;
    const paths = bestOf(sites.map((worse) => worstOf(worse.map((site) => pathsOfPair(site, question)))));
    const printedPaths = [...shortest[i]!.creepage, ...shortest[i]!.clearance];
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
      shortest: shortest[i]!,
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

interface AskedPair {
  readonly question: PairQuestion;
  readonly neededBecause: Because;
  readonly stress: CountedStress;
  readonly entering: Transients;
  readonly required: Required;
}

/** What one pair asks; a demoted circuit counts as mains, but towards the mains itself basic is still asked of it. */
function askPair(
  book: Book,
  design: Design,
  asMains: Design,
  demoted: ReadonlySet<string>,
  choice: Choice,
  own: PairStressResult,
  raised: PairStressResult,
): AskedPair {
  const [a, b] = own.between;
  const roleOf = (from: Design, id: string) => from.circuits.find((circuit) => circuit.id === id)!;
  const towardsMains = [a, b].some((id) => roleOf(design, id).role === 'mains');
  const source = (demoted.has(a) || demoted.has(b)) && !towardsMains ? asMains : design;
  const stress = countedStress(book, source === design ? own : raised, choice);
  const [circuitA, circuitB] = [roleOf(source, a), roleOf(source, b)];
  const grade = book.neededGrade(circuitA.role, circuitB.role);
  const needed = grade.value === 'functional' ? null : grade.value;
  const entering = book.transients(design.supply, circuitA, circuitB);
  const means = meansOf(design, choice, own.between);
  const required = requiredFor(book, design, stress, entering, needed, means);
  const { places, open } = askedAtPlaces(book, source, choice, stress, entering, needed);
  const asked = withPlaces(askedOf(required, choice.at === 'worst'), places);
  const question = { between: own.between, needed, required, asked, places };
  const found = { ...stress, open: [...stress.open, ...open] };
  return { question, neededBecause: grade.because, stress: found, entering, required };
}

/** What is asked of one pair where the file gives a voltage of its own: at distances outside, and at bridging parts. */
function askedAtPlaces(
  book: Book,
  design: Design,
  choice: Choice,
  stress: CountedStress,
  entering: Transients,
  needed: PairQuestion['needed'],
): { readonly places: AskedAtPlaces; readonly open: CountedStress['open'] } {
  const open: OpenVoltage[] = [];
  const at = (list: 'outside' | 'bridges') =>
    design[list].map(({ between, working }, i) => {
      const concerns = list === 'outside' || between.every((id) => stress.between.includes(id));
      if (working === null || needed === null || !concerns) return null;
      const here = stressAtPlace(design, stress, working, `${list}[${i}].working`, choice);
      open.push(...here.open);
      const means = meansOf(design, choice, stress.between);
      const required = requiredFor(book, design, here, entering, needed, means);
      return { rms: here.rms, required, asked: askedOf(required, choice.at === 'worst') };
    });
  return { places: { outside: at('outside'), bridges: at('bridges') }, open };
}

export function bridgesOf(
  { book }: Pick<Judging, 'book'>,
  design: Design,
  choice: Choice,
  question: Pick<PairQuestion, 'between' | 'needed' | 'required' | 'places'>,
  stress: PairStressResult,
): readonly FoundBridge[] {
  const [a, b] = question.between;
  return design.bridges.flatMap((bridge, i) => {
    if (!bridge.between.includes(a) || !bridge.between.includes(b)) return [];
    const { rms, required } = question.places.bridges[i] ?? { rms: stress.rms, required: question.required };
    const isBestAt = (key: OpenKey): boolean => isBest(choice, bridgeField(i, key));
    const graded = book.part(bridge, {
      barrier: question.needed !== null,
      means: meansOf(design, choice, question.between),
      rms,
      mains: mainsOf(design.supply).value,
      category: design.supply.overvoltageCategory,
      required: bridgeReach(required),
      isBest: isBestAt,
    });
    return [{ kind: 'bridge', grade: graded.grade, bridge: graded }];
  });
}

/** Null where the book has no figure. */
function bridgeReach({ clearance, creepage: byGroup }: Required): BridgeQuestion['required'] {
  const creepage = byGroup('IIIb');
  const figures = [clearance.basic, clearance.reinforced, creepage.basic, creepage.reinforced];
  const values = figures.flatMap((figure) => (isOutOfRange(figure) ? [] : [figure.value]));
  if (values.length < 4) return null;
  return {
    clearance: { basic: values[0]!, reinforced: values[1]! },
    creepage: { basic: values[2]!, reinforced: values[3]! },
  };
}

/** Alternatives that an unknown leaves open: the worse counts. */
const worstOf = (all: readonly PairPaths[]): PairPaths =>
  all.reduce((a, b) => ({
    worst: isWorse(b.worst, a.worst) ? b.worst : a.worst,
    failing: [...a.failing, ...b.failing],
  }));

/** Choices of place at best: the better counts; no weak path at all is best. */
const bestOf = (all: readonly PairPaths[]): PairPaths =>
  all.reduce((a, b) => (isWorse(a.worst, b.worst) ? b : a));
