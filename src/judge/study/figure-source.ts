// Where an asked distance comes from: the row or the two rows of the table that governs it, and what was done to them
// since. Read from its derivation, so that it can be told in one short sentence.

import {
  becauseSteps,
  type Because,
  type Cite,
  type Confirmed,
  weakestConfirmed,
} from '#standards/because.ts';
import type { Column } from '#units/terms.ts';

export interface FigureSource {
  readonly standard: string;
  readonly table: string | null;
  readonly clause: string;
  readonly governs: 'rms' | 'high-frequency' | 'clearance' | 'withstand' | 'rule';
  /** Rows that were read; one where it is met or no line is drawn. Volts. */
  readonly rows: readonly number[];
  /** With what it was entered. */
  readonly at: number;
  readonly done: readonly ('doubled' | 'rounded' | 'altitude' | 'pollution' | 'added' | 'raised')[];
  readonly confirmed: Confirmed;
}

/** `why`: of both columns. */
export function figureSource(why: Because, column: Column): FigureSource | null {
  const top = why.from.find((one) => isOf(one, column));
  return top === undefined ? null : sourceOf(top);
}

const isOf = ({ step, values }: Because, column: Column): boolean =>
  (step === 'required-creepage' || step === 'required-clearance') && values.column === column;

function sourceOf(top: Because): FigureSource | null {
  const governing = governingOf(top);
  const steps = becauseSteps(governing);
  const row = steps.find(({ step }) => step === 'table-value' || step === 'high-frequency-value');
  const cite = row?.cites[0] ?? citeIn(steps);
  if (cite === undefined) return null;
  return {
    standard: cite.standard,
    table: cite.table,
    clause: cite.clause,
    governs: governs(top, row),
    ...rowsOf(row),
    done: doneTo(top, steps),
    confirmed: weakestConfirmed(governing),
  };
}

const citeIn = (steps: readonly Because[]): Cite | undefined => steps.flatMap(({ cites }) => cites)[0];

/** The branch of the tree that gave the figure: the largest of a clearance, what governs of a creepage. */
function governingOf(top: Because): Because {
  if (top.step === 'required-creepage') {
    const { governs: by } = top.values;
    if (by === 'clearance') {
      const clearance = top.from.find(({ step }) => step === 'required-clearance');
      return clearance === undefined ? top : governingOf(clearance);
    }
    return (by === 'high-frequency' ? top.from[1] : top.from[0]) ?? top;
  }
  if (top.step !== 'required-clearance') return top;
  const { largest } = top.values;
  const own = top.from.find((one) => lengthOf(one) === largest);
  return own ?? top.from[0] ?? top;
}

/** Millimetres that a branch gave; null where its step is no length. */
function lengthOf(why: Because): number | null {
  switch (why.step) {
    case 'table-value':
    case 'reinforced-factor':
    case 'pollution-factor':
    case 'additional-clearance':
    case 'operator-row':
      return why.values.value;
    case 'peak-raised':
      return Math.max(...why.from.map((one) => lengthOf(one) ?? 0));
    default:
      return null;
  }
}

function governs(top: Because, row: Because | undefined): FigureSource['governs'] {
  if (row === undefined) return 'rule';
  if (row.step === 'high-frequency-value') return 'high-frequency';
  if (top.step === 'required-creepage' && top.values.governs !== 'rms') return top.values.governs;
  return top.step === 'required-creepage' ? 'rms' : 'withstand';
}

function rowsOf(row: Because | undefined): Pick<FigureSource, 'rows' | 'at'> {
  if (row?.step === 'high-frequency-value') return { rows: [row.values.row], at: row.values.peak };
  if (row?.step !== 'table-value') return { rows: [], at: 0 };
  const { values } = row;
  const rows = values.interpolated ? [values.lowerAt, values.upperAt] : [Number(values.rowAt)];
  return { rows, at: values.at };
}

function doneTo(top: Because, steps: readonly Because[]): FigureSource['done'] {
  const has = (step: Because['step']): boolean => steps.some((one) => one.step === step);
  const rounded = steps.some(
    ({ step, values }) => step === 'table-value' && values.interpolated && values.raw !== values.value,
  );
  const isHigh = top.step === 'required-clearance' && top.values.factor > 1;
  return [
    ...(has('impulse-raised') || has('impulse-step') || has('peak-raised') ? ['raised' as const] : []),
    ...(has('pollution-factor') ? ['pollution' as const] : []),
    ...(rounded ? ['rounded' as const] : []),
    ...(has('reinforced-factor') ? ['doubled' as const] : []),
    ...(has('additional-clearance') ? ['added' as const] : []),
    ...(isHigh ? ['altitude' as const] : []),
  ];
}
