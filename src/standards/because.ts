// How a figure was found: a tree of steps, each with the numbers it used and where they were seen.
// Steps hold figures only; the sentences are made where the words are.

import type { JudgingSteps } from './steps/of-judging.ts';
import type { MaterialSteps } from './steps/of-materials.ts';
import type { StressSteps } from './steps/of-stress.ts';
import type { TableSteps } from './steps/of-tables.ts';

/**
 * How well a cell is confirmed. `memory` is always shown as such; a verdict resting on it says so. `secondary`, a second-hand
 * copy, counts as memory. `user`: confirmed by the user, from a copy of their own.
 */
export type Confirmed =
  'two-sources' | 'published' | 'secondary' | 'derived' | 'memory' | 'house-rule' | 'stated' | 'user';

/** Where one figure of a table or rule was seen. `sources` are keys of `tables/sources.json`. */
export interface Cite {
  readonly standard: string;
  readonly edition: string;
  readonly clause: string;
  /** Number of the table in the standard, or null for a rule in words. */
  readonly table: string | null;
  /** Id of the file that holds it: with `standard` and `cell` it names the figure. */
  readonly file: string;
  /** Which row and column, in our own short words, e.g. `250 V, PD2 III`. */
  readonly cell: string;
  readonly confirmed: Confirmed;
  readonly sources: readonly string[];
  /** Where the user's own copy says so, and when it was read. */
  readonly own?: { readonly clause: string; readonly on: string };
}

/** Every kind of step, with the figures that it holds; each has its words in `words/derivation`. */
export interface Steps extends TableSteps, MaterialSteps, StressSteps, JudgingSteps {}

export type StepKind = keyof Steps;

/** One step of a derivation. */
export interface BecauseOf<K extends StepKind> {
  readonly step: K;
  readonly values: Steps[K];
  readonly cites: readonly Cite[];
  readonly from: readonly Because[];
}

export type Because = { readonly [K in StepKind]: BecauseOf<K> }[StepKind];

/** A figure with its derivation. */
export interface Judged<T> {
  readonly value: T;
  readonly because: Because;
}

export const because = <K extends StepKind>(
  step: K,
  values: Steps[K],
  cites: readonly Cite[] = [],
  from: readonly Because[] = [],
): { readonly [Each in K]: BecauseOf<Each> }[K] =>
  ({ step, values, cites, from }) satisfies BecauseOf<K> as { [Each in K]: BecauseOf<Each> }[K];

/** A value whose derivation is worked out when it is first asked for: grading asks for many that nobody reads. */
export function judgedLater<T>(value: T, why: () => Because): Judged<T> {
  let known: Because | null = null;
  return {
    value,
    get because() {
      return (known ??= why());
    },
  };
}

export const judged = <T>(value: T, why: Because): Judged<T> => ({ value, because: why });

/** Every step of a derivation, its own first, depth first. */
export const becauseSteps = (why: Because): readonly Because[] => [why, ...why.from.flatMap(becauseSteps)];

/** All citations of a derivation, its own first, depth first. */
export function citesOf(why: Because): readonly Cite[] {
  return [...why.cites, ...why.from.flatMap(citesOf)];
}

const RANK: readonly Confirmed[] = [
  'memory',
  'secondary',
  'house-rule',
  'derived',
  'stated',
  'user',
  'published',
  'two-sources',
];

/** The weakest confirmation that a derivation rests on; `stated` where it cites nothing. */
export function weakestConfirmed(why: Because): Confirmed {
  const all = citesOf(why).map((cite) => cite.confirmed);
  return RANK.find((rank) => all.includes(rank)) ?? 'stated';
}
