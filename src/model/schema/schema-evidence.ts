// Schema of evidence: photographs, measurements and documents behind the figures, and which fields each stands behind.
// What was measured on a photograph is kept as figures, so that a program need not read it out of the words.

import * as z from 'zod';
import { quantityText } from '#model/quantity/quantity-text.ts';
import { choice, count, id, list, LONG_TEXT, quantity, record, SHORT_TEXT, text } from './schema-leaf.ts';

/** A data address fills at most the whole file. */
const MOST_FILE = 2_000_000;
const MOST_PIXELS = 100_000;
const MOST_MEASURED = 1e6;

const PIXELS = 'a number of pixels';
const pixels = z.number({ error: PIXELS }).min(-MOST_PIXELS, PIXELS).max(MOST_PIXELS, PIXELS);
const point = z.tuple([pixels, pixels], { error: 'a point [x, y] in pixels' });

const AMOUNT = 'a number from 0 to 1 000 000';
const amount = z.number({ error: AMOUNT }).min(0, AMOUNT).max(MOST_MEASURED, AMOUNT);

const FIGURE = 'a length such as "3 mm", or a bare number of millimetres, degrees or things';
const figure = z.union(
  [
    amount,
    z.string().transform((said, context): number => {
      const found = quantityText(said, 'length');
      if (found.kind === 'value' && found.value >= 0) return found.value / 1e6;
      context.issues.push({ code: 'custom', input: said, message: FIGURE });
      return z.NEVER;
    }),
  ],
  { error: FIGURE },
);

export const measured = record({
  photo: id.optional(),
  kind: choice('distance', 'diameter', 'angle', 'count'),
  points: list(point, 0, 64, 'points').optional(),
  picked: amount.optional(),
  scale: amount.optional(),
  value: figure.optional(),
  plusMinus: figure.optional(),
});

const DEGREES = 'degrees from -360 to 360';
export const picture = record({
  width: count(1, MOST_PIXELS),
  height: count(1, MOST_PIXELS),
  turned: z.number({ error: DEGREES }).min(-360, DEGREES).max(360, DEGREES).optional(),
  scale: record({
    length: quantity('length', true),
    from: point,
    to: point,
    picked: amount.optional(),
  }).optional(),
});

export const evidence = record({
  id,
  kind: choice('photo', 'measurement', 'document'),
  says: text(LONG_TEXT).optional(),
  fields: list(text(SHORT_TEXT), 0, 64, 'paths of fields').optional(),
  file: text(MOST_FILE).optional(),
  measured: measured.optional(),
  picture: picture.optional(),
});
