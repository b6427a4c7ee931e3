// Ids of materials, circuits and the like: whether each is among those that exist.

import { badField } from './bad-field.ts';
import type { BadInput } from './bad-input.ts';
import { inMm } from '#units/quantity.ts';
import type { Sheet } from '#model/design.ts';

export type Keys = readonly PropertyKey[];

/** The ids that the tables and rule books hold; this room knows neither. */
export interface KnownIds {
  readonly rules: readonly string[];
  readonly tapes: readonly string[];
  readonly formers: readonly string[];
  readonly sleeves: readonly string[];
}

/** One fault where `id` is not among `ids`. */
export const oneOf = (
  keys: Keys,
  id: string | null,
  ids: readonly string[],
  what: string,
): readonly BadInput[] =>
  id === null || ids.includes(id)
    ? []
    : [badField(keys, id, `the id of a ${what}: ${ids.length === 0 ? 'there is none' : ids.join(', ')}`)];

export const checkSheet = (keys: Keys, sheet: Sheet, known: KnownIds): readonly BadInput[] => [
  ...oneOf([...keys, 'material'], sheet.material, known.tapes, 'tape'),
  ...(sheet.material === null && sheet.plyThickness === null
    ? [badField([...keys, 'plyThickness'], undefined, 'a material or a ply thickness')]
    : []),
  ...(sheet.film && sheet.plyThickness && sheet.film.value > sheet.plyThickness.value
    ? [
        badField(
          [...keys, 'film'],
          `${inMm(sheet.film.value)} mm`,
          `no more than the whole ply's thickness, ${inMm(sheet.plyThickness.value)} mm`,
        ),
      ]
    : []),
];
