// The sheets to explore: one figure over another, each worked out from the tables or by the solver itself. Where the judge is
// asked, it is asked beside the page, once for each place on the axis, of the invented build of a lesson.

import { editDesign } from '#model/edit/edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Verdict } from '#state/judging/judged.ts';
import { airBreakdown } from '#stress/breakdown/paschen.ts';
import { lifeHours } from '#stress/heat/thermal-life.ts';
import { celsius, metres, mm } from '#units/quantity.ts';
import type { Axis, Curve, Spot } from '#drawing/plot/figure-plot.ts';
import { gradeHeight } from '#words/verdict/grade-height.ts';

export interface ExploreSheet {
  readonly id: string;
  readonly title: string;
  readonly says: string;
  readonly x: Axis & { readonly name: string; readonly unit: string; readonly step: number };
  readonly y: { readonly name: string; readonly unit: string };
  /** What else may be set; the first is set as it opens. */
  readonly knob: { readonly name: string; readonly options: readonly string[] };
  readonly source: string;
  /** Null verdict: it could not be judged there. */
  readonly curves: (option: string, judge: JudgeDoc) => Promise<readonly Curve[]>;
}

export type JudgeDoc = (doc: DesignFile) => Promise<Verdict | null>;

const places = ({ from, to }: Axis, step: number): readonly number[] =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) =>
    Number((from + i * step).toPrecision(12)),
  );

/** One judgement for each place; where there is none, the curve has no spot. */
async function judged(
  at: readonly number[],
  docAt: (place: number) => DesignFile,
  judge: JudgeDoc,
  figure: (verdict: Verdict) => number | null,
): Promise<readonly Spot[]> {
  const spots: Spot[] = [];
  for (const place of at) {
    const verdict = await judge(docAt(place));
    const value = verdict === null ? null : figure(verdict);
    if (value !== null) spots.push([place, value]);
  }
  return spots;
}

const withAll = (doc: DesignFile, paths: readonly string[], value: unknown): DesignFile =>
  paths.reduce((edited, path) => editDesign(edited, path, value), doc);

const MARGINS = [0, 2].flatMap((layer) =>
  ['left', 'right'].map((side) => `layers[${layer}].margins.${side}.width`),
);

