// Schema of a cell that the user read in a copy of the standard of their own: which one, what it says there, where and when.

import * as z from 'zod';
import { record, SHORT_TEXT, text } from './schema-leaf.ts';

const FIGURE = 'a number of 0 or more, as it is printed in the standard';
const DAY = 'a day such as "2026-11-30"';

const word = text(SHORT_TEXT).min(1, { error: 'a text that is not empty' });

export const confirmedCell = record({
  standard: word,
  table: word,
  cell: word,
  value: z.number({ error: FIGURE }).min(0, { error: FIGURE }).max(1e9, { error: FIGURE }).optional(),
  clause: word,
  on: z.string({ error: DAY }).regex(/^\d{4}-\d{2}-\d{2}$/, { error: DAY }),
});
