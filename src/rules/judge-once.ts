// One judging of a design with its unknowns counted one way: builds filled, sections laid out, every pair graded.

import type { Book } from '#standards/book.ts';
import { isOutOfRange } from '#standards/out-of-range.ts';
import type { Design } from '#model/design.ts';
import { chamberFits } from '#solver/lay-out.ts';
import type { Metric } from '#solver/pieces.ts';
import { gradeOfBridge } from '#stress/bridges.ts';
import { mainsOf, transients } from '#stress/transient.ts';
import { workingVoltages } from '#stress/working-voltage.ts';
import { ESTIMATE_WITHIN, type PairStressResult } from '#stress/pair-stress.ts';
import { voltsPeak, voltsRms } from '#units/quantity.ts';
import type { Choice } from './choice.ts';
import { settled } from './choice.ts';
import {
  askedOf,
  distinctSections,
  isWorse,
  pathsOfPair,
  type PairPaths,
  type PairQuestion,
} from './find-paths.ts';
import { type Filled, fillBuild } from './fill-build.ts';
import { heightOf, lowest, printed, reaches } from './grade.ts';
import type { FoundBridge, FoundPath, Outcome, PairOutcome } from './outcome.ts';
import type { PathCache } from './path-cache.ts';
import { requiredFor } from './required.ts';
import { solidRules } from './solid-grade.ts';

export interface Judging {
  readonly book: Book;
  readonly cache: PathCache;
  /** Every weak place is wanted, not only the weakest. */
  readonly bothSides: boolean;
}

/** `coreTo` overrides the core's bond: undefined leaves it to the file. */
export function judgeOnce(
  judging: Judging,
  design: Design,
  choice: Choice,
  coreTo?: string | null,
): Outcome & { readonly filled: Filled } {
  const now = settled(design, choice.ends);
  const filled = fillBuild(now, judging.book, choice);
  const coreBonds = coreTo === undefined ? filled.coreBonds : [coreTo];
  const first = judgeRoles(judging, now, choice, filled, coreBonds, new Set());
  const demoted = demotedCircuits(now, first.pairs);
  return demoted.size === 0 ? first : judgeRoles(judging, now, choice, filled, coreBonds, demoted);
}

/** Isolated circuits that fall below basic towards the mains: they count as mains everywhere else. */
function demotedCircuits(design: Design, pairs: readonly PairOutcome[]): ReadonlySet<string> {
  const role = (id: string) => design.circuits.find((circuit) => circuit.id === id)?.role;
  return new Set(
    pairs.flatMap(({ between, achieved }) => {
      const roles = between.map(role);
      const isolated = roles.indexOf('isolated');
      return isolated >= 0 && roles.includes('mains') && !reaches(achieved, 'basic')
        ? [between[isolated]!]
        : [];
    }),
  );
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
  const plain = workingVoltages(design);
  const raised = demoted.size === 0 ? plain : workingVoltages(asMains);
  const builds = filled.builds.map((worse) =>
    worse.map((build) => ({ build, sections: distinctSections(build, book) })),
  );
  const tools = { stuffs: filled.stuffs, rules: solidRules(book) };
  const search = {
    book,
    design,
    stuffs: filled.stuffs,
    tools,
    cache: judging.cache,
    bothSides: judging.bothSides,
  };
  const pairs = plain.map((own, i): PairOutcome => {
    const [a, b] = own.between;
    // towards the mains itself a demoted circuit is still asked for basic
    const towardsMains = [a, b].some((id) => design.circuits.find((c) => c.id === id)!.role === 'mains');
    const source = demoted.has(a) || demoted.has(b) ? (towardsMains ? design : asMains) : design;
    const stress = estimated(source === design ? own : raised[i]!, choice);
    const circuitA = source.circuits.find((circuit) => circuit.id === a)!;
    const circuitB = source.circuits.find((circuit) => circuit.id === b)!;
    const grade = book.neededGrade(circuitA.role, circuitB.role);
    const needed = grade.value === 'functional' ? null : grade.value;
    const entering = transients(book, design.supply, circuitA, circuitB);
    const required = requiredFor(book, design, stress, entering, needed);
    const asked = askedOf(required, choice.at === 'worst');
    const question: PairQuestion = { between: own.between, needed, required, asked };
    const paths = bestOf(
      builds.map((worse) =>
        worstOf(
          worse.flatMap(({ build, sections }) =>
            coreBonds.map((core) => pathsOfPair(search, build, sections, core, question)),
          ),
        ),
      ),
    );
    const bridges = bridgesOf(judging, design, choice, question, stress);
    const fromPaths = paths.worst ? paths.worst.grade : 'reinforced';
    const low = bridges.reduce<FoundBridge | null>(
      (worst, one) => (worst === null || heightOf(one.grade) < heightOf(worst.grade) ? one : worst),
      null,
    );
    const byBridge = low !== null && heightOf(low.grade) < heightOf(fromPaths);
    const failing = bridges.filter((one) => one.bridge.unsafe !== null || !reaches(one.grade, needed));
    return {
      between: own.between,
      needed,
      neededBecause: grade.because,
      stress,
      transients: entering,
      required,
      achieved: printed(low ? lowest(fromPaths, low.grade) : fromPaths, needed),
      holding: byBridge ? low : paths.worst,
      shortest: paths.shortest,
      failing: [...failing, ...paths.failing],
    };
  });
  const { build, sections } = builds[0]![0]!;
  const overfull = chamberFits(build).some((fit) => fit.used > fit.available);
  return { design, pairs, sections, build, coreBonds, overfull, filled };
}

