// A spread in words: how many of the wound pieces meet, how sure that is, and which figures decide.

import type { Spread } from '#spread/spread.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { fieldWords } from '#words/design/field-words.ts';
import { answerWords } from '#words/verdict/answer-words.ts';

const MOST_FIELDS = 6;

export function spreadLines(
  { draws, share, interval, worstCase, deciding, seed }: Spread,
  doc: DesignFile,
): readonly string[] {
  const [low, high] = interval;
  return [
    `${percent(share)} of ${draws} drawn pieces meet (between ${percent(low)} and ${percent(high)}, 19 times in 20; seed ${seed}).`,
    `With every figure at the worse end of its range: ${answerWords(worstCase)}.`,
    ...(deciding.length === 0 ? ['No figure decides.'] : ['What decides, heaviest first:']),
    ...deciding
      .slice(0, MOST_FIELDS)
      .map(({ field, weight }) => `  ${fieldWords(doc, field)}: ${percent(weight)}`),
    'Placement model, common practice: margins ± 0.2 mm, tape up to 0.2 mm narrow, sleeves up to 0.5 mm short, a ply forgotten once in 1000.',
  ];
}

const percent = (part: number): string => `${(part * 100).toFixed(1)} %`;
