// What is worth saying of a working voltage that both the file and the converter give, where they differ.

import type { PairOutcome } from '#judge/paths/case-result.ts';
import type { StressNote } from '#stress/pair/pair-stress.ts';
import type { Remark } from '#judge/verdict/remark.ts';

export const voltageRemarks = (
  pairs: readonly PairOutcome[],
  nameOf: (circuit: string) => string,
): readonly Remark[] =>
  pairs.flatMap(({ between: [a, b], stress }) =>
    stress.notes.flatMap((note) => remarkOf([nameOf(a), nameOf(b)], note)),
  );

function remarkOf(names: readonly [string, string], note: StressNote): readonly Remark[] {
  if (note.kind !== 'stated-below-computed' && note.kind !== 'measured-unlike-computed') return [];
  const { kind, quantity, given, computed } = note;
  return [{ kind, names, quantity, given, computed }];
}
