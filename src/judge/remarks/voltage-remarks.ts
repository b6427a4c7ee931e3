// What is worth saying of a working voltage that both the file and the converter give, where they differ.

import type { PairOutcome } from '#judge/paths/case-result.ts';
import type { StressNote } from '#stress/pair/pair-stress.ts';
import type { Remark } from '#judge/verdict/verdict.ts';

export const voltageRemarks = (
  pairs: readonly PairOutcome[],
  nameOf: (circuit: string) => string,
): readonly Remark[] =>
  pairs.flatMap(({ between: [a, b], stress }) =>
    stress.notes.flatMap((note) => remarkOf(`${nameOf(a)} and ${nameOf(b)}`, note)),
  );

function remarkOf(pair: string, note: StressNote): readonly Remark[] {
  if (note.kind !== 'stated-below-computed' && note.kind !== 'measured-unlike-computed') return [];
  const [given, computed] = [note.given, note.computed].map((value) => `${Math.round(value)} V`);
  const what = note.quantity === 'rms' ? 'rms' : 'at the peak';
  const says =
    note.kind === 'stated-below-computed'
      ? `Between ${pair} ${given} ${what} is stated, but the converter gives ${computed}: that counts until the other is measured.`
      : `Between ${pair} ${given} ${what} was measured and counts, but the converter gives ${computed}: one of the two is worth a second look.`;
  return [{ kind: note.kind, says }];
}
