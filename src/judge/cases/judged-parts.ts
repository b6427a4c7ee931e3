// What the judge made of every part that bridges two circuits and of every distance outside the window: the same grades
// that its pairs rest on, at worst and with every unknown at its best.

import type { Design } from '#model/design.ts';
import { bridgesOf } from '#judge/once/pair-bridges.ts';
import type { Judging } from '#judge/once/judging.ts';
import { BEST, WORST } from '#judge/assume/assumption.ts';
import type { Both } from '#books/questions/required.ts';
import type { PairOutcome } from '#judge/paths/case-result.ts';
import type { Judged } from '#standards/because.ts';
import type { Grade, MaterialGroup } from '#units/terms.ts';
import { isOutOfRange, type OutOfRange } from '#standards/tables/out-of-range.ts';
import type { BridgeGrade, Reach } from '#books/shared/parts/bridge-grade.ts';
import { gradeOfOutside, type OutsideGrade } from '#books/shared/parts/outside-grade.ts';
import type { Nm, VoltsPeak, VoltsRms } from '#units/quantity.ts';

/** At worst a computed voltage is as much higher as an estimate may be off, and unknowns count as no safety part. */
export interface JudgedBridge {
  readonly worst: BridgeGrade;
  readonly best: BridgeGrade;
}

export interface JudgedOutside extends OutsideGrade {
  readonly needed: Grade;
}

/** What a pair was judged at: an estimate at its upper end, and what reaches it of the mains. */
export interface JudgedAt extends Pick<PairOutcome, 'between' | 'needed' | 'transients'> {
  readonly rms: VoltsRms;
  readonly peak: VoltsPeak;
}

export interface JudgedParts {
  readonly judgedAt: readonly JudgedAt[];
  readonly bridges: readonly JudgedBridge[];
  /** Of pairs that ask for something, and only from circuit to circuit: others are pieces of longer paths. */
  readonly outside: readonly JudgedOutside[];
}

/** `worst` and `best`: the same pairs as the judge found them. */
export function judgedParts(
  judging: Pick<Judging, 'book'>,
  design: Design,
  worst: readonly PairOutcome[],
  best: readonly PairOutcome[],
): JudgedParts {
  return {
    judgedAt: worst.map(({ between, needed, transients, stress: { rms, peak } }) => ({
      between,
      needed,
      transients,
      rms,
      peak,
    })),
    bridges: worst.flatMap((pair, i) => {
      const atBest = bridgesOf(judging, design, BEST, best[i]!, best[i]!.stress);
      return bridgesOf(judging, design, WORST, pair, pair.stress).map((found, k) => ({
        worst: found.bridge,
        best: atBest[k]!.bridge,
      }));
    }),
    outside: worst.flatMap((pair) => outsideOf(design, pair)),
  };
}

function outsideOf(
  design: Design,
  { between: pair, needed, required: ofPair, places }: PairOutcome,
): readonly JudgedOutside[] {
  if (needed === null) return [];
  return design.outside
    .map((entry, i) => ({ entry, required: places.outside[i]?.required ?? ofPair }))
    .filter(({ entry: { between } }) => pair.every((id) => between.includes(id)))
    .map(({ entry, required }) => {
      const group: MaterialGroup = typeof entry.materialGroup === 'string' ? entry.materialGroup : 'IIIb';
      const [clearance, creepage] = [reachOf(required.clearance), reachOf(required.creepage(group))];
      const reach = clearance && creepage ? { clearance, creepage } : null;
      return { ...gradeOfOutside(entry, reach), needed };
    });
}

/** Null where the book has no figure: then nothing reaches it. */
const reachOf = ({ basic, reinforced }: Both<Judged<Nm> | OutOfRange>): Reach | null =>
  isOutOfRange(basic) || isOutOfRange(reinforced)
    ? null
    : { basic: basic.value, reinforced: reinforced.value };
