// Whether what a lesson asks for is done: every condition held against the judgement and the file, none against a stored answer.

import type { DesignFile } from '#model/schema/schema.ts';
import { fieldAt } from '#model/edit/edit-design.ts';
import { quantityField } from '#model/quantity/quantity-field.ts';
import { reaches } from '#standards/ladder.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import { unreachable } from '#units/unreachable.ts';
import { changedFields } from './changed-fields.ts';
import type { Goal } from './lesson-schema.ts';

export interface Attempt {
  readonly verdict: Verdict;
  readonly doc: DesignFile;
  /** The build that the lesson began with. */
  readonly start: DesignFile;
}

export const goalMet = (goals: readonly Goal[], attempt: Attempt): boolean =>
  goals.every((goal) => holds(goal, attempt));

function holds(goal: Goal, { verdict, doc, start }: Attempt): boolean {
  switch (goal.is) {
    case 'verdict':
      return verdict.verdict === goal.verdict;
    case 'pair-verdict':
      return pairOf(verdict, goal.between)?.verdict === goal.verdict;
    case 'needed':
      return pairOf(verdict, goal.between)?.needed === goal.grade;
    case 'achieved': {
      const achieved = pairOf(verdict, goal.between)?.achieved;
      return achieved !== undefined && reaches(achieved, goal.atLeast);
    }
    case 'no-spot':
      return verdict.weakSpots.every(({ kind }) => kind !== goal.kind);
    case 'field':
      return fieldHolds(goal, fieldAt(doc, goal.path));
    case 'unchanged':
      return JSON.stringify(fieldAt(doc, goal.path)) === JSON.stringify(fieldAt(start, goal.path));
    case 'changed':
      return changedFields(start, doc).length <= goal.atMost;
    default:
      return unreachable(goal);
  }
}

const pairOf = (verdict: Verdict, [a, b]: readonly [string, string]) =>
  verdict.pairs.find(({ between }) => between.includes(a) && between.includes(b));

/** Bounds are lengths, temperatures or voltages as one types them; a field that says no figure holds no bound. */
function fieldHolds(goal: Extract<Goal, { is: 'field' }>, value: unknown): boolean {
  if (goal.equals !== undefined && !sameValue(value, goal.equals)) return false;
  const found = figureOf(value);
  const most = goal.atMost === undefined ? null : figureOf(goal.atMost);
  const least = goal.atLeast === undefined ? null : figureOf(goal.atLeast);
  if (most === null && least === null) return true;
  return found !== null && (most === null || found <= most) && (least === null || found >= least);
}

const sameValue = (a: unknown, b: unknown): boolean => a === b || (figureOf(a) ?? a) === (figureOf(b) ?? b);

function figureOf(value: unknown): number | null {
  for (const dimension of ['length', 'temperature', 'voltsRms'] as const) {
    const read = quantityField(value, { dimension, aboveZero: false, mayBeUnknown: false });
    if (read.kind === 'known') return read.value;
  }
  return null;
}
