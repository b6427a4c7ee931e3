// Everything that is found of one design, and the only place where it meets: the verdict, the sections it was found on,
// what stands across every pair. Whoever tells, draws or prints it gets it from here and judges nothing again.

import type { Design } from '#model/design.ts';
import type { FieldReport } from './field/field-report.ts';
import { judge, type Judgement } from '#judge/judging/judge.ts';
import { PathCache } from './paths/path-cache.ts';
import { fieldCapacitances } from '#judge/field/field-capacitances.ts';
import { stressReport, type Stressed, type StressReport } from './study/stress-report.ts';

export interface Study extends Stressed {
  /** Null where it was not solved: it takes seconds, and whoever wants it asks `field/field-of.ts`. */
  readonly field: FieldReport | null;
}

/** Throws where the rule book does not exist: reading the file has refused it. `cache` may live from call to call. */
export const study = (design: Design, cache: PathCache = new PathCache()): Study =>
  studyOf(design, judge(design, cache));

/** What was judged elsewhere, with the rest that follows from it; with the field of the build, where that was solved. */
export function studyOf(design: Design, judgement: Judgement, field: FieldReport | null = null): Study {
  let stress: StressReport | null = null;
  return {
    ...judgement,
    field,
    get stress() {
      const found = field === null ? null : fieldCapacitances(design, field);
      return (stress ??= stressReport(design, judgement, found ?? undefined));
    },
  };
}
