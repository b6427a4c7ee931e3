// Makers of the oracle's regions: the solver's plain shape, with the marks that no path hangs on left neutral.

import type { StuffId } from '#solver/section/build.ts';
import type { ConductorRegion, Crossing, SolidRegion } from '#solver/section/section.ts';
import { nm } from '#units/quantity.ts';
import type { Box } from './box.ts';

const rect = (b: Box) => ({ x0: nm(b.x0), y0: nm(b.y0), x1: nm(b.x1), y1: nm(b.y1) });

export function conductor(
  b: Box,
  id: string,
  of: ConductorRegion['of'],
  layer: number | null,
): ConductorRegion {
  return {
    ...rect(b),
    kind: 'conductor',
    conductor: id,
    of,
    layer,
    bare: true,
    crossing: false,
    strippedLead: false,
    stretched: false,
  };
}

interface SolidExtra {
  readonly layer?: number | null;
  readonly ply?: number | null;
  readonly crossX?: Crossing;
  readonly crossY?: Crossing;
  readonly turnUp?: number;
}

export function solid(
  b: Box,
  kind: SolidRegion['kind'],
  stuff: StuffId,
  body: number,
  closed: boolean,
  extra: SolidExtra = {},
): SolidRegion {
  return {
    ...rect(b),
    kind,
    body,
    stuff,
    layer: extra.layer ?? null,
    ply: extra.ply ?? null,
    crossX: extra.crossX ?? 'measured',
    crossY: extra.crossY ?? 'measured',
    closed,
    turnUp: nm(extra.turnUp ?? 0),
    drifted: false,
  };
}
