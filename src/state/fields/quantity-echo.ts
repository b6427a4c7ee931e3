// What a quantity was understood as, in the unit that the page prints: shown beside a field while one types.

import { lengthUnit } from '#words/text/length-unit.ts';
import type { DimensionName } from '#model/quantity/dimension.ts';
import { quantityField } from '#model/quantity/quantity-field.ts';
import { dimension as length, frequency, plain, volts } from '#words/text/number-words.ts';
import { inMm, mm, type Nm } from '#units/quantity.ts';
import { unreachable } from '#units/unreachable.ts';

/** Whether what was typed already reads as what was understood, but for noughts: `3 mm` and `3.00 mm`. */
export const saysTheSame = (typed: string, meaning: string): boolean =>
  withoutNoughts(typed) === withoutNoughts(meaning);

const withoutNoughts = (text: string): string =>
  text
    .trim()
    .replace(/(\.\d*?)0+(?=\s|$)/g, '$1')
    .replace(/\.(?=\s|$)/g, '');

/** Empty where the text says nothing or cannot be read; the fault of the field tells why. */
export function understood(value: unknown, name: DimensionName, mayBeGauge = false): string {
  if (value === undefined || value === null || value === 'unknown') return '';
  const input = typeof value === 'object' ? withoutShape(value) : value;
  const found = quantityField(input, { dimension: name, aboveZero: false, mayBeUnknown: true, mayBeGauge });
  if (found.kind !== 'known') return '';
  const middle = words(found.value, name);
  return found.plusMinus === 0 ? middle : `${middle} ± ${words(found.plusMinus, name)}`;
}

/** What a quantity above 0 would have to be; null where the text is one. */
export function notUnderstood(text: string | undefined, name: DimensionName): string | null {
  const found = quantityField(text, { dimension: name, aboveZero: true, mayBeUnknown: false });
  return found.kind === 'fault' ? `expected ${found.expected}` : null;
}

function withoutShape(value: object): object {
  return Object.fromEntries(Object.entries(value).filter(([key]) => key !== 'shape'));
}

function words(value: number, name: DimensionName): string {
  switch (name) {
    case 'length':
      return `${length(inMm(value as Nm))} ${lengthUnit()}`;
    case 'voltsRms':
    case 'voltsPeak':
    case 'voltsDc':
      return volts(value);
    case 'frequency':
      return frequency(value);
    case 'altitude':
      return `${plain(value)} m`;
    case 'temperature':
      return `${plain(value)} °C`;
    case 'capacitance':
      return value >= 1e-9 ? `${plain(value * 1e9)} nF` : `${plain(value * 1e12)} pF`;
    case 'bulkCapacitance':
      return `${plain(value * 1e6)} uF`;
    case 'power':
      return `${plain(value)} W`;
    case 'duration':
      return `${plain(value * 1e3)} ms`;
    case 'resistance':
      return value >= 1e6 ? `${plain(value / 1e6)} MΩ` : `${plain(value)} Ω`;
    default:
      return unreachable(name);
  }
}

/** A length in millimetres as the file writes it. */
export const lengthOfMm = (millimetres: number): string => `${inMm(mm(millimetres))} mm`;
