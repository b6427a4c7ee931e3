// What is found of one pair over every choice of place: its weakest path, the parts that bridge it, and what holds it.

import type { Choice } from '#judge/assume/assumption.ts';
import { lowest, printed } from '#judge/grade/grade.ts';
import type { PairQuestion } from '#judge/grade/path-requirement.ts';
import { strongSolids } from '#judge/grade/strong-solids.ts';
import type { FoundBridge, FoundPath, PairOutcome } from '#judge/paths/case-result.ts';
import type { Site } from '#judge/paths/graded-paths.ts';
import type { Shortest } from '#judge/paths/shortest-paths.ts';
import { type PairPaths, isWorse, pathsOfPair } from '#judge/paths/weakest-path.ts';
import type { Design } from '#model/design.ts';
import { heightOf, reaches } from '#standards/ladder.ts';
import type { Grade } from '#units/terms.ts';
import type { AskedPair } from './asked-pair.ts';
import type { Judging } from './judging.ts';
import { bridgesOf } from './pair-bridges.ts';

interface Asking {
  readonly judging: Judging;
  readonly design: Design;
  readonly choice: Choice;
  /** Nothing is asked but whether the pair reaches what it needs. */
  readonly isReachEnough: boolean;
}

/** `sites`: by choice of place, at least one; `shortestIn`: the paths to print of the pair, by choice. */
export function pairOutcome(
  { judging, design, choice, isReachEnough }: Asking,
  sites: readonly (readonly Site[])[],
  { question, neededBecause, stress, entering, required }: AskedPair,
  shortestIn: (choice: number) => Shortest,
): PairOutcome {
  const { between, needed, places } = question;
  const { paths, of } = pathsOver(sites, question, isReachEnough);
  // printed of the choice that counts: another's ways say nothing of it
  const shortest = shortestIn(of);
  const printedPaths = [...shortest.creepage, ...shortest.clearance];
  // a pair that holds by length alone is still shown with its weakest path
  const worst = printedPaths.reduce((a, b) => (isWorse(b, a) ? b : a), paths.worst);
  const bridges = bridgesOf(judging, design, choice, question, stress);
  const fromPaths = worst ? worst.grade : 'reinforced';
  const low = lowestBridge(bridges);
  const byBridge = low !== null && heightOf(low.grade) < heightOf(fromPaths);
  const failing = bridges.filter((one) => one.bridge.unsafe !== null || !reaches(one.grade, needed));
  const { plan } = sites[of]![0]!.search;
  return {
    between,
    needed,
    neededBecause,
    stress,
    transients: entering,
    required,
    places,
    achieved: printed(low ? lowest(fromPaths, low.grade) : fromPaths, needed),
    strong: () => strongSolids(design, plan, between),
    holding: byBridge ? low : worst,
    shortest,
    failing: [...failing, ...paths.failing, ...besideThem(printedPaths, needed, paths.failing)],
  };
}

const lowestBridge = (bridges: readonly FoundBridge[]): FoundBridge | null =>
  bridges.reduce<FoundBridge | null>(
    (low, one) => (low === null || heightOf(one.grade) < heightOf(low.grade) ? one : low),
    null,
  );

/** Of all choices of place the best, with its number among them. */
function pathsOver(
  sites: readonly (readonly Site[])[],
  question: PairQuestion,
  isReachEnough: boolean,
): { readonly paths: PairPaths; readonly of: number } {
  const falls = ({ worst }: PairPaths) => worst !== null && !reaches(worst.grade, question.needed);
  const choices = upTo(
    sites.map((worse) => () => {
      const each = worse.map((site) => () => pathsOfPair(site, question));
      return worstOf(upTo(each, isReachEnough ? falls : undefined));
    }),
    isReachEnough ? (paths) => !falls(paths) : undefined,
  );
  const paths = bestOf(choices);
  return { paths, of: choices.indexOf(paths) };
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

/** Alternatives that an unknown leaves open: the worse counts. */
const worstOf = (all: readonly PairPaths[]): PairPaths =>
  all.reduce((a, b) => ({
    worst: isWorse(b.worst, a.worst) ? b.worst : a.worst,
    failing: [...a.failing, ...b.failing],
  }));

/** Choices of place at best: the better counts; no weak path at all is best. */
const bestOf = (all: readonly PairPaths[]): PairPaths =>
  all.reduce((a, b) => (isWorse(a.worst, b.worst) ? b : a));

/** Made one after the other, up to the first that is enough. */
function upTo<T>(make: readonly (() => T)[], isEnough: (made: T) => boolean = () => false): readonly T[] {
  const made: T[] = [];
  for (const one of make) {
    made.push(one());
    if (isEnough(made.at(-1)!)) break;
  }
  return made;
}
