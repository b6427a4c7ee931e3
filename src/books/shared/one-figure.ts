// A figure of a rule in words, as an answer of its own.

import { judged, type Judged } from '#standards/because.ts';
import type { Rule } from '#standards/tables/rules-in-words.ts';

export const figureOf = <T>(rule: Rule, key: string, unit: (value: number) => T): Judged<T> =>
  judged(unit(rule.figure(key)), rule.because([key]));
