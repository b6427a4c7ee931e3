// A length as the file writes it, `1.65 mm`, told in the unit that the reader asked for. What is no length stays as it is.

import { quantityText } from '#model/quantity/quantity-text.ts';
import { inMm, nm } from '#units/quantity.ts';
import { lengthUnit } from './length-unit.ts';
import { lengthPlain } from './number-words.ts';

export function fileLengthWords(text: string): string {
  if (lengthUnit() === 'mm') return text;
  const found = quantityText(text, 'length');
  return found.kind === 'value' && Number.isSafeInteger(found.value)
    ? `${lengthPlain(inMm(nm(found.value)))} ${lengthUnit()}`
    : text;
}
