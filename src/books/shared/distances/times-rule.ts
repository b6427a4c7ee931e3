// Reinforced as a multiple of basic by a rule in words, after the rounding of basic.

import { because, judged, type Judged } from '#standards/because.ts';
import { nextRowOf } from '#standards/tables/next-row.ts';
import type { Rule } from '#standards/tables/rules-in-words.ts';
import { inMm, nm, type Nm } from '#units/quantity.ts';

export function timesRule(rule: Rule, key: string, basic: Judged<Nm>): Judged<Nm> {
  const factor = rule.figure(key);
  const value = nm(Math.round(basic.value * factor));
  const row = nextRowOf(basic.because);
  const values = {
    factor,
    basic: inMm(basic.value),
    value: inMm(value),
    nextRow: row === null ? null : row * factor,
  };
  return judged(value, because('reinforced-factor', values, rule.because([key]).cites, [basic.because]));
}
