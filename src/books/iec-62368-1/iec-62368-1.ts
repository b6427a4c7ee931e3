// The rule book IEC 62368-1, edition 3 of 2018: what it answers, from its tables and by its procedure.

import type { Book } from '#books/book.ts';
import { gradeOfBridge } from '#books/shared/parts/bridges.ts';
import { neededGrade } from '#books/shared/needed-grade.ts';
import { transientsOf } from '#books/shared/transients.ts';
import { hertz } from '#units/quantity.ts';
import { solidsWorthOf } from './solid-grade.ts';
import { requiredOf, type Tables } from './required.ts';
import {
  distances,
  edition,
  highFrequencyTable,
  neededGradesTable,
  rules,
  solids,
  voltages,
} from './tables.ts';

const tables: Tables = {
  ...distances,
  ...voltages,
  highFrequencyAbove: rules('high-frequency').figure('above'),
};

export const iec623681: Book = {
  id: 'iec-62368-1',
  edition,
  title: 'IEC 62368-1',
  neededGrade: (a, b) => neededGrade(neededGradesTable, a, b),
  transients: (supply, a, b) => transientsOf(voltages, supply, a, b),
  required: (asked) => requiredOf(tables, asked),
  ...solids,
  sheets: () => solids.plyRule('reinforced'),
  solids: solidsWorthOf(solids),
  part: (bridge, asked) => gradeOfBridge(solids, bridge, asked),
  testSeconds: voltages.testSeconds,
  routineTest: voltages.routineTest,
  highestFrequency: hertz(Math.max(...highFrequencyTable.columnSteps)),
};