export function exploreSheets(build: DesignFile): readonly ExploreSheet[] {
  const volts = { from: 50, to: 1000, step: 50, name: 'working voltage', unit: 'V rms' };
  const gap = { from: 0.05, to: 10, step: 0.05, name: 'gap', unit: 'mm' };
  const heat = { from: 60, to: 180, step: 2, name: 'hottest spot', unit: '°C' };
  const margin = { from: 0, to: 4, step: 0.25, name: 'margin on both sides of both windings', unit: 'mm' };
  const count = { from: 0, to: 5, step: 1, name: 'plies between the windings', unit: 'plies' };
  return [
    {
      id: 'asked',
      title: 'What is asked for a voltage',
      says: 'Creepage asked between mains and hand, by the voltage that works between them.',
      x: volts,
      y: { name: 'creepage asked', unit: 'mm' },
      knob: { name: 'pollution degree', options: ['2', '1', '3'] },
      source: 'IEC 62368-1, edition 3 (2018), clause 5.4.3, table 17; group of the lesson’s former',
      curves: async (option, judge) => {
        const docAt = (rms: number) =>
          editDesign(
            withAll(build, ['workingVoltages[0].rms'], `${rms} V`),
            'surroundings.pollutionDegree',
            Number(option),
          );
        const asked = (column: 'basic' | 'reinforced') => (verdict: Verdict) =>
          verdict.pairs[0]?.required?.creepage[column] ?? null;
        const at = places(volts, volts.step);
        return [
          { name: 'reinforced', look: 'full', spots: await judged(at, docAt, judge, asked('reinforced')) },
          { name: 'basic', look: 'dashed', spots: await judged(at, docAt, judge, asked('basic')) },
        ];
      },
    },
    {
      id: 'breakdown',
      title: 'When a gap breaks down',
      says: 'Peak voltage at which a gap of air is expected to break down; never a voltage that it may be trusted with.',
      x: gap,
      y: { name: 'breakdown', unit: 'V peak' },
      knob: { name: 'altitude, m', options: ['0', '2000', '5000'] },
      source:
        'three published forms for a uniform field and the spread between them; small electrodes hold less',
      curves: (option) => {
        const at = places(gap, gap.step);
        const of = (which: 'least' | 'likely' | 'most'): readonly Spot[] =>
          at.map((length) => [length, airBreakdown(mm(length), metres(Number(option)))[which]]);
        return Promise.resolve([
          { name: 'at most', look: 'thin', spots: of('most') },
          { name: 'likely', look: 'full', spots: of('likely') },
          { name: 'at least', look: 'thin', spots: of('least') },
        ]);
      },
    },
    {
      id: 'life',
      title: 'Heat and years',
      says: 'Years that insulation lasts at one temperature, by the rule of thumb; no promise.',
      x: heat,
      y: { name: 'life', unit: 'years' },
      knob: { name: 'thermal class, °C', options: ['130', '105', '155'] },
      source:
        'rule of thumb: 20 000 h at the class, ten degrees more halve them; thin lines by activation energies of 0.8 and 1.1 eV',
      curves: (option) => {
        const at = places(heat, heat.step);
        const life = (hot: number) => lifeHours(celsius(Number(option)), celsius(hot));
        const years = (hours: number): number => hours / 8766;
        return Promise.resolve([
          {
            name: 'halved by 10 K',
            look: 'full',
            spots: at.map((hot): Spot => [hot, years(life(hot).byHalving)]),
          },
          {
            name: 'shorter',
            look: 'thin',
            spots: at.map((hot): Spot => [hot, years(life(hot).byArrhenius[0])]),
          },
          {
            name: 'longer',
            look: 'thin',
            spots: at.map((hot): Spot => [hot, years(life(hot).byArrhenius[1])]),
          },
        ]);
      },
    },
    {
      id: 'margin',
      title: 'What a margin buys',
      says: 'The shortest way along surfaces as the margins grow: out, up the edges of the tape, and back.',
      x: margin,
      y: { name: 'way along surfaces', unit: 'mm' },
      knob: { name: 'plies', options: ['3', '2', '6'] },
      source: 'the solver, on the build of the lesson “What a margin is worth”',
      curves: async (option, judge) => {
        const docAt = (width: number) =>
          editDesign(withAll(build, MARGINS, `${width} mm`), 'layers[1].plies', Number(option));
        const at = places(margin, margin.step);
        const way = ({ pairs }: Verdict): number | null =>
          pairs[0]?.paths.find(({ metric, plies }) => metric === 'creepage' && plies === 0)?.length ?? null;
        const asked = ({ pairs }: Verdict): number | null => pairs[0]?.required?.creepage.reinforced ?? null;
        return [
          { name: 'there', look: 'full', spots: await judged(at, docAt, judge, way) },
          {
            name: 'asked',
            look: 'dashed',
            spots: await judged([margin.from, margin.to], docAt, judge, asked),
          },
        ];
      },
    },
    {
      id: 'ply',
      title: 'What a ply buys',
      says: 'The grade that stands as plies are added: 1 functional, 2 basic, 3 double, 4 reinforced.',
      x: count,
      y: { name: 'grade', unit: '' },
      knob: { name: 'a ply is shown to stand', options: ['nothing', '4 kV'] },
      source: 'the solver, on the build of the lesson with margins of 3 mm; clause 5.4.4.6',
      curves: async (option, judge) => {
        const wide = withAll(build, MARGINS, '3 mm');
        const docAt = (plies: number): DesignFile =>
          plies === 0
            ? withoutTape(wide)
            : editDesign(
                editDesign(wide, 'layers[1].plies', plies),
                'layers[1].plyWithstand',
                option === 'nothing' ? undefined : option,
              );
        const grade = ({ pairs }: Verdict): number | null =>
          pairs[0] === undefined ? null : gradeHeight(pairs[0].achieved);
        return [
          { name: 'reached', look: 'full', spots: await judged(places(count, 1), docAt, judge, grade) },
        ];
      },
    },
  ];
}

const withoutTape = (doc: DesignFile): DesignFile => ({
  ...doc,
  layers: doc.layers.filter((_, i) => i !== 1),
});
