// The parts that bridge a pair, each graded by the rule book.

import type { Required } from '#books/questions/required.ts';
import { mainsOf } from '#books/shared/mains.ts';
import type { BridgeQuestion, OpenKey } from '#books/shared/parts/bridge-grade.ts';
import { type Choice, isBest } from '#judge/assume/assumption.ts';
import { bridgeField } from '#judge/conductors/open-bridges.ts';
import { meansOf } from '#judge/grade/means.ts';
import type { PairQuestion } from '#judge/grade/path-requirement.ts';
import type { FoundBridge } from '#judge/paths/case-result.ts';
import type { Design } from '#model/design.ts';
import { isOutOfRange } from '#standards/tables/out-of-range.ts';
import type { PairStressResult } from '#stress/pair/pair-stress.ts';
import type { Judging } from './judging.ts';

export function bridgesOf(
  { book }: Pick<Judging, 'book'>,
  design: Design,
  choice: Choice,
  question: Pick<PairQuestion, 'between' | 'needed' | 'required' | 'places'>,
  stress: PairStressResult,
): readonly FoundBridge[] {
  const [a, b] = question.between;
  return design.bridges.flatMap((bridge, i) => {
    if (!bridge.between.includes(a) || !bridge.between.includes(b)) return [];
    const { rms, required } = question.places.bridges[i] ?? { rms: stress.rms, required: question.required };
    const isBestAt = (key: OpenKey): boolean => isBest(choice, bridgeField(i, key));
    const graded = book.part(bridge, {
      barrier: question.needed !== null,
      means: meansOf(design, choice, question.between),
      rms,
      mains: mainsOf(design.supply).value,
      category: design.supply.overvoltageCategory,
      required: bridgeReach(required),
      isBest: isBestAt,
    });
    return [{ kind: 'bridge', grade: graded.grade, bridge: graded }];
  });
}

/** Null where the book has no figure. */
function bridgeReach({ clearance, creepage: byGroup }: Required): BridgeQuestion['required'] {
  const creepage = byGroup('IIIb');
  const figures = [clearance.basic, clearance.reinforced, creepage.basic, creepage.reinforced];
  const values = figures.flatMap((figure) => (isOutOfRange(figure) ? [] : [figure.value]));
  if (values.length < 4) return null;
  return {
    clearance: { basic: values[0]!, reinforced: values[1]! },
    creepage: { basic: values[2]!, reinforced: values[3]! },
  };
}