/** A computed figure holds within some percent: at worst it is that much higher. */
function estimated(stress: PairStressResult, choice: Choice): PairStressResult {
  if (!stress.estimate) return stress;
  const factor = choice.at === 'worst' ? 1 + ESTIMATE_WITHIN : 1;
  const scaled = (value: number, from: string) => (from === 'computed' ? value * factor : value);
  return {
    ...stress,
    rms: voltsRms(scaled(stress.rms, stress.from.rms)),
    peak: voltsPeak(scaled(stress.peak, stress.from.peak)),
  };
}

function bridgesOf(
  { book }: Judging,
  design: Design,
  choice: Choice,
  question: PairQuestion,
  stress: PairStressResult,
): readonly FoundBridge[] {
  const [a, b] = question.between;
  const creepage = question.required.creepage('IIIb');
  const { clearance } = question.required;
  const figures = [clearance.basic, clearance.reinforced, creepage.basic, creepage.reinforced];
  const values = figures.flatMap((figure) => (isOutOfRange(figure) ? [] : [figure.value]));
  const required =
    values.length === 4
      ? {
          clearance: { basic: values[0]!, reinforced: values[1]! },
          creepage: { basic: values[2]!, reinforced: values[3]! },
        }
      : null;
  return design.bridges.flatMap((bridge, i) => {
    if (!bridge.between.includes(a) || !bridge.between.includes(b)) return [];
    const best = ['safetyClass', 'approval'].some((key) => choice.best.has(`bridges[${i}].${key}`));
    const graded = gradeOfBridge(bridge, {
      book,
      barrier: question.needed !== null,
      rms: stress.rms,
      mains: mainsOf(design.supply).value,
      category: design.supply.overvoltageCategory,
      required,
      at: choice.at === 'best' || best ? 'best' : 'worst',
    });
    return [{ kind: 'bridge', grade: graded.grade, bridge: graded }];
  });
}

/** Alternatives that an unknown leaves open: the worse counts. */
function worstOf(all: readonly PairPaths[]): PairPaths {
  return all.reduce((a, b) => ({
    worst: b.worst && isWorse(b.worst, a.worst) ? b.worst : a.worst,
    shortest: { creepage: shorter(a, b, 'creepage'), clearance: shorter(a, b, 'clearance') },
    failing: [...a.failing, ...b.failing],
  }));
}

const shorter = (a: PairPaths, b: PairPaths, metric: Metric): (FoundPath | null)[] =>
  a.shortest[metric].map((mine, k) => {
    const other = b.shortest[metric][k] ?? null;
    return other && (!mine || other.length < mine.length) ? other : mine;
  });

/** Choices of place at best: the better counts. */
function bestOf(all: readonly PairPaths[]): PairPaths {
  return all.reduce((a, b) => {
    if (!a.worst) return a;
    return !b.worst || isWorse(a.worst, b.worst) ? b : a;
  });
}
