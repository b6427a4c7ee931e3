// Everything that one design says of stress, as one object: what `stress --json` prints (format layerwright-stress/1)
// and what the words, the page and the plot are made from. Volts, hertz, amperes, farads, degrees; lengths in mm.

import type { Design } from '#model/design.ts';
import type { Judgement } from '#judge/judging/judge.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import type { PairVerdict } from '#judge/verdict/pair.ts';
import type { JudgedAt, JudgedBridge, JudgedOutside } from '#judge/cases/judged-parts.ts';
import type { Book } from '#books/questions/book.ts';
import { bookOf } from '#books/book-of.ts';
import type { PairStressResult } from '#stress/pair/pair-stress.ts';
import { runningConverter } from '#stress/converter/computed-stress.ts';
import { weakestBreakdown } from '#stress/breakdown/expected-breakdown.ts';
import { heatOf, type Heat } from '#stress/heat/heat.ts';
import { leakageOf, type Leakage } from '#stress/current/leakage.ts';
import { localStresses, type LocalStress } from '#stress/turns/local-stress.ts';
import { placedLayers, type PlacedLayer } from '#stress/turns/placed-layers.ts';
import { weakestEnamel, weakestPly } from '#stress/breakdown/rated-breakdown.ts';
import { outcomeOf, testPlan, type TestPlan } from '#stress/breakdown/test-plan.ts';
import type { Transients } from '#books/questions/required.ts';
import { windingCapacitances, type LayersCapacitance } from '#stress/current/winding-capacitance.ts';
import { workingVoltages } from '#stress/voltages/working-voltage.ts';
import { metres, mm, voltsPeak, type VoltsPeak, type VoltsRms } from '#units/quantity.ts';

export interface StressReport {
  readonly format: 'layerwright-stress/1';
  readonly title: string;
  readonly rules: Verdict['rules'];
  readonly verdict: Verdict['verdict'];
  readonly pairs: readonly StressPair[];
  readonly places: readonly PlacedLayer[];
  readonly neighbours: readonly LocalStress[];
  readonly bridges: readonly JudgedBridge[];
  readonly outside: readonly JudgedOutside[];
  readonly capacitances: readonly LayersCapacitance[];
  readonly leakage: Leakage;
  readonly tests: readonly PairTest[];
  /** Pairs without a test: the rule book's tables have no level for it. */
  readonly untested: readonly Untested[];
  readonly heat: Heat;
}

/** A judgement with what stands across its pairs. */
export interface Stressed extends Judgement {
  /** Worked out when it is first asked for. */
  readonly stress: StressReport;
}

export interface StressPair extends PairStressResult {
  readonly needed: PairVerdict['needed'];
  readonly transients: Transients;
  /** What it was judged at, where a computed figure counts as the upper end of what it may be; else null. */
  readonly judgedAt: { readonly rms: VoltsRms; readonly peak: VoltsPeak; readonly within: number } | null;
}

/** What stands across a pair for which there is no level. */
export interface Untested extends Pick<PairVerdict, 'between' | 'needed'> {
  readonly rms: number;
  readonly peak: number;
}

export interface PairTest extends TestPlan {
  /** The ordinary level, where the one for high frequency is larger and is the one to test at; else null. */
  readonly ordinary: VoltsPeak | null;
  readonly needed: PairVerdict['needed'];
  readonly verdict: PairVerdict['verdict'];
  /** Every pair that this one test proves: their circuits are joined the same way. */
  readonly proves: readonly (readonly [string, string])[];
}

/** Throws where the rule book does not exist: reading the file has refused it. */
export function stressReport(
  design: Design,
  { verdict, parts, windings }: Pick<Judgement, 'verdict' | 'parts' | 'windings'>,
): StressReport {
  const capacitances = windings?.most ?? windingCapacitances(design);
  const book = bookOf(design);
  const running = runningConverter(design);
  return {
    format: 'layerwright-stress/1',
    title: design.title,
    rules: verdict.rules,
    verdict: verdict.verdict,
    pairs: workingVoltages(design).map((stress, i) => stressPair(stress, parts.judgedAt[i])),
    places: running === null ? [] : placedLayers(design, running),
    neighbours: running === null ? [] : localStresses(design, running),
    bridges: parts.bridges,
    outside: parts.outside,
    capacitances,
    leakage: asJudged(leakageOf(design, book, capacitances, running), verdict),
    untested: verdict.pairs.flatMap(untestedPair),
    tests: joinedTests(verdict.pairs.flatMap((pair) => pairTest(book, design, pair))),
    heat: heatOf(design, book),
  };
}

