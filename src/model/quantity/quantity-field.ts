// What one field of a quantity says: text, bare number, { value, plusMinus } or "unknown" -> a reading in its unit.
// Both ends of an interval must lie in the field's range, so that later work at either end stays in range too.

import type { Quantity } from '#units/quantity.ts';
import { dimension, type DimensionName, type QuantityOf } from './dimension.ts';
import { quantityNumber, quantityText, type QuantityText } from './quantity-text.ts';
import { wireGauge } from './wire-gauge.ts';
import { unknown, type Known, type Reading } from './reading.ts';

export interface QuantityField<D extends DimensionName = DimensionName> {
  readonly dimension: D;
  /** 0 itself is refused. */
  readonly aboveZero: boolean;
  readonly mayBeUnknown: boolean;
  /** A wire gauge such as "28 AWG" is taken too. */
  readonly mayBeGauge?: boolean;
}

export interface FieldFault {
  readonly kind: 'fault';
  /** Below the field itself: nothing, or `value`, or `plusMinus`. */
  readonly path: readonly string[];
  readonly expected: string;
}

export function quantityField<D extends DimensionName>(
  input: unknown,
  field: QuantityField<D>,
): Reading<QuantityOf[D]> | FieldFault {
  if (input === 'unknown') return field.mayBeUnknown ? unknown : fault([], expectedOf(field));
  if (typeof input !== 'object' || input === null) return interval(input, 0, [], field);
  if (!Object.hasOwn(input, 'value')) return fault([], expectedOf(field));
  const odd = Object.keys(input).find((key) => key !== 'value' && key !== 'plusMinus');
  if (odd !== undefined) return fault([odd], 'one of the fields value, plusMinus');
  const { value, plusMinus = 0 } = input as { readonly value?: unknown; readonly plusMinus?: unknown };
  return interval(value, plusMinus, ['value'], field);
}

/** What the field takes, as the end of a sentence that starts with "expected". */
export function expectedOf(field: QuantityField): string {
  const { word, range, example, units } = dimension(field.dimension);
  const bounds = field.aboveZero ? `above ${range.replace(/^0 to /, '0, up to ')}` : `from ${range}`;
  const gauge = field.mayBeGauge ? ', or a wire gauge such as "28 AWG"' : '';
  const open = field.mayBeUnknown ? ', or "unknown"' : '';
  return `${word} ${bounds} such as "${example}" (units ${[...new Set(units.values())].join(', ')})${gauge}${open}`;
}

function interval<D extends DimensionName>(
  valueInput: unknown,
  halfInput: unknown,
  valuePath: readonly string[],
  field: QuantityField<D>,
): Known<QuantityOf[D]> | FieldFault {
  const value = numberOf(valueInput, field, false);
  if (value.kind === 'bad') return fault(valuePath, `${expectedOf(field)}; ${value.why}`);
  const half = numberOf(halfInput, field, true);
  if (half.kind === 'bad')
    return fault(['plusMinus'], `a half-width such as "${dimension(field.dimension).example}"; ${half.why}`);
  if (!inRange(value.value, field)) return fault(valuePath, expectedOf(field));
  if (isTooSmall(value.value, field)) return fault(valuePath, `${expectedOf(field)}; ${leastOf(field)}`);
  if (half.value < 0) return fault(['plusMinus'], 'a half-width of 0 or more');
  if (!inRange(value.value - half.value, field) || !inRange(value.value + half.value, field))
    return fault(['plusMinus'], `a half-width not above the value, both ends being ${expectedOf(field)}`);
  if (isTooSmall(half.value, field)) return fault(['plusMinus'], `a half-width; ${leastOf(field)}`);
  if (isTooSmall(value.value - half.value, field))
    return fault(['plusMinus'], `a half-width that leaves more, or nothing; ${leastOf(field)}`);
  return {
    kind: 'known',
    value: value.value as Quantity<string> as QuantityOf[D],
    plusMinus: half.value as Quantity<string> as QuantityOf[D],
  };
}

function numberOf(input: unknown, field: QuantityField, asDifference: boolean): QuantityText {
  const gauge = field.mayBeGauge && !asDifference && typeof input === 'string' ? wireGauge(input) : null;
  if (gauge !== null) return { kind: 'value', value: gauge };
  if (typeof input === 'string') return quantityText(input, field.dimension, asDifference);
  if (typeof input === 'number') return quantityNumber(input, field.dimension, asDifference);
  return { kind: 'bad', why: input === undefined ? 'there is nothing' : 'neither text nor a number' };
}

function inRange(value: number, field: QuantityField): boolean {
  const { from, to } = dimension(field.dimension);
  return value >= from && value <= to && !(field.aboveZero && value <= 0);
}

/** Not 0, and yet less than any build has. */
function isTooSmall(value: number, field: QuantityField): boolean {
  return value !== 0 && Math.abs(value) < dimension(field.dimension).least;
}

const leastOf = (field: QuantityField): string =>
  `what is not 0 is at least ${dimension(field.dimension).leastWords}`;

const fault = (path: readonly string[], expected: string): FieldFault => ({ kind: 'fault', path, expected });
