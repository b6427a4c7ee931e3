// What a text such as "3 mm", `.118"`, "0,5 mm" or "2x1.5" says, as a number in the base unit of its kind.
// The only place where the conversion library is used; it gives two numbers a unit (factor, offset), kept for good.
// A comma before exactly three digits ("1,500 V") could be either mark and is refused.

import { dimension, type DimensionName } from './dimension.ts';
import { unitLibrary } from './unit-library.ts';

export type QuantityText =
  { readonly kind: 'value'; readonly value: number } | { readonly kind: 'bad'; readonly why: string };

const LONGEST = 40;
const NUMBER = String.raw`[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE][+-]?\d{1,3})?`;
const FORM = new RegExp(
  String.raw`^\s*(${NUMBER})(?:\s*[x×*]\s*(${NUMBER}))?\s*([^\d\s.,+-][^\d.,+-]*)?$`,
  'u',
);
/** Floats that differ in the thirteenth digit were meant to be equal: 2.2 nF is 2.2e-9, not 2.2000000000000003e-9. */
const DIGITS = 12;
const CACHE_SIZE = 4096;

/** `asDifference`: a half-width, where 5 K and 5 degC are the same. */
export function quantityText(text: string, name: DimensionName, asDifference = false): QuantityText {
  const key = `${name}${asDifference ? '~' : ' '}${text}`;
  const seen = cache.get(key);
  if (seen !== undefined) return seen;
  const answer = parse(text, name, asDifference);
  if (cache.size >= CACHE_SIZE) cache.clear();
  if (text.length <= LONGEST) cache.set(key, answer);
  return answer;
}

/** A bare number in the kind's own unit. */
export function quantityNumber(value: number, name: DimensionName, asDifference = false): QuantityText {
  return Number.isFinite(value)
    ? inBase(value, dimension(name).own, name, asDifference)
    : bad('the number is not finite');
}

const cache = new Map<string, QuantityText>();

function parse(text: string, name: DimensionName, asDifference: boolean): QuantityText {
  if (text.length > LONGEST) return bad(`longer than ${LONGEST} characters`);
  const [, first, second, spelled] = FORM.exec(text) ?? [];
  if (first === undefined) return bad('not a number with a unit');
  if ([first, second].some(isAmbiguous))
    return bad('a comma before three digits could mean a thousand: write a point, or no comma');
  const { own, units } = dimension(name);
  const unit = spelled === undefined ? own : units.get(plainUnit(spelled));
  if (unit === undefined) return bad(`no unit of ${dimension(name).word}: ${shown(spelled)}`);
  return inBase(number(first) * (second === undefined ? 1 : number(second)), unit, name, asDifference);
}

function inBase(value: number, unit: string, name: DimensionName, asDifference: boolean): QuantityText {
  const { base, whole } = dimension(name);
  const { factor, offset } = conversion(unit, base);
  const found = value * factor + (asDifference ? 0 : offset);
  if (!Number.isFinite(found)) return bad('the number is not finite');
  // `+ 0` turns -0 into 0
  return { kind: 'value', value: (whole ? Math.round(found) : rounded(found)) + 0 };
}

interface Conversion {
  readonly factor: number;
  readonly offset: number;
}

const conversions = new Map<string, Conversion>();
let library: ReturnType<typeof unitLibrary> | undefined;

function conversion(unit: string, base: string): Conversion {
  const key = `${unit} ${base}`;
  const seen = conversions.get(key);
  if (seen !== undefined) return seen;
  library ??= unitLibrary();
  const at = (value: number): number => library!(value, unit).toNumber(base);
  const offset = rounded(at(0));
  const found = { factor: rounded(at(1) - at(0)), offset };
  conversions.set(key, found);
  return found;
}

const rounded = (value: number): number => Number(value.toPrecision(DIGITS));
const number = (text: string): number => Number(text.replace(',', '.'));
const isAmbiguous = (text: string | undefined): boolean =>
  text !== undefined && /^[+-]?[1-9]\d*,\d{3}$/.test(text);
const bad = (why: string): QuantityText => ({ kind: 'bad', why });
const shown = (unit: string | undefined): string => JSON.stringify(unit?.trim() ?? '');

/** One spelling for signs that look alike, and "V rms" as "Vrms". */
const plainUnit = (text: string): string =>
  text
    .trim()
    .replace(/[µμ](?=[a-zA-Z])/u, 'u')
    .replace(/^°\s*/u, 'deg')
    .replace(/\u2126/u, 'Ω')
    .replace(/\s+(?=(?:rms|ac|peak|pk|p|dc)$)/, '');
