// The rule book IEC 60664-1, edition 3 of 2020, with part 4 above 30 kHz. It is horizontal: distances and test levels, no
// thickness, no layers, no wires, no heat. A solid counts by a withstand that is stated or tabled and by nothing else, of
// any thickness; parts count by their classes as in the default book.

import type { Book } from '#books/questions/book.ts';
import { FUNCTIONAL } from '#books/questions/insulation.ts';
import type { DefaultAnswers } from '#books/shared/default-answers.ts';
import { nationalOf } from '#books/shared/national.ts';
import { neededGrade } from '#books/shared/needed-grade.ts';
import { noHeat } from '#books/shared/no-heat.ts';
import { figureOf } from '#books/shared/one-figure.ts';
import { gradeOfBridge } from '#books/shared/parts/bridges.ts';
import { asShown, solidWorth } from '#books/shared/solid-worth.ts';
import { transientsOf } from '#books/shared/transients.ts';
import type { Crossed, LevelsOf } from '#books/questions/solid.ts';
import { because, judged } from '#standards/because.ts';
import type { Reader } from '#standards/tables/reader.ts';
import { hertz, nm, seconds } from '#units/quantity.ts';
import { mainsTables } from './overvoltages.ts';
import { requiredOf } from './required.ts';
import { edition, tablesOf } from './tables.ts';

/** The thinnest that a solid can be here: any thickness that shows the test is enough. */
const ANY = nm(1);

export function iec606641(read: Reader, byDefault: DefaultAnswers): Book {
  const tables = tablesOf(read);
  const { files, rules } = tables;
  const noThickness = rules('no-thickness');
  return {
    id: 'iec-60664-1',
    edition,
    title: 'IEC 60664-1',
    scope: 'distances and test levels only',
    gradeWords: {},
    asksMeans: false,
    tables: Object.values(files),
    rules,
    remarks: () => [{ kind: 'reads', rule: noThickness }],
    national: (market) => nationalOf(files.markets, null, market),
    neededGrade: (a, b) => neededGrade(files.neededGrades, a, b),
    transients: (supply, a, b) => transientsOf(mainsTables(tables), supply, a, b),
    required: (asked) => requiredOf(tables, asked),
    leastThickness: () => judged(ANY, noThickness.because()),
    sheets: () => judged({ alone: 1, anyTwo: null }, noThickness.because()),
    solids: solidsWorth,
    proofFactor: byDefault.solids.proofFactor,
    filmShare: byDefault.solids.filmShare,
    shownPerMm: byDefault.solids.shownPerMm,
    coverShown: (at) => judged(null, because('wire-layers', { at, value: null })),
    wireLayers: (at) => judged('nothing', because('wire-layers', { at, value: 'nothing' })),
    part: (bridge, asked) => gradeOfBridge(byDefault.solids, bridge, asked),
    testSeconds: figureOf(rules('electric-strength-test'), 'seconds', seconds),
    routineTest: null,
    touchCurrentLimits: null,
    ...noHeat(byDefault.solids.thermocoupleAllowance),
    highestFrequency: hertz(Math.max(...files.creepageHighFrequency.columnSteps)),
  };
}

/** Every layer by itself; those that cannot be parted as one. A wire's cover counts by a withstand that is stated. */
const solidsWorth = (crossed: readonly Crossed[], levelsOf: LevelsOf) =>
  crossed.flatMap(({ solid, count }) => {
    const levels = levelsOf(solid.material);
    const isOne = solid.kind !== 'sheet' || solid.bonded !== null;
    const counts = solid.kind !== 'cover' || solid.stated || solid.strength === 'whatever';
    const worth = solidWorth(solid, counts ? asShown(solid, levels, true) : FUNCTIONAL, levels);
    return Array.from({ length: isOne ? 1 : count }, () => worth);
  });
