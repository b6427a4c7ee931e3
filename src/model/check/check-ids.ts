// Ids of materials, circuits and the like: whether each is among those that exist.

import { badField } from '#model/faults/bad-field.ts';
import type { BadInput } from '#model/faults/bad-input.ts';
import { inMm, type Nm } from '#units/quantity.ts';
import type { Sheet, Withstand } from '#model/design/sheet.ts';
import type { Unknown } from '#model/quantity/reading.ts';

export type Keys = readonly PropertyKey[];

/** The ids that the tables and rule books hold; this room knows neither. */
export interface KnownIds {
  readonly rules: readonly string[];
  readonly tapes: readonly string[];
  /** Thickness of a whole ply of each tape. */
  readonly plies: ReadonlyMap<string, Nm>;
  readonly formers: readonly string[];
  readonly sleeves: readonly string[];
  readonly markets: readonly string[];
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
  ...checkFilm(keys, sheet, known),
  ...beyondMatter([...keys, 'plyWithstand'], sheet.plyWithstand, plyOf(sheet, known)),
];

function checkFilm(keys: Keys, sheet: Sheet, known: KnownIds): readonly BadInput[] {
  const ply = plyOf(sheet, known);
  if (sheet.film === null || ply === null || sheet.film.value <= ply) return [];
  const most = `no more than the whole ply's thickness, ${inMm(ply)} mm`;
  return [badField([...keys, 'film'], `${inMm(sheet.film.value)} mm`, most)];
}

/** As stated, else by the table of its material; null where neither says. */
function plyOf({ plyThickness, material }: Sheet, known: KnownIds): Nm | null {
  if (plyThickness?.kind === 'known') return plyThickness.value;
  return material === null || plyThickness !== null ? null : (known.plies.get(material) ?? null);
}

/** More than any solid stands for a minute: a slip of the decimal point rather than a measurement. House rule. */
const MOST_PER_MM = 500_000;

/** A stated withstand that no matter of that thickness has; null: nobody knows the thickness. */
export function beyondMatter(
  keys: Keys,
  withstand: Withstand | Unknown,
  thickness: Nm | null,
): readonly BadInput[] {
  if (withstand.kind === 'unknown' || thickness === null) return [];
  const most = MOST_PER_MM * inMm(thickness);
  if (withstand.value <= most) return [];
  const says = `at most ${MOST_PER_MM / 1000} kV for each mm of ${inMm(thickness)} mm, which is ${most / 1000} kV`;
  return [badField(keys, `${withstand.value / 1000} kV`, says)];
}
