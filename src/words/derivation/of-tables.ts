// What the steps of the tables say: rows met, lines between them with the arithmetic, factors, rounding.

import type { Because, BecauseOf, Cite } from '#standards/because.ts';
import type { BetweenTwoRows, MetRow, TableSteps } from '#standards/steps/of-tables.ts';
import { frequency, lengthUp, plain, volts } from '#words/text/number-words.ts';
import { axisUnit, quantityWords } from '#words/text/quantity-words.ts';
import {
  clauseOf,
  confirmedBy,
  NEXT_ROW,
  product,
  row,
  weakest,
  type SheetRow,
  type WordsFor,
} from './sheet-row.ts';
import { spaced } from '#words/text/spaced.ts';

export const tableWords: WordsFor<TableSteps> = {
  'table-value': ({ values, cites }, last) =>
    values.interpolated ? between(values, cites, last) : met(values, cites),
  'factor-beyond-table': (why) => [
    heading(why.cites, 'above its last row'),
    row('factor', product(why.values.at, why.values.factor), plain(why.values.value), weakest(why)),
  ],
  'out-of-range': ({ values }) => [row('table', `${values.quantity}: no figure for this`)],
  'pollution-factor': (why) => {
    const { pd, before, factor, product: exactly, value } = why.values;
    const text = `degree ${pd}: ${product(before, factor)} = ${plain(exactly)}, up`;
    return [row('pollution', text, mm(value), weakest(why))];
  },
  'reinforced-factor': (why, last) => {
    const { factor, basic, value, nextRow } = why.values;
    const text = `${plain(factor)} × basic ${lengthUp(basic)}`;
    return [row('reinforced', text, mm(value), weakest(why)), ...(last ? refused(nextRow, value, 'mm') : [])];
  },
  'high-frequency-value': (why) => [
    heading(why.cites, `creepage at ${frequency(why.values.frequency)}`),
    row('row', `${plain(why.values.row)} V peak`, exact(why.values.raw, 'mm'), weakest(why)),
  ],
  'not-high-frequency': ({ values }) => [
    row('frequency', `${frequency(values.frequency)}: the tables for high frequency are not asked`),
  ],
  'not-needed': (why) => [row('over 30 kHz', 'the ordinary table governs at this peak', '', weakest(why))],
  'field-reduction': (why) => {
    const { material, column, value } = why.values;
    return [row('K_R', `${material} at ${frequency(column)}, the next column`, plain(value), weakest(why))];
  },
  'field-reduction-mean': (why) => {
    const { first, last, column, value } = why.values;
    const text = `no row of its own: mean of ${first} to ${last} at ${frequency(column)}`;
    return [row('K_R', text, plain(value), weakest(why))];
  },
  'bridging-width': (why) => {
    const text = `pollution degree ${why.values.pd}: gaps under this are bridged`;
    return [row('X', text, mm(why.values.value), weakest(why))];
  },
  'needed-grade': (why) => {
    const { a, b, value } = why.values;
    return [row('asked', `${a} to ${b}${clauseOf(why)}`, value ?? 'nothing', weakest(why))];
  },
  'cover-shown': (why) => {
    const { layers, pair, value } = why.values;
    const text = `${layers} certified layers: half of ${volts(pair)} rms over two covers${clauseOf(why)}`;
    return [row('wire', text, `${Math.floor(value)} V peak`, weakest(why))];
  },
  'field-shown': (why) => {
    const { row: material, field, share } = why.values;
    const text = `${Math.round(100 * share)} % of ${plain(field / 1000)} kV peak a millimetre of ${material}`;
    return [row('strength', text, `${plain((field * share) / 1000)} kV/mm`, weakest(why))];
  },
  'wire-layers': (why) => {
    const text = `${why.values.at} certified layers${clauseOf(why)}`;
    return [row('wire', text, why.values.value ?? 'nothing', weakest(why))];
  },
  capacitor: (why) => {
    const text = `class ${why.values.at}${clauseOf(why)}`;
    return [row('capacitor', text, why.values.value ?? 'nothing', weakest(why))];
  },
  'capacitor-rated': (why) => [
    row('rating', `class ${why.values.at} is made for at most`, volts(why.values.value), weakest(why)),
  ],
  'touch-current': (why) => {
    const { state, kind, value } = why.values;
    const text = `${spaced(state)}, ${spaced(kind)}${clauseOf(why)}`;
    return [row('limit', text, `${plain(value * 1000)} mA`, weakest(why))];
  },
  'touch-current-limits': () => [],
  'temperature-limit': (why) => {
    const { thermalClass, state, value } = why.values;
    const text = `class ${thermalClass}, ${spaced(state)}${clauseOf(why)}`;
    return [row('limit', text, `${plain(value)} °C`, weakest(why))];
  },
  rule: (why) => [row('rule', ruleWords(why), '', weakest(why))],
  'touch-network': (why) => [row('body', `the network of a body${clauseOf(why)}`, '', weakest(why))],
};

