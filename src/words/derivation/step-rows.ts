// What each step of a derivation says on the worked sheet, by its key. A step without an entry prints its figures
// by name, so that nothing a rule worked out is ever left out.

import type { Because } from '#standards/because.ts';
import { converterSteps } from './converter-steps.ts';
import { plain } from '#words/text/number-words.ts';
import { quantityWords } from '#words/text/quantity-words.ts';
import {
  clauseOf,
  NEXT_ROW,
  num,
  row,
  spaced,
  weakest,
  word,
  type SheetRow,
  type StepRows,
} from './sheet-row.ts';
import { rulesSteps } from './rules-steps.ts';
import { stressSteps } from './stress-steps.ts';
import { tableSteps } from './table-steps.ts';

const STEPS: Readonly<Record<string, StepRows>> = {
  ...tableSteps,
  ...stressSteps,
  ...converterSteps,
  ...rulesSteps,
  rule: (why) => [row('rule', ruleWords(why), '', weakest(why))],
};

/** `last`: the step is the outermost one, whose figure is what was asked. */
export function stepRows(why: Because, last: boolean): readonly SheetRow[] {
  const rows = (STEPS[why.step] ?? generic)(why);
  return last ? [...rows, ...refusedRow(why)] : rows;
}

function refusedRow(why: Because): readonly SheetRow[] {
  const next = why.values['nextRow'];
  if (typeof next !== 'number' || next <= num(why, 'value')) return [];
  const figure = quantityWords(next, word(why, 'unit') || 'mm');
  return [row(NEXT_ROW, 'where a laboratory does not interpolate', figure, 'derived')];
}

/** A rule in words by its own short name and figures; its clause says where to read it. */
function ruleWords(why: Because): string {
  const named = Object.entries(why.values).filter(([key, value]) => key !== 'rule' && value !== true);
  const figures = named.map(([key, value]) => `${spaced(key)} ${String(value)}`).join(', ');
  return `${spaced(word(why, 'rule'))}${clauseOf(why)}${figures === '' ? '' : `: ${figures}`}`;
}

function generic(why: Because): readonly SheetRow[] {
  const { value, ...others } = why.values;
  const text = Object.entries(others)
    .filter(([, each]) => each !== null && each !== '')
    .map(([key, each]) => `${spaced(key)} ${shown(each)}`)
    .join(', ');
  return [row(spaced(why.step), `${text}${clauseOf(why)}`, shown(value ?? ''), weakest(why))];
}

const shown = (value: string | number | boolean | null): string => {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return typeof value === 'number' ? plain(value) : (value ?? '');
};
