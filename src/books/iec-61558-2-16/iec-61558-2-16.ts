// The rule book IEC 61558-2-16:2009 + A1, with IEC 61558-1:2005 + A1. All of its rows are recalled, one point of them is
// printed: every verdict of this book rests on memory and says so. Heat and touch current are not judged.

import type { Book } from '#books/questions/book.ts';
import type { DefaultAnswers } from '#books/shared/default-answers.ts';
import { nationalOf } from '#books/shared/national.ts';
import { neededGrade } from '#books/shared/needed-grade.ts';
import { noHeat } from '#books/shared/no-heat.ts';
import { figureOf } from '#books/shared/one-figure.ts';
import { gradeOfBridge } from '#books/shared/parts/bridges.ts';
import { plainMains, transientsOf } from '#books/shared/transients.ts';
import { because, judged } from '#standards/because.ts';
import type { Reader } from '#standards/tables/reader.ts';
import { hertz, nm, seconds } from '#units/quantity.ts';
import { requiredOf } from './required.ts';
import { solidsWorth } from './solids.ts';
import { edition, tablesOf } from './tables.ts';

export function iec61558216(read: Reader, byDefault: DefaultAnswers): Book {
  const tables = tablesOf(read);
  const { files, rules } = tables;
  const [layers, wire, thickness] = [rules('layers'), rules('wire'), rules('solid-thickness')];
  const leastThickness = () => figureOf(thickness, 'reinforced', nm);
  return {
    id: 'iec-61558-2-16',
    edition,
    title: 'IEC 61558-2-16',
    scope: null,
    gradeWords: {},
    asksMeans: false,
    tables: Object.values(files),
    rules,
    remarks: ({ supply: { overvoltageCategory } }) => [
      ...(overvoltageCategory === rules('any-category').figure('category')
        ? []
        : [{ kind: 'reads' as const, rule: rules('any-category') }]),
      { kind: 'reads', rule: rules('groups-as-iiia') },
    ],
    national: (market) => nationalOf(files.markets, null, market),
    neededGrade: (a, b) => neededGrade(files.neededGrades, a, b),
    transients: (...asked) => transientsOf(plainMains(files, rules), ...asked),
    required: (asked) => requiredOf(tables, asked),
    leastThickness,
    sheets: () =>
      judged(
        {
          alone: layers.figure('reinforced'),
          anyTwo: layers.figure('anyTwo'),
          supplementary: layers.figure('supplementary'),
        },
        layers.because(),
      ),
    solids: solidsWorth(layers, wire),
    proofFactor: byDefault.solids.proofFactor,
    filmShare: byDefault.solids.filmShare,
    shownPerMm: byDefault.solids.shownPerMm,
    coverShown: byDefault.solids.coverShown,
    wireLayers: (at) => {
      const value = at === wire.figure('layers') ? 'reinforced' : 'nothing';
      return judged(value, because('wire-layers', { at, value }, wire.because().cites));
    },
    part: (bridge, asked) => gradeOfBridge({ ...byDefault.solids, leastThickness }, bridge, asked),
    testSeconds: figureOf(rules('electric-strength-test'), 'seconds', seconds),
    routineTest: null,
    touchCurrentLimits: null,
    ...noHeat(byDefault.solids.thermocoupleAllowance),
    highestFrequency: hertz(Math.max(...files.creepageHighFrequency.columnSteps)),
  };
}
