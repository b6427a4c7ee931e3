// Compares a verdict with the known answers of a case; each case carries its arithmetic in `as`.

import type { Answer, Grade, Metric, Verdict } from '#judge/verdict/verdict.ts';

export interface Case {
  readonly id: string;
  /** What the build is, and how its figures are found by hand. */
  readonly says: string;
  readonly as: string;
  readonly design: unknown;
  readonly expect: readonly Expected[];
}

export interface Expected {
  readonly overall?: Answer;
  readonly pair?: readonly [string, string];
  readonly achieved?: Grade | readonly Grade[];
  readonly verdict?: Answer;
  readonly metric?: Metric;
  readonly plies?: number;
  /** Null: there is no path. */
  readonly length?: number | null;
  readonly tol?: number;
  readonly clearance?: Readonly<Record<string, number>>;
  readonly creepage?: Readonly<Record<string, number>>;
  readonly fitHeight?: number;
  readonly weakSpot?: string;
}

/** One sentence for every answer that differs; empty where all agree. */
export function complaints(known: Case, verdict: Verdict): readonly string[] {
  return known.expect.flatMap((expected) => [
    ...overall(expected, verdict),
    ...ofPair(expected, verdict),
    ...ofSpot(expected, verdict),
  ]);
}

function overall({ overall: answer, fitHeight, tol }: Expected, verdict: Verdict): readonly string[] {
  const { used } = verdict.fit.height;
  return [
    ...differs(
      answer === undefined || verdict.verdict === answer,
      `verdict ${verdict.verdict}, expected ${answer}`,
    ),
    ...differs(fitHeight === undefined || near(used, fitHeight, tol), `fit ${used}, expected ${fitHeight}`),
  ];
}

function ofPair(expected: Expected, verdict: Verdict): readonly string[] {
  if (expected.pair === undefined) return [];
  const name = expected.pair.join('-');
  const pair = verdict.pairs.find(({ between }) => sameIds(between, expected.pair ?? []));
  if (pair === undefined) return [`no pair ${name}`];
  const grades = expected.achieved === undefined ? null : [expected.achieved].flat();
  return [
    ...differs(
      grades?.includes(pair.achieved) ?? true,
      `${name} reaches ${pair.achieved}, expected ${grades?.join()}`,
    ),
    ...differs(
      expected.verdict === undefined || pair.verdict === expected.verdict,
      `${name} ${pair.verdict}, expected ${expected.verdict}`,
    ),
    ...ofPath(expected, pair),
    ...ofRequired(expected, pair),
  ];
}

function ofPath(expected: Expected, pair: Verdict['pairs'][number]): readonly string[] {
  const { metric, plies, length, tol } = expected;
  if (metric === undefined) return [];
  const path = pair.paths.find((each) => each.metric === metric && each.plies === plies);
  if (path === undefined) return [`no ${metric} path through ${plies} plies`];
  const agrees =
    length === null || length === undefined ? path.length === null : near(path.length, length, tol);
  return differs(agrees, `${metric} through ${plies} plies ${path.length}, expected ${length}`);
}

function ofRequired(expected: Expected, pair: Verdict['pairs'][number]): readonly string[] {
  return (['clearance', 'creepage'] as const).flatMap((metric) =>
    Object.entries(expected[metric] ?? {}).flatMap(([grade, length]) => {
      const found = pair.required?.[metric][grade as 'basic' | 'reinforced'] ?? null;
      return differs(near(found, length, 0.001), `asked ${metric} ${grade} ${found}, expected ${length}`);
    }),
  );
}

function ofSpot({ weakSpot, pair }: Expected, { weakSpots }: Verdict): readonly string[] {
  if (weakSpot === undefined) return [];
  const found = weakSpots.some(
    ({ kind, between }) =>
      kind === weakSpot && (pair === undefined || (between !== null && sameIds(between, pair))),
  );
  return differs(found, `no weak spot ${weakSpot}, there are ${weakSpots.map(({ kind }) => kind).join()}`);
}

const differs = (agrees: boolean, says: string): readonly string[] => (agrees ? [] : [says]);

const sameIds = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every((id) => b.includes(id));

const near = (found: number | null, expected: number, tolerance = 0): boolean =>
  found !== null && Math.abs(found - expected) <= tolerance;
