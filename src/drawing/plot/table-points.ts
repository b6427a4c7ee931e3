// Where a build stands in the plot of a table: for every pair whose asked distance was read from it, the value with which
// the judge entered it, the length that is built, and what is asked in the end.

import type { PairVerdict } from '#judge/verdict/pair.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import { becauseSteps } from '#standards/because.ts';
import { cellName, type TableFile } from '#standards/tables/table.ts';

export interface TablePoint {
  readonly between: readonly [string, string];
  readonly verdict: PairVerdict['verdict'];
  readonly at: number;
  /** The row's places on the axes after the first. */
  readonly places: readonly (number | string)[];
  /** Shortest way that goes through no solid, mm; null: there is none. */
  readonly built: number | null;
  readonly asked: number | null;
}

const METRICS = ['creepage', 'clearance'] as const;

export const tablePoints = (verdict: Verdict, file: TableFile): readonly TablePoint[] =>
  verdict.pairs.flatMap((pair) => METRICS.flatMap((metric) => pointOf(pair, metric, file)));

function pointOf(
  pair: PairVerdict,
  metric: (typeof METRICS)[number],
  file: TableFile,
): readonly TablePoint[] {
  const { required, needed, between, verdict, paths } = pair;
  if (required === null || file.quantity !== metric) return [];
  const column = needed === 'reinforced' || needed === 'double' ? 'reinforced' : 'basic';
  const { because: both } = required[metric];
  const own = both.from.find(({ values }) => 'column' in values && values.column === column) ?? both;
  const entered = becauseSteps(own).find(
    ({ step, cites }) =>
      step === 'table-value' &&
      cites.some((cite) => cite.file === file.id && cite.standard === file.standard),
  );
  if (entered?.step !== 'table-value') return [];
  const cell = entered.cites.find((cite) => cite.file === file.id)?.cell;
  const row = file.rows.find((each) => file.columns.some((name) => cellName(file, each, name) === cell));
  const places = row?.at.slice(1) ?? [];
  const built = paths.find((path) => path.metric === metric && path.plies === 0)?.length ?? null;
  return [{ between, verdict, at: entered.values.at, places, built, asked: required[metric][column] }];
}
