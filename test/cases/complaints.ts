// Compares a verdict with the known answers of a case; each case carries its arithmetic in `as`. Of a list of words any
// will do.

import type { Answer } from '#judge/verdict/answer.ts';
import type { Grade, Metric } from '#units/terms.ts';
import type { ToldPair, ToldVerdict } from '#words/told.ts';

export interface Case {
  readonly id: string;
  /** What the build is, and how its figures are found by hand. */
  readonly says: string;
  readonly as: string;
  readonly design: unknown;
  readonly expect: readonly Expected[];
}

type Any<T> = T | readonly T[];

export interface Expected {
  /** Field that the file is refused at, or one inside it. */
  readonly refused?: Any<string>;
  /** Either refused there, or the other answers hold. */
  readonly mayBeRefused?: Any<string>;
  readonly overall?: Any<Answer>;
  readonly pair?: readonly [string, string];
  readonly achieved?: Any<Grade>;
  readonly verdict?: Any<Answer>;
  /** A path limits the pair whatever the unknowns are. */
  readonly proven?: true;
  readonly metric?: Metric;
  readonly plies?: number;
  /** Null: there is no path. */
  readonly length?: number | null;
  readonly tol?: number;
  readonly clearance?: Readonly<Record<string, number>>;
  readonly creepage?: Readonly<Record<string, number>>;
  readonly testPeak?: number;
  readonly highFrequencyPeak?: number;
  readonly stress?: Readonly<Partial<Record<'rms' | 'peak', readonly [number, number]>>>;
  readonly fitHeight?: number;
  readonly weakSpot?: string;
  readonly firstSpot?: Any<string>;
  /** A field that is listed, and whether it decides. */
  readonly assumption?: Any<string>;
  readonly decides?: boolean;
  readonly noDecider?: true;
  /** A pattern in the kind or the words of a remark. */
  readonly remark?: string;
  readonly touchCurrent?: Answer;
  /** A pattern that the words under the verdict must not hold. */
  readonly headlineNot?: string;
}

/** One sentence for every answer that differs; empty where all agree. */
export function complaints(known: Case, verdict: ToldVerdict, headline: string): readonly string[] {
  return known.expect.flatMap((expected) => [
    ...ofWhole(expected, verdict),
    ...ofPair(expected, verdict),
    ...ofSpots(expected, verdict),
    ...ofAssumptions(expected, verdict),
    ...differs(
      expected.headlineNot === undefined || !new RegExp(expected.headlineNot, 'i').test(headline),
      `it tells of ${expected.headlineNot}: ${headline}`,
    ),
  ]);
}

/** Null where the case does not ask for it; the fields at which it may be refused otherwise. */
export const refusalOf = ({ expect }: Case): Any<string> | null =>
  expect.map(({ refused, mayBeRefused }) => refused ?? mayBeRefused).find((field) => field !== undefined) ??
  null;

export const mustBeRefused = ({ expect }: Case): boolean =>
  expect.some(({ refused }) => refused !== undefined);

/** A field, or one inside it. */
export const isAt = (wanted: Any<string>, field: string): boolean =>
  [wanted]
    .flat()
    .some((each) => field === each || field.startsWith(`${each}.`) || field.startsWith(`${each}[`));

function ofWhole(expected: Expected, verdict: ToldVerdict): readonly string[] {
  const { overall, fitHeight, tol, remark, touchCurrent } = expected;
  const { used } = verdict.fit.height;
  const found = (verdict as { touchCurrent?: { verdict: Answer } | null }).touchCurrent?.verdict;
  const told = verdict.remarks.map((each) => `${each.kind} ${each.says}`);
  return [
    ...differs(isOne(overall, verdict.verdict), `verdict ${verdict.verdict}, expected ${String(overall)}`),
    ...differs(fitHeight === undefined || near(used, fitHeight, tol), `fit ${used}, expected ${fitHeight}`),
    ...differs(isOne(touchCurrent, found), `touch current ${found}, expected ${touchCurrent}`),
    ...differs(
      remark === undefined || told.some((each) => new RegExp(remark, 'i').test(each)),
      `no remark ${remark}, there are ${told.join('; ')}`,
    ),
  ];
}

