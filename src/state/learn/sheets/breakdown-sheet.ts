// When a gap of air breaks down, by the altitude.

import { airBreakdown } from '#stress/breakdown/paschen.ts';
import { metres, mm } from '#units/quantity.ts';
import { workedOut, type ExploreSheet } from './explore-sheet.ts';

const x = { from: 0.05, to: 10, step: 0.05, name: 'gap', unit: 'mm' };

export const breakdownSheet: ExploreSheet = {
  id: 'breakdown',
  title: 'When a gap breaks down',
  says: 'Peak voltage at which a gap of air is expected to break down; never a voltage that it may be trusted with.',
  x,
  y: { name: 'breakdown', unit: 'V peak' },
  knob: { name: 'altitude, m', options: ['0', '2000', '5000'] },
  source: 'three published forms for a uniform field and the spread between them; small electrodes hold less',
  curves: (option) => {
    const of = (which: 'least' | 'likely' | 'most') => (length: number) =>
      airBreakdown(mm(length), metres(Number(option)))[which];
    return Promise.resolve([
      workedOut('at most', 'thin', x, of('most')),
      workedOut('likely', 'full', x, of('likely')),
      workedOut('at least', 'thin', x, of('least')),
    ]);
  },
};
