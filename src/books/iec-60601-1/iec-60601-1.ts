// The rule book IEC 60601-1, edition 3.1, in means of protection: of the patient, or of the operator where the file says so.
// Its published figures end where flybacks begin, and its verdicts rest on memory above; heat is not judged, at high
// frequency nothing more is asked.

import type { Book } from '#books/questions/book.ts';
import type { DefaultAnswers } from '#books/shared/default-answers.ts';
import { nationalOf } from '#books/shared/national.ts';
import { neededGrade } from '#books/shared/needed-grade.ts';
import { noHeat } from '#books/shared/no-heat.ts';
import { figureOf } from '#books/shared/one-figure.ts';
import { plainMains, transientsOf } from '#books/shared/transients.ts';
import { because, judged } from '#standards/because.ts';
import type { Reader } from '#standards/tables/reader.ts';
import { hertz, nm, seconds } from '#units/quantity.ts';
import { partOf } from './parts.ts';
import { requiredOf } from './required.ts';
import { solidsWorth } from './solids.ts';
import { edition, tablesOf } from './tables.ts';

const GRADE_WORDS = {
  basic: 'one means',
  supplementary: 'one means',
  double: 'two means',
  reinforced: 'two means',
} as const;

export function iec606011(read: Reader, byDefault: DefaultAnswers): Book {
  const tables = tablesOf(read);
  const { files, rules } = tables;
  const solid = rules('solid-between-windings');
  const highFrequency = byDefault.rules('high-frequency').figure('above');
  return {
    id: 'iec-60601-1',
    edition,
    title: 'IEC 60601-1',
    scope: null,
    gradeWords: GRADE_WORDS,
    asksMeans: true,
    tables: Object.values(files),
    rules,
    remarks: ({ frequency }) =>
      frequency > highFrequency ? [{ kind: 'reads', rule: rules('high-frequency') }] : [],
    national: (market) => nationalOf(files.markets, null, market),
    neededGrade: (a, b) => neededGrade(files.neededGrades, a, b),
    transients: (...asked) => transientsOf(plainMains(files, rules), ...asked),
    required: (asked) => requiredOf(tables, asked),
    leastThickness: () => figureOf(solid, 'oneLayer', nm),
    sheets: () =>
      judged(
        {
          alone: null,
          anyTwo: solid.figure('anyTwo'),
          film: { plies: solid.figure('layers'), together: nm(solid.figure('together')) },
        },
        solid.because(['together', 'layers', 'anyTwo']),
      ),
    solids: solidsWorth(solid),
    proofFactor: byDefault.solids.proofFactor,
    filmShare: byDefault.solids.filmShare,
    shownPerMm: byDefault.solids.shownPerMm,
    coverShown: (at) => judged(null, because('wire-layers', { at, value: null })),
    wireLayers: (at) => judged('nothing', because('wire-layers', { at, value: 'nothing' })),
    part: (bridge, asked) => partOf(byDefault.solids, rules('capacitors'), bridge, asked),
    testSeconds: figureOf(rules('electric-strength-test'), 'seconds', seconds),
    routineTest: null,
    touchCurrentLimits: null,
    ...noHeat(byDefault.solids.thermocoupleAllowance),
    highestFrequency: hertz(highFrequency),
  };
}
