// The rule book IEC 60950-1, edition 2 of 2005, for builds of its day. Heat in overload by table C.1, nothing in normal use;
// at high frequency it asks nothing more. Parts by their classes as in the default book.

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
import { exactCell } from '#standards/tables/look-up.ts';
import type { Reader } from '#standards/tables/reader.ts';
import { celsius, hertz, nm, peakOfSine, seconds, voltsRms } from '#units/quantity.ts';
import { requiredOf } from './required.ts';
import { solidsWorth } from './solids.ts';
import { edition, tablesOf } from './tables.ts';

export function iec609501(read: Reader, byDefault: DefaultAnswers): Book {
  const tables = tablesOf(read);
  const { files, rules } = tables;
  const [sheet, wire, thickness] = [rules('thin-sheet'), rules('wire'), rules('least-thickness')];
  const highFrequency = byDefault.rules('high-frequency').figure('above');
  const leastThickness = () => figureOf(thickness, 'reinforced', nm);
  const isCertified = (layers: number) => layers === wire.figure('layers');
  return {
    id: 'iec-60950-1',
    edition,
    title: 'IEC 60950-1',
    scope: null,
    gradeWords: {},
    asksMeans: false,
    tables: Object.values(files),
    rules,
    remarks: ({ frequency }) =>
      frequency > highFrequency ? [{ kind: 'reads', rule: rules('high-frequency') }] : [],
    national: (market) => nationalOf(files.markets, files.nationalAltitude, market),
    neededGrade: (a, b) => neededGrade(files.neededGrades, a, b),
    transients: (...asked) => transientsOf(plainMains(files, rules), ...asked),
    required: (asked) => requiredOf(tables, asked),
    leastThickness,
    leastSupplementary: () => figureOf(thickness, 'supplementary', nm),
    sheets: () => judged({ alone: sheet.figure('alone'), anyTwo: sheet.figure('anyTwo') }, sheet.because()),
    solids: solidsWorth(sheet, wire),
    proofFactor: byDefault.solids.proofFactor,
    filmShare: byDefault.solids.filmShare,
    shownPerMm: byDefault.solids.shownPerMm,
    coverShown: (at) =>
      isCertified(at)
        ? judged(peakOfSine(voltsRms(wire.figure('test'))), wire.because(['test']))
        : judged(null, wire.because(['layers'])),
    wireLayers: (at) => {
      const value = isCertified(at) ? 'reinforced' : 'nothing';
      return judged(value, because('wire-layers', { at, value }, wire.because(['layers', 'grade']).cites));
    },
    part: (bridge, asked) => gradeOfBridge({ ...byDefault.solids, leastThickness }, bridge, asked),
    testSeconds: figureOf(rules('electric-strength-test'), 'seconds', seconds),
    routineTest: null,
    touchCurrentLimits: sineLimits(rules('touch-current')),
    ...noHeat(byDefault.solids.thermocoupleAllowance),
    thermalClasses: files.windingTemperatureOverload.steps.map(Number),
    windingTemperatureOverload: (thermalClass, state) => {
      const cell = exactCell(files.windingTemperatureOverload, thermalClass, 'limit');
      if (cell?.value == null) return null;
      const values = { thermalClass, state, value: cell.value };
      return judged(celsius(cell.value), because('temperature-limit', values, [cell.cite]));
    },
    highestFrequency: hertz(highFrequency),
  };
}
