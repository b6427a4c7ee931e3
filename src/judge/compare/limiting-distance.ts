// The one distance that limits a whole build: of all pairs the one with the least part of what is asked of it.

import type { Verdict } from '#judge/verdict/verdict.ts';
import type { Metric } from '#units/terms.ts';

export interface LimitingDistance {
  readonly between: readonly [string, string];
  readonly metric: Metric;
  /** mm. */
  readonly length: number;
  readonly required: number;
}

/** Null where no path of a known length limits any pair. */
export function limitingDistance({ pairs }: Verdict): LimitingDistance | null {
  const all = pairs.flatMap(({ between, limiting, required: asked }): readonly LimitingDistance[] => {
    if (asked === null || limiting === null || limiting.metric === 'bridge') return [];
    const { metric, length, required } = limiting;
    return length === null || required === null || required === 0
      ? []
      : [{ between, metric, length, required }];
  });
  return [...all].sort((a, b) => a.length / a.required - b.length / b.required)[0] ?? null;
}
