// The diameter that a wire gauge such as "28 AWG" or "4/0 AWG" stands for: sizes in equal ratios between two fixed ones.

import gauges from '#tables/materials/wire-gauges.json' with { type: 'json' };
import { mm, type Nm } from '#units/quantity.ts';

const FORM = /^\s*(?:(\d|[1-9]\d)|(0{2,4})|([1-4])\/0)\s*AWG\s*$/i;

interface Fixed {
  readonly gauge: number;
  readonly diameter: number;
}

const [THICK, THIN] = gauges.rows.map(({ at, diameter }) => ({ gauge: at[0], diameter })) as [Fixed, Fixed];
const FINEST = gauges.factors[0]!.value;

/** Null where the text is no gauge, or one finer than the standard goes. */
export function wireGauge(text: string): Nm | null {
  const [, digits, noughts, sizes] = FORM.exec(text) ?? [];
  const gauge = gaugeOf(digits, noughts, sizes);
  if (gauge === null || gauge > FINEST) return null;
  const ratio = THICK.diameter / THIN.diameter;
  return mm(THIN.diameter * ratio ** ((THIN.gauge - gauge) / (THIN.gauge - THICK.gauge)));
}

/** 0 is 1/0; 00 or 2/0 is -1, and so on. */
function gaugeOf(
  digits: string | undefined,
  noughts: string | undefined,
  sizes: string | undefined,
): number | null {
  if (digits !== undefined) return Number(digits);
  if (noughts !== undefined) return 1 - noughts.length;
  return sizes === undefined ? null : 1 - Number(sizes);
}