const circuitOf = ({ circuits }: Design, id: string) => {
  const found = circuits.find((circuit) => circuit.id === id);
  if (found === undefined) throw new Error(`no circuit ${id}`);
  return found;
};

/** The answer to the touch current is the judge's. */
function asJudged(leakage: Leakage, { touchCurrent }: Verdict): Leakage {
  const { touch } = leakage;
  return touch === null || touchCurrent === null
    ? leakage
    : { ...leakage, touch: { ...touch, answer: touchCurrent.verdict } };
}

const untestedPair = ({
  between,
  needed,
  required,
  stress: { rms, peak },
}: PairVerdict): readonly Untested[] =>
  required !== null && required.test.peak === null ? [{ between, needed, rms, peak }] : [];

/** Voltages, and what was judged, both list the pairs in the order of the file's circuits. */
function stressPair(stress: PairStressResult, judged: JudgedAt | undefined): StressPair {
  if (judged === undefined) throw new Error(`${stress.between.join()} was not judged`);
  const { needed, transients, rms, peak } = judged;
  const within = Math.max(stress.within.rms, stress.within.peak);
  const judgedAt = within > 0 ? { rms, peak, within } : null;
  return { ...stress, needed: needed ?? 'functional', transients, judgedAt };
}

/** Tests are done near sea level, where air holds more than high up. */
const TEST_BENCH = metres(0);

function pairTest(book: Book, design: Design, pair: PairVerdict): readonly PairTest[] {
  const test = pair.required?.test;
  if (test?.peak == null) return [];
  const [a, b] = pair.between.map((id) => circuitOf(design, id));
  if (a === undefined || b === undefined) return [];
  const paths = pair.paths.flatMap(({ metric, length, plies }) =>
    metric === 'clearance' && length !== null ? [{ length: mm(length), plies }] : [],
  );
  const materials = {
    perPly: weakestPly(design),
    enamel: weakestEnamel(design, pair.between),
    altitude: TEST_BENCH,
  };
  const expected = weakestBreakdown(paths, materials);
  const high = test.highFrequencyPeak ?? 0;
  const peak = voltsPeak(Math.max(test.peak, high));
  const plan = testPlan(design, book, { a, b, peak, because: test.because, expected });
  const ordinary = high > test.peak ? voltsPeak(test.peak) : null;
  return [{ ...plan, ordinary, needed: pair.needed, verdict: pair.verdict, proves: [pair.between] }];
}

/** Tests with the same circuits joined are one: at the highest level, with the pair that breaks down first. */
function joinedTests(tests: readonly PairTest[]): readonly PairTest[] {
  const joined = new Map<string, PairTest>();
  for (const test of tests) {
    const key = JSON.stringify(test.connect.map((side) => [...side].sort()).sort());
    const before = joined.get(key);
    joined.set(key, before === undefined ? test : harder(before, test));
  }
  return [...joined.values()];
}

function harder(one: PairTest, other: PairTest): PairTest {
  const strength = ({ expected }: PairTest) => expected?.likely ?? Infinity;
  const level = other.type.peak > one.type.peak ? other : one;
  const weaker = strength(other) < strength(one) ? other : one;
  const worse = ANSWERS.indexOf(other.verdict) < ANSWERS.indexOf(one.verdict) ? other : one;
  return {
    ...level,
    expected: weaker.expected,
    outcome: outcomeOf(level.type.peak, weaker.expected),
    verdict: worse.verdict,
    proves: [...one.proves, ...other.proves],
    because: [...new Set([...one.because, ...other.because])],
  };
}

const ANSWERS = ['falls-short', 'not-shown', 'meets'] as const;