/** A rule in words by its own short name and figures; its clause says where to read it. */
function ruleWords(why: BecauseOf<'rule'>): string {
  const named = Object.entries(why.values).filter(([key, value]) => key !== 'rule' && value !== true);
  const figures = named.map(([key, value]) => `${spaced(key)} ${String(value)}`).join(', ');
  return `${spaced(why.values.rule)}${clauseOf(why)}${figures === '' ? '' : `: ${figures}`}`;
}

const mm = (value: number): string => quantityWords(value, 'mm');

/** Before rounding a figure keeps its digits. */
const exact = (value: number, unit: string): string =>
  unit === 'mm' ? `${plain(value)} mm` : quantityWords(value, unit);

/** `17, clause 5.4.3: creepage` */
function heading(cites: Because['cites'], what: string): SheetRow {
  const [cite] = cites;
  const clause = cite?.clause ? `clause ${cite.clause}` : '';
  const place = [cite?.table ?? '', clause].filter((part) => part !== '').join(', ');
  return row('table', place === '' ? what : `${place}: ${what}`);
}

function titleOf(quantity: string, [cite]: Because['cites']): string {
  const column = columnOf(cite);
  return column === '' || quantity.endsWith(column) ? quantity : `${quantity}, ${column}`;
}

/** The part of a cell's name after the place on the first axis: `PD2 III`. */
const columnOf = (cite: Cite | undefined): string => cite?.cell.split(', ').slice(1).join(', ') ?? '';

function met({ quantity, unit, along, at, rowAt, row: figure }: MetRow, cites: Because['cites']) {
  const axis = axisUnit(along);
  const asked = quantityWords(at, axis);
  const text = at === rowAt ? asked : `${asked} takes the row ${quantityWords(Number(rowAt), axis)}`;
  return [
    heading(cites, titleOf(quantity, cites)),
    row('row', text, quantityWords(figure, unit), confirmedBy(cites[0])),
  ];
}

/** The line between two rows as a hand works it: `2.5 + 22/70 × 0.7 = 2.72`. */
function between(values: BetweenTwoRows, cites: Because['cites'], last: boolean): readonly SheetRow[] {
  const { quantity, unit, along, at, lowerAt, lower, upperAt, upper, raw, value, nextRow } = values;
  const axis = axisUnit(along);
  const share = `${plain(at - lowerAt)}/${plain(upperAt - lowerAt)}`;
  const rise = upper - lower;
  const worked = `${plain(lower)} ${rise < 0 ? '-' : '+'} ${share} × ${plain(Math.abs(rise))} = ${plain(raw)}`;
  const rounded = row('rounded', 'up, as the table says', quantityWords(value, unit), 'derived');
  return [
    heading(cites, titleOf(quantity, cites)),
    row('row', quantityWords(lowerAt, axis), quantityWords(lower, unit), confirmedBy(cites[0])),
    row('row', quantityWords(upperAt, axis), quantityWords(upper, unit), confirmedBy(cites[1])),
    row('between', `${quantityWords(at, axis)}: ${worked}`, exact(raw, unit), 'derived'),
    ...(raw === value ? [] : [rounded]),
    ...(last ? refused(nextRow, value, unit) : []),
  ];
}

/** A laboratory may take the next row instead. */
export function refused(nextRow: number | null, value: number, unit: string): readonly SheetRow[] {
  if (nextRow === null || nextRow <= value) return [];
  return [row(NEXT_ROW, 'where a laboratory does not interpolate', quantityWords(nextRow, unit), 'derived')];
}
