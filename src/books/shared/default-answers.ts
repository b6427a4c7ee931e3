// What a book answers by the default book where it has no rule of its own, or none that anyone here has seen: parts by their
// classes, films and mouldings by their share of strength, temperatures by thermocouple. The shelf hands it in, so that no
// book reads the tables of another.

import type { HeatAnswers, SolidAnswers } from '#books/questions/book.ts';
import type { PartTables } from '#books/shared/parts/bridge-grade.ts';
import type { Rules } from '#standards/tables/rules-in-words.ts';

export interface DefaultAnswers {
  readonly solids: SolidAnswers & HeatAnswers & PartTables;
  readonly rules: Rules;
}
