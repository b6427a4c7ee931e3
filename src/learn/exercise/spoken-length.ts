// A length as a pupil types it, in millimetres where no unit stands: `4.2`, `4,2`, `4.2 mm`, `420 um`. Null for what is none.

import { quantityField } from '#model/quantity/quantity-field.ts';
import { inMm } from '#units/quantity.ts';

export function spokenLength(text: string): number | null {
  const plain = text.trim().replace(',', '.');
  const typed = /^\d+(?:\.\d*)?$/.test(plain) ? `${plain.replace(/\.$/, '')} mm` : plain;
  const read = quantityField(typed, { dimension: 'length', aboveZero: false, mayBeUnknown: false });
  if (read.kind !== 'known') return null;
  const millimetres = inMm(read.value);
  return millimetres >= 0 && millimetres < 1000 ? millimetres : null;
}
