// What is asked for a voltage, by the degree of pollution.

import { editDesign } from '#model/edit/edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Verdict } from '#state/judging/judged.ts';
import { judgedOver, placesOn, type ExploreSheet } from './explore-sheet.ts';

const x = { from: 50, to: 1000, step: 50, name: 'working voltage', unit: 'V rms' };

export const askedSheet = (build: DesignFile): ExploreSheet => ({
  id: 'asked',
  title: 'What is asked for a voltage',
  says: 'Creepage asked between mains and hand, by the voltage that works between them.',
  x,
  y: { name: 'creepage asked', unit: 'mm' },
  knob: { name: 'pollution degree', options: ['2', '1', '3'] },
  source: 'IEC 62368-1, edition 3 (2018), clause 5.4.3, table 17; group of the lesson’s former',
  curves: async (option, judge) => {
    const polluted = editDesign(build, 'surroundings.pollutionDegree', Number(option));
    const docAt = (rms: number) => editDesign(polluted, 'workingVoltages[0].rms', `${rms} V`);
    const asked = (column: 'basic' | 'reinforced') => (verdict: Verdict) =>
      verdict.pairs[0]?.required?.creepage[column] ?? null;
    const spots = (column: 'basic' | 'reinforced') => judgedOver(placesOn(x), docAt, judge, asked(column));
    return [
      { name: 'reinforced', look: 'full', spots: await spots('reinforced') },
      { name: 'basic', look: 'dashed', spots: await spots('basic') },
    ];
  },
});
