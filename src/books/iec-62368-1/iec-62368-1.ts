// The rule book IEC 62368-1, edition 3 of 2018: what it answers, from its tables and by its procedure.

import type { Book } from '#books/questions/book.ts';
import { gradeOfBridge } from '#books/shared/parts/bridges.ts';
import { nationalOf } from '#books/shared/national.ts';
import { neededGrade } from '#books/shared/needed-grade.ts';
import { transientsOf } from '#books/shared/transients.ts';
import { hertz } from '#units/quantity.ts';
import { solidsWorthOf } from './solid-grade.ts';
import { requiredOf, type Tables } from './required.ts';
import type { Reader } from '#standards/tables/reader.ts';
import { tablesOf } from './tables.ts';

export function iec623681(read: Reader): Book {
  const { files, rules, distances, voltages, solids, edition } = tablesOf(read);
  const tables: Tables = {
    ...distances,
    ...voltages,
    highFrequencyAbove: rules('high-frequency').figure('above'),
  };
  return {
    id: 'iec-62368-1',
    edition,
    title: 'IEC 62368-1',
    scope: null,
    gradeWords: {},
    asksMeans: false,
    tables: Object.values(files),
    rules,
    remarks: () => [],
    national: (market) => nationalOf(files.markets, files.nationalAltitude, market),
    neededGrade: (a, b) => neededGrade(files.neededGrades, a, b),
    transients: (supply, a, b) => transientsOf({ ...voltages, markets: files.markets }, supply, a, b),
    required: (asked) => requiredOf(tables, asked),
    ...solids,
    sheets: () => solids.plyRule('reinforced'),
    solids: solidsWorthOf(solids),
    part: (bridge, asked) => gradeOfBridge(solids, bridge, asked),
    testSeconds: voltages.testSeconds,
    routineTest: voltages.routineTest,
    highestFrequency: hertz(Math.max(...files.creepageHighFrequency.columnSteps)),
  };
}
