// The tracking group of a material, or what one that nobody knows counts as.

import { plainly } from '#judge/verdict/assumed.ts';
import type { MaterialGroup } from '#units/terms.ts';
import type { Unknown } from '#model/quantity/reading.ts';
import type { Filling } from '#judge/assume/fill-context.ts';

export function groupOrAssumed(
  filling: Filling,
  group: MaterialGroup | Unknown,
  field: string,
): MaterialGroup {
  if (typeof group === 'string') return group;
  return filling.unknown(field, plainly('tracking-iiib')) === 'best' ? 'IIIa' : 'IIIb';
}
