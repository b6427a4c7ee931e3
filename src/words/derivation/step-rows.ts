// What each step of a derivation says on the worked sheet, by its kind. A kind without words does not compile. Worked sheets
// stay in millimetres, as the tables that they are worked from.

import { inMillimetres } from '#words/text/length-unit.ts';
import type { Because, Steps } from '#standards/because.ts';
import { judgingWords } from './of-judging.ts';
import { materialWordsOf } from './of-materials.ts';
import { stressWords } from './of-stress.ts';
import { tableWords } from './of-tables.ts';
import type { SheetRow, StepWords, WordsFor } from './sheet-row.ts';

const WORDS: WordsFor<Steps> = { ...tableWords, ...materialWordsOf, ...stressWords, ...judgingWords };

/** `last`: the step is the outermost one, whose figure is what was asked. */
export const stepRows = <Why extends Because>(why: Why, last: boolean): readonly SheetRow[] =>
  inMillimetres(() => (WORDS[why.step] as StepWords<Why['step']>)(why as never, last));
