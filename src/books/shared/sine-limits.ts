// Limits of touch current of a book that prints one root mean square for what is touched and one for the protective
// conductor: normal use and a single fault alike, the peak that of a sine, direct current as much as the rms.

import type { TouchCurrentLimits } from '#books/questions/book.ts';
import { judged } from '#standards/because.ts';
import type { Rule } from '#standards/tables/rules-in-words.ts';
import { amperes } from '#units/quantity.ts';
import { figureOf } from './one-figure.ts';

export function sineLimits(rule: Rule): TouchCurrentLimits {
  const touch = rule.figure('touch');
  const value = { rms: amperes(touch), peak: amperes(touch * Math.SQRT2), dc: amperes(touch) };
  const limit = judged(value, rule.because(['touch']));
  return { normal: limit, singleFault: limit, protectiveConductor: figureOf(rule, 'protective', amperes) };
}
