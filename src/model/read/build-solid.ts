// From the read file to the design, for solids: what was left out becomes its default or an open `leftOut`.

import type * as z from 'zod';
import { mm, type Nm } from '#units/quantity.ts';
import type { Margin, Margins } from '#model/design/layer.ts';
import type { Sleeve } from '#model/design/winding.ts';
import type { Sheet } from '#model/design/sheet.ts';
import type { Wall } from '#model/design/former.ts';
import type { Side } from '#units/terms.ts';
import { known, leftOut, unknown, type Known, type Unknown } from '#model/quantity/reading.ts';
import type { inset, margins, sheet, sleeve, wall } from '#model/schema/schema-solid.ts';

type Read<S extends z.ZodType> = z.output<S>;

export const ZERO: Known<Nm> = known(mm(0));

/** `"unknown"` and fields that are not there, as values. */
export const orOpen = <T>(value: T | 'unknown' | undefined): T | Unknown =>
  value === undefined ? leftOut : value === 'unknown' ? unknown : (value as T);

export const buildSheet = (read: Read<typeof sheet>): Sheet => ({
  material: read.material ?? null,
  plies: orOpen(read.plies),
  plyThickness: plyOf(read),
  film: read.film ?? null,
  plyWithstand: read.plyWithstand ?? leftOut,
});

/** A named tape has the thickness of its table where nobody measured it. */
const plyOf = ({ material, plyThickness }: Read<typeof sheet>): Sheet['plyThickness'] =>
  plyThickness === undefined || (plyThickness.kind === 'unknown' && material !== undefined)
    ? null
    : plyThickness;

export function buildWall(read: Read<typeof wall>): Wall | Unknown {
  if (read.kind === 'plies') return { kind: 'plies', ...buildSheet(read.plies) };
  return read.thickness.kind === 'unknown' ? read.thickness : { kind: 'moulded', thickness: read.thickness };
}

export function buildSleeve(read: Read<typeof sleeve> | undefined): Sleeve | null | Unknown {
  const sleeve = orOpen(read);
  if (sleeve === null || 'kind' in sleeve) return sleeve;
  return {
    material: sleeve.material ?? null,
    wall: sleeve.wall ?? leftOut,
    into: sleeve.into ?? leftOut,
    withstand: sleeve.withstand ?? leftOut,
  };
}

export function buildMargins(read: Read<typeof margins> | undefined): Margins {
  const one = (side: Side): Margin => ({
    width: read?.[side]?.width ?? ZERO,
    filled: read?.[side]?.filled ?? false,
    height: read?.[side]?.height ?? null,
    moulded: read?.[side]?.moulded ?? false,
    material: read?.[side]?.material ?? null,
    withstand: read?.[side]?.withstand ?? leftOut,
  });
  return { left: one('left'), right: one('right') };
}

export const buildInset = (read: Read<typeof inset> | undefined): Record<Side, Known<Nm>> => ({
  left: read?.left ?? ZERO,
  right: read?.right ?? ZERO,
});
