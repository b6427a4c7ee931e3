// What the steps say that find the size of a wire, and what a ply, a cover, a block, a sleeve or a wall stands.

import type { MaterialSteps } from '#standards/steps/of-materials.ts';
import { materialWords } from '#words/design/material-words.ts';
import { lengthUp, plain, volts } from '#words/text/number-words.ts';
import { product, row, weakest, type WordsFor } from './sheet-row.ts';

export const materialWordsOf: WordsFor<MaterialSteps> = {
  'film-breakdown': (why) => {
    const { film, row: listed, value } = why.values;
    const text =
      film === listed ? `${plain(film)} mm` : `${plain(film)} mm takes the film of ${plain(listed)}`;
    return [row('film', text, `${volts(value)} rms`, weakest(why))];
  },
  'round-wire': (why) => [row('wire', sizeOf(why.values), mm(why.values.overall), weakest(why))],
  'fully-insulated-wire': (why) => {
    const { leastBreakdown, overall } = why.values;
    return [
      row('wire', sizeOf(why.values), mm(overall), weakest(why)),
      row('breakdown', 'the least of its grade', `${volts(leastBreakdown)} rms`, weakest(why)),
    ];
  },
  'fully-insulated-strength': (why) => {
    const { increase, perMicrometre, value } = why.values;
    const text = `${product(increase * 1000, perMicrometre)}: growth in um, V a um`;
    return [row('breakdown', text, `${volts(value)} rms`, weakest(why))];
  },
  'layer-insulated-wire': (why) => {
    const { conductor, growth, value } = why.values;
    return [row('wire', `${plain(conductor)} + ${plain(growth)} mm`, mm(value), weakest(why))];
  },
  'litz-bundle': (why) => {
    const { strands, serving, packing, value } = why.values;
    const text = `${strands} strands, packing ${plain(packing)}, serving ${serving}`;
    return [row('wire', text, mm(value), weakest(why))];
  },
  'bare-wire': () => [row('wire', 'bare: nothing of it insulates')],
  'unknown-diameter': ({ values }) => [row('wire', 'not known, counted as', mm(values.value), 'house-rule')],
  'stated-diameter': () => [row('wire', 'overall diameter as the file states it', '', 'stated')],
  'wire-cover': ({ values }) => [
    row('cover', `of ${values.winding}, ${values.layers === 1 ? 'one layer' : `${values.layers} layers`}`),
  ],
  'full-cover': ({ values: { winding, grade, breakdown, peak } }) => [
    row(
      'cover',
      `of ${winding}, fully insulated, grade ${grade ?? 'unknown'}${breakdown === null ? '' : `, from ${volts(breakdown)} rms`}`,
      standing(peak),
    ),
  ],
  'stated-withstand': ({ values: { value, shape, peak } }) => {
    const text = shape === 'dc' ? `${volts(value)} dc` : `${volts(value)} rms × √2`;
    return [row('withstands', text, standing(peak), 'stated')];
  },
  'taken-to-stand': () => [row('withstands', 'no figure given, taken to withstand whatever is asked')],
  'film-share': (why) => {
    const { material, breakdown, share, peak } = why.values;
    const named = material === null ? '' : `${materialWords(material)}: `;
    const text = `${named}${plain(breakdown)} × ${plain(share)} × √2`;
    return [row('withstands', text, standing(peak), weakest(why) ?? 'derived')];
  },
  'no-strength': ({ values: { material } }) => [
    row('withstands', `${material === null ? '' : `${materialWords(material)}: `}no strength is shown`),
  ],
  'margin-block': () => [row('block', 'in the margin')],
  sleeve: ({ values }) => [row('sleeve', 'over a lead', mm(values.wall), 'stated')],
  moulding: ({ values: { material, group } }) => [
    row('wall', `${material === null ? 'material unknown' : materialWords(material)}, group ${group}`),
  ],
  'closed-joint': ({ values }) => [
    row('joint', values.proven ? 'closed, and tested' : 'closed, without proof: it counts as open'),
  ],
};

const sizeOf = ({
  conductor,
  grade,
  row: listed,
  exact,
}: MaterialSteps['round-wire'] | MaterialSteps['fully-insulated-wire']): string =>
  `${plain(conductor)} mm, grade ${grade}${exact ? '' : `, by the row of ${plain(listed)}`}`;

const mm = (value: number): string => `${lengthUp(value)} mm`;

const standing = (peak: number | null): string =>
  peak === null ? 'nothing shown' : `${plain(Math.floor(peak))} V peak`;
