// Schemas of solid insulation: sheets of plies, the former's wall, margin blocks, sleeves, what they were shown to stand.

import * as z from 'zod';
import type { Withstand } from '#model/design/sheet.ts';
import { quantityField } from '#model/quantity/quantity-field.ts';
import { unknown, type Unknown } from '#model/quantity/reading.ts';
import { choice, countOrUnknown, flag, id, quantity, reading, record, UNKNOWN } from './schema-leaf.ts';

const MOST_PLIES = 500;

export type WithstandInput =
  | string
  | number
  | {
      readonly value: string | number;
      readonly plusMinus?: string | number | undefined;
      readonly shape?: 'rms' | 'dc' | undefined;
    };

/** Volts rms, or with `"shape": "dc"` direct volts. */
export const withstand = z
  .unknown()
  .transform((input, context): Withstand | Unknown => {
    const { shape, plain } = withoutShape(input);
    if (shape !== 'rms' && shape !== 'dc') {
      context.issues.push({ code: 'custom', input, path: ['shape'], message: 'one of "rms", "dc"' });
      return z.NEVER;
    }
    const dimension = shape === 'dc' ? 'voltsDc' : 'voltsRms';
    const found = quantityField(plain, { dimension, aboveZero: false, mayBeUnknown: true });
    if (found.kind === 'fault') {
      context.issues.push({ code: 'custom', input, path: [...found.path], message: found.expected });
      return z.NEVER;
    }
    return found.kind === 'unknown' ? unknown : ({ ...found, kind: shape } as Withstand);
  })
  .meta({
    id: 'withstand',
    description:
      'What a solid was shown to stand for 60 s: volts rms, or an object with "shape": "dc"; or "unknown"',
    anyOf: [
      { type: 'string' },
      { type: 'number' },
      {
        type: 'object',
        properties: {
          value: { type: ['string', 'number'] },
          plusMinus: { type: ['string', 'number'] },
          shape: { enum: ['rms', 'dc'] },
        },
        required: ['value'],
        additionalProperties: false,
      },
    ],
  }) as unknown as z.ZodType<Withstand | Unknown, WithstandInput>;

function withoutShape(input: unknown): { readonly shape: unknown; readonly plain: unknown } {
  if (typeof input !== 'object' || input === null) return { shape: 'rms', plain: input };
  const { shape = 'rms', ...plain } = input as Readonly<Record<string, unknown>>;
  return { shape, plain };
}

const materialFields = {
  material: id.optional(),
  plyThickness: reading('length', true).optional(),
  film: quantity('length', true).optional(),
  plyWithstand: withstand.optional(),
};

/** What its plies are of, without how many there are. */
export const material = record(materialFields);

export const sheetFields = { ...materialFields, plies: countOrUnknown(1, MOST_PLIES) };

export const sheet = record(sheetFields);

/** A thickness of a moulding, or an object with `plies` for a wound tube. */
export const wall = z.union([
  reading('length').transform((thickness) => ({ kind: 'moulded' as const, thickness })),
  sheet.transform((plies) => ({ kind: 'plies' as const, plies })),
]);

export const sleeve = z.union(
  [
    UNKNOWN,
    z.null(),
    record({
      material: id.optional(),
      wall: reading('length').optional(),
      into: reading('length').optional(),
      withstand: withstand.optional(),
    }),
  ],
  { error: 'null (no sleeve), "unknown", or an object with the fields material, wall, into, withstand' },
);

const margin = record({
  width: reading('length').optional(),
  filled: flag.optional(),
  height: quantity('length').optional(),
  moulded: flag.optional(),
  material: id.optional(),
  withstand: withstand.optional(),
});

export const margins = record({ left: margin.optional(), right: margin.optional() });

export const inset = record({ left: quantity('length').optional(), right: quantity('length').optional() });

export const sideOrUnknown = choice('left', 'right', 'unknown');
