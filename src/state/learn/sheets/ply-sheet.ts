// What a ply buys: the grade that stands as plies are added between the windings.

import { editDesign } from '#model/edit/edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Verdict } from '#state/judging/judged.ts';
import { gradeHeight } from '#words/verdict/grade-height.ts';
import { judgedOver, placesOn, type ExploreSheet } from './explore-sheet.ts';
import { withMargins } from './with-margins.ts';

const WIDE_ENOUGH = 3;

const x = { from: 0, to: 5, step: 1, name: 'plies between the windings', unit: 'plies' };

export const plySheet = (build: DesignFile): ExploreSheet => ({
  id: 'ply',
  title: 'What a ply buys',
  says: 'The grade that stands as plies are added: 1 functional, 2 basic, 3 double, 4 reinforced.',
  x,
  y: { name: 'grade', unit: '' },
  knob: { name: 'a ply is shown to stand', options: ['nothing', '4 kV'] },
  source: 'the solver, on the build of the lesson with margins of 3 mm; clause 5.4.4.6',
  curves: async (option, judge) => {
    const wide = withMargins(build, WIDE_ENOUGH);
    const shown = editDesign(wide, 'layers[1].plyWithstand', option === 'nothing' ? undefined : option);
    const docAt = (plies: number): DesignFile =>
      plies === 0 ? withoutTape(wide) : editDesign(shown, 'layers[1].plies', plies);
    const grade = ({ pairs }: Verdict): number | null =>
      pairs[0] === undefined ? null : gradeHeight(pairs[0].achieved);
    return [{ name: 'reached', look: 'full', spots: await judgedOver(placesOn(x), docAt, judge, grade) }];
  },
});

const withoutTape = (doc: DesignFile): DesignFile => ({
  ...doc,
  layers: doc.layers.filter((_, i) => i !== 1),
});
