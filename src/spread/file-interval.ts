// A length of a design file with its tolerance, as draws vary it.

import { fieldAt } from '#model/edit/edit-design.ts';
import { quantityField } from '#model/quantity/quantity-field.ts';
import type { DesignFile } from '#model/schema/schema.ts';

export interface Interval {
  readonly value: number;
  readonly half: number;
}

/** In mm; null where the field holds no known length. */
export function intervalAt(doc: DesignFile, field: string): Interval | null {
  const value = fieldAt(doc, field);
  if (value === undefined) return null;
  const read = quantityField(value, { dimension: 'length', aboveZero: false, mayBeUnknown: true });
  return read.kind === 'known' ? { value: read.value / 1e6, half: read.plusMinus / 1e6 } : null;
}
