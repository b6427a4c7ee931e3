// What is told first of a pair: where it falls short whatever the unknowns are, what limits it then, for that was measured;
// else what limits it at worst.

import type { Limiting, PairVerdict } from '#judge/verdict/pair.ts';

export function leadingPath({ proven, limiting }: Pick<PairVerdict, 'proven' | 'limiting'>): Limiting | null {
  if (proven === null) return limiting;
  if ('points' in proven) return proven;
  const nowhere = { section: null, points: [], legs: [], plies: 0, over: [], conditions: [] };
  const { grade, because } = proven;
  if ('outside' in proven) {
    const { metric, length, required, what } = proven;
    return {
      ...nowhere,
      metric,
      length,
      required,
      grade,
      section: 'outside',
      outside: what,
      bridge: null,
      because,
    };
  }
  const none = { length: null, required: null, outside: [] };
  return { ...nowhere, ...none, metric: 'bridge', grade, bridge: proven.bridge, because };
}

/** What is proven is not what limits at worst: something is not known, and it changes nothing. */
export function isWhatever(pair: PairVerdict): boolean {
  const [proven, limiting] = [pair.proven && leadingPath(pair), pair.limiting];
  if (!proven || !limiting) return false;
  const told = ({ metric, length, required, grade, bridge }: Limiting) =>
    JSON.stringify([metric, length, required, grade, bridge]);
  return told(proven) !== told(limiting);
}
