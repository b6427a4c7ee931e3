// The same question for both columns of a book: basic and reinforced.

import type { Both } from '#books/questions/required.ts';
import type { Column } from '#units/terms.ts';

export const forBoth = <T>(make: (column: Column) => T): Both<T> => ({
  basic: make('basic'),
  reinforced: make('reinforced'),
});