function ofPair(expected: Expected, verdict: ToldVerdict): readonly string[] {
  if (expected.pair === undefined) return [];
  const name = expected.pair.join('-');
  const pair = verdict.pairs.find(({ between }) => sameIds(between, expected.pair ?? []));
  if (pair === undefined) return [`no pair ${name}`];
  const { achieved, verdict: answer, proven } = expected;
  return [
    ...differs(
      isOne(achieved, pair.achieved),
      `${name} reaches ${pair.achieved}, expected ${String(achieved)}`,
    ),
    ...differs(isOne(answer, pair.verdict), `${name} ${pair.verdict}, expected ${String(answer)}`),
    ...differs(proven === undefined || pair.proven !== null, `${name} is not proven`),
    ...ofPath(expected, pair),
    ...ofRequired(expected, pair),
    ...ofStress(expected, pair),
  ];
}

function ofPath(expected: Expected, pair: ToldPair): readonly string[] {
  const { metric, plies, length, tol } = expected;
  if (metric === undefined) return [];
  const path = pair.paths.find((each) => each.metric === metric && each.plies === plies);
  if (path === undefined) return [`no ${metric} path through ${plies} plies`];
  const agrees =
    length === null || length === undefined ? path.length === null : near(path.length, length, tol);
  return differs(agrees, `${metric} through ${plies} plies ${path.length}, expected ${length}`);
}

function ofRequired(expected: Expected, { required }: ToldPair): readonly string[] {
  const { testPeak, highFrequencyPeak, tol } = expected;
  const figure = (name: string, found: number | null, wanted: number | undefined, within: number) =>
    differs(wanted === undefined || near(found, wanted, within), `${name} ${found}, expected ${wanted}`);
  return [
    ...(['clearance', 'creepage'] as const).flatMap((metric) =>
      Object.entries(expected[metric] ?? {}).flatMap(([grade, length]) =>
        figure(`asked ${metric} ${grade}`, required?.[metric][grade as 'basic'] ?? null, length, 0.001),
      ),
    ),
    ...figure('test peak', required?.test.peak ?? null, testPeak, tol ?? 1),
    ...figure('high-frequency peak', required?.test.highFrequencyPeak ?? null, highFrequencyPeak, tol ?? 5),
  ];
}

const ofStress = ({ stress }: Expected, pair: ToldPair): readonly string[] =>
  (['rms', 'peak'] as const).flatMap((quantity) => {
    const [least, most] = stress?.[quantity] ?? [-Infinity, Infinity];
    const found = pair.stress[quantity];
    return differs(found >= least && found <= most, `${quantity} ${found}, expected ${least} to ${most}`);
  });

function ofSpots({ weakSpot, firstSpot, pair }: Expected, { weakSpots }: ToldVerdict): readonly string[] {
  const here = weakSpots.filter(
    ({ between }) => pair === undefined || (between !== null && sameIds(between, pair)),
  );
  const kinds = here.map(({ kind }) => kind);
  return [
    ...differs(
      weakSpot === undefined || kinds.some((kind) => kind === weakSpot),
      `no weak spot ${weakSpot}, there are ${kinds.join()}`,
    ),
    ...differs(isOne(firstSpot, kinds[0]), `first weak spot ${kinds[0]}, expected ${String(firstSpot)}`),
  ];
}

function ofAssumptions(expected: Expected, { assumptions }: ToldVerdict): readonly string[] {
  const { assumption, decides, noDecider } = expected;
  const deciding = assumptions.filter((each) => each.decides).map(({ field }) => field);
  const none = differs(noDecider === undefined || deciding.length === 0, `${deciding.join()} decide`);
  if (assumption === undefined) return none;
  const listed = assumptions.filter(({ field }) => isAt(assumption, field));
  if (listed.length === 0) return [...none, `no assumption ${String(assumption)}`];
  const agrees = decides === undefined || listed.some((each) => each.decides === decides);
  return [...none, ...differs(agrees, `${listed[0]!.field} decides ${listed[0]!.decides}`)];
}

const differs = (agrees: boolean, says: string): readonly string[] => (agrees ? [] : [says]);

const isOne = <T>(wanted: Any<T> | undefined, found: T | undefined): boolean =>
  wanted === undefined || [wanted].flat().includes(found as T);

const sameIds = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every((id) => b.includes(id));

const near = (found: number | null, expected: number, tolerance = 0): boolean =>
  found !== null && Math.abs(found - expected) <= tolerance;
