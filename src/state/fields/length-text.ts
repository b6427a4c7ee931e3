// Lengths of the file as the page shows them, and what is typed as the file takes it: in the unit that this browser shows
// lengths in. The file stays in millimetres: inches become so when they are typed, and so does a bare number while the page
// shows inches. Wire gauges and what cannot be read stay as they are.

import { quantityText } from '#model/quantity/quantity-text.ts';
import { fileLengthWords } from '#words/text/file-length.ts';
import { lengthUnit } from '#words/text/length-unit.ts';
import { inMm, nm } from '#units/quantity.ts';
import { textOf, valueOf } from './field-text.ts';
import { looksLikeSum, summed } from './field-sum.ts';

const BARE = /^[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE][+-]?\d{1,3})?$/;
const INCHES = /(?:\d|\.)\s*(?:in|inch|inches|"|″|mil|mils|thou)$/;

/** As the file has it, while it is shown in millimetres; else `0.1181 in`. */
export function shownLength(value: unknown): string {
  if (lengthUnit() === 'mm') return textOf(value);
  if (typeof value === 'number' || (typeof value === 'string' && value !== 'unknown'))
    return fileLengthWords(String(value));
  if (typeof value !== 'object' || value === null) return textOf(value);
  return textOf(
    Object.fromEntries(
      Object.entries(value).map(([key, part]) => [
        key,
        key === 'value' || key === 'plusMinus' ? shownLength(part) : (part as unknown),
      ]),
    ),
  );
}

/** What the file takes for a text: an interval, `unknown`, or the length in millimetres. */
export function takenLength(text: string): unknown {
  const value = valueOf(text, 'quantity');
  if (typeof value === 'string') return fileLength(value);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, fileLength(String(part))]));
}

/** One length as the file writes it. */
export function fileLength(text: string): string {
  const plain = text.trim();
  const unit = lengthUnit();
  const whole = unit !== 'mm' && BARE.test(plain) ? `${plain} ${unit}` : plain;
  if (!INCHES.test(whole)) return text;
  const found = quantityText(whole, 'length');
  return found.kind === 'value' && Number.isSafeInteger(found.value) ? `${inMm(nm(found.value))} mm` : text;
}

/** A sum of bare numbers is one in the shown unit. */
export function unitOfSum(text: string): string {
  const unit = lengthUnit();
  return unit === 'mm' || /[a-z"″]/i.test(text) ? text : `(${text}) * (1 ${unit})`;
}

/** The same of arithmetic; what is none is taken as it stands, and nothing for a sum that comes to none. */
export async function summedLength(text: string): Promise<string> {
  if (!looksLikeSum(text)) return fileLength(text);
  return (await summed(unitOfSum(text), 'length')).value ?? '';
}
