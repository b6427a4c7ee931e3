// Everything that is found of one design, and the only place where it meets: the verdict, the sections it was found on,
// what stands across every pair. Whoever tells, draws or prints it gets it from here and judges nothing again.

import type { Design } from '#model/design.ts';
import { bookOf } from '#books/book-of.ts';
import type { FieldReport } from './field/field-report.ts';
import { judge, judgePlain, type Judgement, type PlainJudgement } from '#judge/judging/judge.ts';
import { PathCache } from './paths/path-cache.ts';
import { fieldCapacitances } from '#judge/field/field-capacitances.ts';
import { stressReport, type Stressed, type StressReport } from './study/stress-report.ts';

export type Study = Stressed;

/** Throws where the rule book does not exist: reading the file has refused it. `cache` may live from call to call. */
export const study = (design: Design, cache: PathCache = new PathCache()): Study =>
  studyOf(design, judge(design, cache));

/** Judged with the capacitances that the field found; where it found none, with the estimate. */
export const judgedByField = (
  design: Design,
  field: FieldReport,
  cache: PathCache = new PathCache(),
): PlainJudgement => judgePlain(design, cache, bookOf(design), fieldCapacitances(design, field));

/** What was judged elsewhere, with the rest that follows from it. */
export function studyOf(design: Design, judgement: Judgement): Study {
  let stress: StressReport | null = null;
  return {
    ...judgement,
    get stress() {
      return (stress ??= stressReport(design, judgement));
    },
  };
}
