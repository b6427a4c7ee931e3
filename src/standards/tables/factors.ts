// Factors that a table carries beside its rows: pollution degree (before the rounding) and reinforced (after it).

import { inMm, nm, type Nm } from '#units/quantity.ts';

import { because, judged, type Because, type Judged } from '#standards/because.ts';
import type { Column, PollutionDegree } from '#units/terms.ts';
import { nextRowOf } from './next-row.ts';
import { roundUp, roundingOf } from './rounding.ts';
import type { Table } from './table.ts';

/** `raw` is what the table gave before its rounding; `value` after it, which holds where the factor is 1. */
export function byPollution(
  table: Table,
  found: { readonly raw: number; readonly value?: number; readonly because: Because },
  pd: PollutionDegree,
): Judged<Nm> {
  const factor = table.factors.get(`PD ${pd}`);
  if (factor === undefined) throw new Error(`${table.file.id} has no factor for PD ${pd}`);
  if (factor.value === 1 && found.value !== undefined) return judged(nm(found.value), found.because);
  const product = nm(Math.round(found.raw * factor.value));
  const value = roundUp(product, roundingOf(table));
  const values = {
    pd,
    factor: factor.value,
    before: inMm(nm(Math.round(found.raw))),
    product: inMm(product),
    value: inMm(value),
  };
  return judged(value, because('pollution-factor', values, [factor.cite], [found.because]));
}

/** Tables with a basic column only: reinforced is the factor times the rounded basic distance. */
export function byGrade(table: Table, basic: Judged<Nm>, column: Column): Judged<Nm> {
  if (column === 'basic') return basic;
  const factor = table.factors.get('reinforced');
  if (factor === undefined) throw new Error(`${table.file.id} has no factor for reinforced`);
  const value = nm(Math.round(basic.value * factor.value));
  const values = {
    factor: factor.value,
    basic: inMm(basic.value),
    value: inMm(value),
    nextRow: nextRow(basic.because, factor.value),
  };
  return judged(value, because('reinforced-factor', values, [factor.cite], [basic.because]));
}

/** The next row that a laboratory may take, carried through the factor. */
function nextRow(why: Because, factor: number): number | null {
  const row = nextRowOf(why);
  return row === null ? null : inMm(nm(Math.round(row * factor * 1e6)));
}
