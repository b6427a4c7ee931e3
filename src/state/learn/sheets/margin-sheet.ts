// What a margin buys: the shortest way along surfaces as both margins grow.

import { editDesign } from '#model/edit/edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Verdict } from '#state/judging/judged.ts';
import { judgedOver, placesOn, type ExploreSheet } from './explore-sheet.ts';
import { withMargins } from './with-margins.ts';

const x = { from: 0, to: 4, step: 0.25, name: 'margin on both sides of both windings', unit: 'mm' };

export const marginSheet = (build: DesignFile): ExploreSheet => ({
  id: 'margin',
  title: 'What a margin buys',
  says: 'The shortest way along surfaces as the margins grow: out, up the edges of the tape, and back.',
  x,
  y: { name: 'way along surfaces', unit: 'mm' },
  knob: { name: 'plies', options: ['3', '2', '6'] },
  source: 'the solver, on the build of the lesson “What a margin is worth”',
  curves: async (option, judge) => {
    const docAt = (width: number) => editDesign(withMargins(build, width), 'layers[1].plies', Number(option));
    const way = ({ pairs }: Verdict): number | null =>
      pairs[0]?.paths.find(({ metric, plies }) => metric === 'creepage' && plies === 0)?.length ?? null;
    const asked = ({ pairs }: Verdict): number | null => pairs[0]?.required?.creepage.reinforced ?? null;
    return [
      { name: 'there', look: 'full', spots: await judgedOver(placesOn(x), docAt, judge, way) },
      { name: 'asked', look: 'dashed', spots: await judgedOver([x.from, x.to], docAt, judge, asked) },
    ];
  },
});
