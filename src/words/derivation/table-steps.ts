// What the steps of the tables say: rows met, lines between them, factors, rounding.

import type { Because, Cite } from '#standards/because.ts';
import { frequency, lengthUp, plain } from '#words/text/number-words.ts';
import { axisUnit, quantityWords } from '#words/text/quantity-words.ts';
import { clauseOf, confirmedBy, num, row, weakest, word, type SheetRow, type StepRows } from './sheet-row.ts';

export const tableSteps: Readonly<Record<string, StepRows>> = {
  'table-value': (why) => (why.values['interpolated'] === true ? between(why) : single(why)),
  'factor-beyond-table': (why) => [
    heading(why, 'above its last row'),
    row('factor', product(why, 'at', 'factor'), plain(num(why, 'value')), weakest(why)),
  ],
  'pollution-factor': (why) => {
    const text = `degree ${word(why, 'pd')}: ${product(why, 'before', 'factor')} = ${plain(num(why, 'product'))}, up`;
    return [row('pollution', text, mm(num(why, 'value')), weakest(why))];
  },
  'reinforced-factor': (why) => {
    const text = `${plain(num(why, 'factor'))} × basic ${lengthUp(num(why, 'basic'))}`;
    return [row('reinforced', text, mm(num(why, 'value')), weakest(why))];
  },
  'high-frequency-value': (why) => [
    heading(why, `creepage at ${frequency(num(why, 'frequency'))}`),
    row('row', `${plain(num(why, 'row'))} V peak`, exact(num(why, 'raw'), 'mm'), weakest(why)),
  ],
  'not-high-frequency': (why) => {
    const text = `${frequency(num(why, 'frequency'))}: the tables for high frequency are not asked`;
    return [row('frequency', text, '', null)];
  },
  'not-needed': (why) => [row('over 30 kHz', 'the ordinary table governs at this peak', '', weakest(why))],
  'out-of-range': (why) => [row('table', `${word(why, 'quantity')}: no figure for this`, '', null)],
  'high-frequency-test': (why) => {
    const text = `${product(why, 'factor', 'peak')} V ÷ ${plain(num(why, 'reduction'))}`;
    return [row('over 30 kHz', text, `${Math.ceil(num(why, 'value'))} V peak`, 'derived')];
  },
  'field-reduction': (why) => {
    const text = `${word(why, 'material')} of ${word(why, 'thickness')} mm at ${frequency(num(why, 'frequency'))}`;
    return [row('film', text, plain(num(why, 'value')), weakest(why))];
  },
  'bridging-width': (why) => {
    const text = `pollution degree ${word(why, 'pd')}: gaps under this are bridged`;
    return [row('X', text, mm(num(why, 'value')), weakest(why))];
  },
  'needed-grade': (why) => {
    const text = `${word(why, 'a')} to ${word(why, 'b')}${clauseOf(why)}`;
    return [row('asked', text, word(why, 'value') || 'nothing', weakest(why))];
  },
  'wire-layers': (why) => {
    const text = `${word(why, 'at')} certified layers${clauseOf(why)}`;
    return [row('wire', text, word(why, 'value'), weakest(why))];
  },
};

const mm = (value: number): string => quantityWords(value, 'mm');

/** Before rounding a figure keeps its digits. */
const exact = (value: number, unit: string): string =>
  unit === 'mm' ? `${plain(value)} mm` : quantityWords(value, unit);

const product = (why: Because, a: string, b: string): string =>
  `${plain(num(why, a))} × ${plain(num(why, b))}`;

/** `17, clause 5.4.3: creepage` */
function heading(why: Because, what: string): SheetRow {
  const cite = why.cites[0];
  const clause = cite?.clause ? `clause ${cite.clause}` : '';
  const place = [cite?.table ?? '', clause].filter((part) => part !== '').join(', ');
  return row('table', place === '' ? what : `${place}: ${what}`, '', null);
}

function titleOf(why: Because): string {
  const [quantity, column] = [word(why, 'quantity'), columnOf(why.cites[0])];
  return column === '' || quantity.endsWith(column) ? quantity : `${quantity}, ${column}`;
}

/** The part of a cell's name after the place on the first axis: `PD2 III`. */
const columnOf = (cite: Cite | undefined): string => cite?.cell.split(', ').slice(1).join(', ') ?? '';

function single(why: Because): readonly SheetRow[] {
  const along = axisUnit(word(why, 'along'));
  const [at, rowAt] = [num(why, 'at'), num(why, 'rowAt')];
  const asked = quantityWords(at, along);
  const text = at === rowAt ? asked : `${asked} takes the row ${quantityWords(rowAt, along)}`;
  const figure = quantityWords(num(why, 'row'), word(why, 'unit'));
  return [heading(why, titleOf(why)), row('row', text, figure, confirmedBy(why.cites[0]))];
}

function between(why: Because): readonly SheetRow[] {
  const [unit, along] = [word(why, 'unit'), axisUnit(word(why, 'along'))];
  const at = (key: string): string => quantityWords(num(why, key), along);
  const figure = (key: string): string => quantityWords(num(why, key), unit);
  const [low, high] = [num(why, 'lowerAt'), num(why, 'upperAt')];
  const share = `${plain(num(why, 'at') - low)} of ${plain(high - low)} from row to row`;
  const rounded = row('rounded', 'up, as the table says', figure('value'), 'derived');
  return [
    heading(why, titleOf(why)),
    row('row', at('lowerAt'), figure('lower'), confirmedBy(why.cites[0])),
    row('row', at('upperAt'), figure('upper'), confirmedBy(why.cites[1])),
    row('between', `${at('at')}: ${share}`, exact(num(why, 'raw'), unit), 'derived'),
    ...(num(why, 'raw') === num(why, 'value') ? [] : [rounded]),
  ];
}
