// Everything that one design says of stress, as one object: what `stress --json` prints (format layerwright-stress/1)
// and what the words, the page and the plot are made from. Volts, hertz, amperes, farads, degrees; lengths in mm.

import type { Design, MaterialGroup } from '#model/design.ts';
import { requiredFor } from '#judge/grade/required.ts';
import type { PairVerdict, Verdict } from '#judge/verdict/verdict.ts';
import { ruleBook, type Book } from '#books/book.ts';
import { isOutOfRange } from '#standards/out-of-range.ts';
import { ESTIMATE_WITHIN, type PairStressResult } from '#stress/voltages/pair-stress.ts';
import type { BridgeGrade } from '#stress/parts/bridge-grade.ts';
import { gradeOfBridge } from '#stress/parts/bridges.ts';
import { runningConverter } from '#stress/voltages/computed-stress.ts';
import { weakestBreakdown } from '#stress/breakdown/expected-breakdown.ts';
import { heatOf, type Heat } from '#stress/heat/heat.ts';
import { leakageOf, type Leakage } from '#stress/current/leakage.ts';
import { localStresses, type LocalStress } from '#stress/voltages/local-stress.ts';
import { gradeOfOutside, type OutsideGrade } from '#stress/parts/outside-grade.ts';
import { placedLayers, type PlacedLayer } from '#stress/voltages/placed-layers.ts';
import { weakestEnamel, weakestPly } from '#stress/breakdown/rated-breakdown.ts';
import { outcomeOf, testPlan, type TestPlan } from '#stress/breakdown/test-plan.ts';
import { mainsOf, transients, type Transients } from '#stress/voltages/transient.ts';
import { windingCapacitances, type LayersCapacitance } from '#stress/current/winding-capacitance.ts';
import { workingVoltages } from '#stress/voltages/working-voltage.ts';
import { metres, mm, voltsPeak, voltsRms } from '#units/quantity.ts';

export type { PlacedLayer };

export interface StressSheet {
  readonly format: 'layerwright-stress/1';
  readonly title: string;
  readonly rules: Verdict['rules'];
  readonly verdict: Verdict['verdict'];
  readonly pairs: readonly SheetPair[];
  readonly places: readonly PlacedLayer[];
  readonly neighbours: readonly LocalStress[];
  readonly bridges: readonly SheetBridge[];
  readonly outside: readonly SheetOutside[];
  readonly capacitances: readonly LayersCapacitance[];
  readonly leakage: Leakage;
  readonly tests: readonly SheetTest[];
  readonly heat: Heat;
}

export interface SheetPair extends PairStressResult {
  readonly needed: PairVerdict['needed'];
  readonly transients: Transients;
}

/** At worst a computed working voltage is as much higher as an estimate may be off, and unknowns count as no safety part. */
export interface SheetBridge {
  readonly worst: BridgeGrade;
  readonly best: BridgeGrade;
}

export interface SheetOutside extends OutsideGrade {
  readonly needed: PairVerdict['needed'];
}

export interface SheetTest extends TestPlan {
  readonly needed: PairVerdict['needed'];
  readonly verdict: PairVerdict['verdict'];
  /** Every pair that this one test proves: their circuits are joined the same way. */
  readonly proves: readonly (readonly [string, string])[];
}

/** Throws where the rule book does not exist: reading the file has refused it. */
export function stressSheet(design: Design, verdict: Verdict): StressSheet {
  const book = ruleBook(design.rules);
  if (book === null) throw new Error(`no rule book ${design.rules}`);
  const running = runningConverter(design);
  const capacitances = windingCapacitances(design);
  const pairs = workingVoltages(design).map((stress) => sheetPair(book, design, verdict, stress));
  return {
    format: 'layerwright-stress/1',
    title: design.title,
    rules: verdict.rules,
    verdict: verdict.verdict,
    pairs,
    places: running === null ? [] : placedLayers(design, running),
    neighbours: running === null ? [] : localStresses(design, running),
    bridges: pairs.flatMap((pair) => sheetBridges(book, design, pair)),
    outside: pairs.flatMap((pair) => sheetOutside(book, design, pair)),
    capacitances,
    leakage: leakageOf(design, book, capacitances, running),
    tests: joinedTests(verdict.pairs.flatMap((pair) => sheetTest(book, design, pair))),
    heat: heatOf(design, book),
  };
}

