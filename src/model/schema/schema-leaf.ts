// The leaves that the schemas of all records are built of: quantities, counts, texts, ids, choices, records.
// Every leaf carries the end of the sentence "expected ..." as its message; faults.ts makes the whole sentence.

import * as z from 'zod';
import type { DimensionName, QuantityOf } from '#model/quantity/dimension.ts';
import { expectedOf, quantityField, type QuantityField } from '#model/quantity/quantity-field.ts';
import type { Known, Reading } from '#model/quantity/reading.ts';

// the library would otherwise probe for eval, which the page's content security policy reports
z.config({ jitless: true });

export type QuantityInput =
  string | number | { readonly value: string | number; readonly plusMinus?: string | number | undefined };

const leaves = new Map<string, z.ZodType>();

/** A quantity that must be known. */
export const quantity = <D extends DimensionName>(
  dimension: D,
  aboveZero = false,
): z.ZodType<Known<QuantityOf[D]>, QuantityInput> =>
  leaf({ dimension, aboveZero, mayBeUnknown: false }) as z.ZodType<Known<QuantityOf[D]>, QuantityInput>;

/** A quantity that may be `"unknown"`. */
export const reading = <D extends DimensionName>(
  dimension: D,
  aboveZero = false,
): z.ZodType<Reading<QuantityOf[D]>, QuantityInput> =>
  leaf({ dimension, aboveZero, mayBeUnknown: true }) as z.ZodType<Reading<QuantityOf[D]>, QuantityInput>;

/** A diameter of metal, which may be a wire gauge. */
export const wireSize = (): z.ZodType<Reading<QuantityOf['length']>, QuantityInput> =>
  leaf({ dimension: 'length', aboveZero: true, mayBeUnknown: true, mayBeGauge: true }) as z.ZodType<
    Reading<QuantityOf['length']>,
    QuantityInput
  >;

function leaf(field: QuantityField): z.ZodType {
  const id = [
    field.dimension,
    field.aboveZero ? 'AboveZero' : '',
    field.mayBeGauge ? 'OrGauge' : '',
    field.mayBeUnknown ? 'OrUnknown' : '',
  ].join('');
  const made = leaves.get(id) ?? quantityLeaf(field).meta({ id, ...quantityForm(expectedOf(field)) });
  leaves.set(id, made);
  return made;
}

const quantityLeaf = (field: QuantityField): z.ZodType =>
  z.unknown().transform((input, context) => {
    const found = quantityField(input, field);
    if (found.kind !== 'fault') return found;
    context.issues.push({ code: 'custom', input, path: [...found.path], message: found.expected });
    return z.NEVER;
  });

/** The JSON Schema of a quantity; the range cannot be said there, since it depends on the unit in the text. */
const quantityForm = (description: string) => {
  const plain = { type: ['string', 'number'] };
  const interval = {
    type: 'object',
    properties: { value: plain, plusMinus: plain },
    required: ['value'],
    additionalProperties: false,
  };
  return { description, anyOf: [{ type: 'string' }, { type: 'number' }, interval] };
};

/** A whole number. */
export const count = (from: number, to: number) => {
  const error = `a whole number from ${from} to ${to}`;
  return z.int({ error }).min(from, { error }).max(to, { error });
};

export const UNKNOWN = z.literal('unknown');

/** A whole number or `"unknown"`. */
export const countOrUnknown = (from: number, to: number) =>
  z.union([count(from, to), UNKNOWN], { error: `a whole number from ${from} to ${to}, or "unknown"` });

export const choice = <const T extends readonly string[]>(...words: T) =>
  z.enum(words, { error: `one of ${words.map((word) => JSON.stringify(word)).join(', ')}` });

export const flag = z.boolean({ error: 'true or false' });

export const text = (longest: number) => {
  const error = `a text of at most ${longest} characters`;
  return z.string({ error }).max(longest, { error });
};

/** Less is no figure of any build, and would only burst a quotient. */
const LEAST_SHARE = 1e-6;

/** A part of a whole, also as a text in percent. */
export const share = (highest: number, example: string) => {
  const error = `a number from 0 to ${highest}, ${example}; what is not 0 is at least ${LEAST_SHARE}`;
  const part = z
    .number({ error })
    .min(0, { error })
    .max(highest, { error })
    .refine((found) => found <= 0 || found >= LEAST_SHARE, { error });
  const percent = z.string().regex(/^\s*\d{1,3}(?:\.\d{1,6})?\s*%\s*$/);
  return z.union([part, percent.transform((text) => Number.parseFloat(text) / 100).pipe(part)], { error });
};

export const LONG_TEXT = 2_000;
export const SHORT_TEXT = 200;

const ID = 'an id: 1 to 64 visible characters, without a blank at either end';
/** No control or format characters and no blank at the ends, so that two ids that look alike are alike. */
export const id = z
  .string({ error: ID })
  .max(64, { error: ID })
  .regex(/^[^\p{C}\s](?:[^\p{C}]*[^\p{C}\s])?$/u, { error: ID });

export const list = <T extends z.ZodType>(item: T, from: number, to: number, what: string) => {
  const error = from === to ? `${to} ${what}` : `a list of ${from} to ${to} ${what}`;
  return z.array(item, { error }).min(from, { error }).max(to, { error });
};

export const between = z.tuple([id, id], { error: 'a list of two different ids' });

/** An object without any other field. */
export const record = <S extends z.ZodRawShape>(shape: S) => {
  const fields = Object.keys(shape).join(', ');
  return z.strictObject(shape, {
    error: (issue) =>
      issue.code === 'unrecognized_keys'
        ? `one of the fields ${fields}`
        : `an object with the fields ${fields}`,
  });
};
