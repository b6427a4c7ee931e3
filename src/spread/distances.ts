// How the distance that limits each pair is spread over the measured pieces, against what is asked of it.

import type { Metric } from '#units/terms.ts';
import type { MeasuredPiece } from './spread-part.ts';

export interface Distances {
  readonly between: readonly [string, string];
  readonly metric: Metric;
  /** mm; null where the rule book has no figure. */
  readonly required: number | null;
  /** In so many pieces this distance limits the pair. */
  readonly draws: number;
  readonly least: number;
  readonly most: number;
  /** Length by the part of pieces below it; only where at least five pieces lie beyond. */
  readonly quantiles: Readonly<Record<string, number>>;
  /** Every length, shortest first. */
  readonly lengths: readonly number[];
}

const PARTS = [0.001, 0.01, 0.05, 0.25, 0.5, 0.75, 0.95, 0.99, 0.999];
const LEAST_BEYOND = 5;

export function distancesOf(measured: readonly MeasuredPiece[]): readonly Distances[] {
  const groups = new Map<
    string,
    Pick<Distances, 'between' | 'metric' | 'required'> & { lengths: number[] }
  >();
  for (const { judged } of measured)
    for (const { between, metric, length, required } of judged.pairs) {
      if (metric === null || length === null) continue;
      const key = [...between, metric, required].join('\n');
      const group = groups.get(key) ?? { between, metric, required, lengths: [] };
      groups.set(key, group);
      group.lengths.push(length);
    }
  return [...groups.values()].map(({ lengths, ...group }) => {
    const sorted = lengths.sort((a, b) => a - b);
    return {
      ...group,
      draws: sorted.length,
      least: sorted[0]!,
      most: sorted.at(-1)!,
      quantiles: quantilesOf(sorted),
      lengths: sorted,
    };
  });
}

function quantilesOf(sorted: readonly number[]): Readonly<Record<string, number>> {
  const told = PARTS.filter((part) => Math.min(part, 1 - part) * sorted.length >= LEAST_BEYOND);
  return Object.fromEntries(told.map((part) => [String(part), quantile(sorted, part)]));
}

/** Between the two nearest of the sorted lengths. */
function quantile(sorted: readonly number[], part: number): number {
  const at = part * (sorted.length - 1);
  const [low, high] = [sorted[Math.floor(at)]!, sorted[Math.ceil(at)]!];
  return Math.round((low + (high - low) * (at - Math.floor(at))) * 1e6) / 1e6;
}