const circuitOf = ({ circuits }: Design, id: string) => {
  const found = circuits.find((circuit) => circuit.id === id);
  if (found === undefined) throw new Error(`no circuit ${id}`);
  return found;
};

function sheetPair(book: Book, design: Design, verdict: Verdict, stress: PairStressResult): SheetPair {
  const [a, b] = stress.between.map((id) => circuitOf(design, id));
  if (a === undefined || b === undefined) throw new Error('a pair of less than two');
  const judged = verdict.pairs.find(({ between }) => between[0] === a.id && between[1] === b.id);
  return {
    ...stress,
    needed: judged?.needed ?? 'functional',
    transients: transients(book, design.supply, a, b),
  };
}

function sheetBridges(book: Book, design: Design, pair: SheetPair): readonly SheetBridge[] {
  const across = design.bridges.filter(({ between }) => pair.between.every((id) => between.includes(id)));
  if (across.length === 0) return [];
  const barrier = isBarrier(pair);
  // What tracks on the part's own body is not in the file: the worst group.
  const required = requiredDistances(book, design, pair, 'IIIb');
  const common = {
    book,
    barrier,
    mains: mainsOf(design.supply).value,
    category: design.supply.overvoltageCategory,
    required,
  };
  const higher = pair.from.rms === 'computed' ? 1 + ESTIMATE_WITHIN : 1;
  return across.map((bridge) => ({
    worst: gradeOfBridge(bridge, { ...common, rms: voltsRms(pair.rms * higher), isBest: () => false }),
    best: gradeOfBridge(bridge, { ...common, rms: pair.rms, isBest: () => true }),
  }));
}

/** Only pairs that ask for something, and only distances from circuit to circuit: others are pieces of longer paths. */
function sheetOutside(book: Book, design: Design, pair: SheetPair): readonly SheetOutside[] {
  if (!isBarrier(pair)) return [];
  return design.outside
    .filter(({ between }) => pair.between.every((id) => between.includes(id)))
    .map((entry) => {
      const group = typeof entry.materialGroup === 'string' ? entry.materialGroup : 'IIIb';
      return { ...gradeOfOutside(entry, requiredDistances(book, design, pair, group)), needed: pair.needed };
    });
}

const isBarrier = ({ needed }: SheetPair): boolean => needed !== 'functional' && needed !== 'none';

function requiredDistances(book: Book, design: Design, pair: SheetPair, group: MaterialGroup) {
  const needed = isBarrier(pair) ? pair.needed : null;
  const { clearance, creepage } = requiredFor(book, design, pair, pair.transients, needed);
  const { basic, reinforced } = creepage(group);
  if (isOutOfRange(basic) || isOutOfRange(reinforced)) return null;
  if (isOutOfRange(clearance.basic) || isOutOfRange(clearance.reinforced)) return null;
  return {
    clearance: { basic: clearance.basic.value, reinforced: clearance.reinforced.value },
    creepage: { basic: basic.value, reinforced: reinforced.value },
  };
}

/** Tests are done near sea level, where air holds more than high up. */
const TEST_BENCH = metres(0);

function sheetTest(book: Book, design: Design, pair: PairVerdict): readonly SheetTest[] {
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
  const plan = testPlan(design, book, { a, b, peak: voltsPeak(test.peak), because: test.because, expected });
  return [{ ...plan, needed: pair.needed, verdict: pair.verdict, proves: [pair.between] }];
}

/** Tests with the same circuits joined are one: at the highest level, with the pair that breaks down first. */
function joinedTests(tests: readonly SheetTest[]): readonly SheetTest[] {
  const joined = new Map<string, SheetTest>();
  for (const test of tests) {
    const key = JSON.stringify(test.connect.map((side) => [...side].sort()).sort());
    const before = joined.get(key);
    joined.set(key, before === undefined ? test : harder(before, test));
  }
  return [...joined.values()];
}

function harder(one: SheetTest, other: SheetTest): SheetTest {
  const strength = ({ expected }: SheetTest) => expected?.likely ?? Infinity;
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
