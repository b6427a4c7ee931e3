// The rule book IEC 60335-1, edition 4, by its own clauses 14, 16.3 and 29. A sketch: what it has no rule for, or none that
// anyone here has seen, is answered by a house reading and said so: parts by their classes as in the default book, films
// and mouldings by the default book's share of their strength, heat and touch current not at all.

import type { Book } from '#books/book.ts';
import { solids as byDefault } from '#books/iec-62368-1/tables.ts';
import { neededGrade } from '#books/shared/needed-grade.ts';
import { gradeOfBridge } from '#books/shared/parts/bridges.ts';
import { transientsOf } from '#books/shared/transients.ts';
import { because, judged } from '#standards/because.ts';
import { lookUp } from '#standards/look-up.ts';
import { hertz, nm, seconds, voltsPeak } from '#units/quantity.ts';
import { requiredOf } from './required.ts';
import { solidsWorth } from './solids.ts';
import { edition, rules, tables } from './tables.ts';

const thickness = rules('solid-thickness');
const layers = rules('solid-layers');
const test = rules('electric-strength-test');
const noOvervoltage = judged(voltsPeak(0), rules('no-temporary-overvoltage').because());

const mains = {
  mainsTransient: (
    ...[volts, category]: Parameters<Parameters<typeof transientsOf>[0]['mainsTransient']>
  ) => {
    const found = lookUp(tables.mainsTransient, volts, `category ${category}`);
    return found.kind === 'found' ? judged(voltsPeak(found.value), found.because) : found;
  },
  temporaryOvervoltage: () => noOvervoltage,
};

const leastThickness = () => judged(nm(thickness.figure('reinforced')), thickness.because(['reinforced']));

export const iec603351: Book = {
  id: 'iec-60335-1',
  edition,
  title: 'IEC 60335-1',
  neededGrade: (a, b) => neededGrade(tables.neededGrades, a, b),
  transients: (supply, a, b) => transientsOf(mains, supply, a, b),
  required: requiredOf,
  leastThickness,
  sheets: () => judged({ alone: layers.figure('reinforced'), anyTwo: null }, layers.because(['reinforced'])),
  solids: solidsWorth,
  proofFactor: byDefault.proofFactor,
  filmShare: byDefault.filmShare,
  shownPerMm: byDefault.shownPerMm,
  coverShown: byDefault.coverShown,
  wireLayers: (at) => judged('nothing', because('wire-layers', { at, value: 'nothing' })),
  part: (bridge, asked) => gradeOfBridge({ ...byDefault, leastThickness }, bridge, asked),
  testSeconds: judged(seconds(test.figure('seconds')), test.because()),
  routineTest: null,
  touchCurrentLimits: null,
  thermalClasses: [],
  insulationTemperature: () => null,
  windingTemperatureOverload: () => null,
  thermocoupleAllowance: byDefault.thermocoupleAllowance,
  highestFrequency: hertz(400_000),
};
