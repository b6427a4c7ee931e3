// The rule book IEC 60335-1, edition 4, by its own clauses 14, 16 and 29. What it has no rule for, or none that anyone here
// has seen, is answered by a house reading and said so: parts by their classes as in the default book, films and mouldings
// by the default book's share of their strength; heat is not judged.

import type { Book } from '#books/questions/book.ts';
import type { DefaultAnswers } from '#books/shared/default-answers.ts';
import { nationalOf } from '#books/shared/national.ts';
import { neededGrade } from '#books/shared/needed-grade.ts';
import { noHeat } from '#books/shared/no-heat.ts';
import { figureOf } from '#books/shared/one-figure.ts';
import { gradeOfBridge } from '#books/shared/parts/bridges.ts';
import { sineLimits } from '#books/shared/sine-limits.ts';
import { plainMains, transientsOf } from '#books/shared/transients.ts';
import { because, judged } from '#standards/because.ts';
import type { Reader } from '#standards/tables/reader.ts';
import { hertz, nm, seconds } from '#units/quantity.ts';
import { remarksOf } from './remarks.ts';
import { requiredOf } from './required.ts';
import { solidsWorth } from './solids.ts';
import { edition, tablesOf } from './tables.ts';

export function iec603351(read: Reader, byDefault: DefaultAnswers): Book {
  const tables = tablesOf(read);
  const { files, rules } = tables;
  const thickness = rules('solid-thickness');
  const layers = rules('solid-layers');
  const leastThickness = () => figureOf(thickness, 'reinforced', nm);
  const leastSupplementary = () => figureOf(thickness, 'supplementary', nm);
  return {
    id: 'iec-60335-1',
    edition,
    title: 'IEC 60335-1',
    scope: null,
    gradeWords: {},
    asksMeans: false,
    tables: Object.values(files),
    rules,
    remarks: (asked) => remarksOf(tables, asked, requiredOf(tables, asked)),
    national: (market) => nationalOf(files.markets, null, market),
    neededGrade: (a, b) => neededGrade(files.neededGrades, a, b),
    transients: (...asked) => transientsOf(plainMains(files, rules), ...asked),
    required: (asked) => requiredOf(tables, asked),
    leastThickness,
    leastSupplementary,
    sheets: () =>
      judged(
        { alone: layers.figure('reinforced'), anyTwo: null, supplementary: layers.figure('supplementary') },
        layers.because(),
      ),
    solids: solidsWorth(layers, leastSupplementary),
    proofFactor: byDefault.solids.proofFactor,
    filmShare: byDefault.solids.filmShare,
    shownPerMm: byDefault.solids.shownPerMm,
    coverShown: (at) => judged(null, because('wire-layers', { at, value: null })),
    wireLayers: (at) => judged('nothing', because('wire-layers', { at, value: 'nothing' })),
    part: (bridge, asked) => gradeOfBridge({ ...byDefault.solids, leastThickness }, bridge, asked),
    testSeconds: figureOf(rules('electric-strength-test'), 'seconds', seconds),
    routineTest: null,
    touchCurrentLimits: sineLimits(rules('touch-current')),
    ...noHeat(byDefault.solids.thermocoupleAllowance),
    highestFrequency: hertz(Math.max(...files.creepageHighFrequency.columnSteps)),
  };
}
