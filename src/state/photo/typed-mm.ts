// A length as somebody typed it beside a photograph, in millimetres; null where it is none.

import { quantityField } from '#model/quantity/quantity-field.ts';
import { fileLength } from '#state/fields/length-text.ts';
import { inMm } from '#units/quantity.ts';

export function typedMm(text: string, aboveZero: boolean): number | null {
  const found = quantityField(fileLength(text), { dimension: 'length', aboveZero, mayBeUnknown: false });
  return found.kind === 'known' ? inMm(found.value) : null;
}
