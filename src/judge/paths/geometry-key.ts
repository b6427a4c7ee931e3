// All that shapes a path of a section, as one string. What a region has is listed here field by field, shaping or not: one
// that is added later and not placed does not compile.

import type { ConductorRegion, Section, SolidRegion } from '#solver/section/section.ts';

const OF_CONDUCTORS = {
  kind: true,
  x0: true,
  y0: true,
  x1: true,
  y1: true,
  conductor: true,
  of: false,
  layer: false,
  bare: false,
  crossing: false,
  strippedLead: false,
  stretched: false,
} as const satisfies Record<keyof ConductorRegion, boolean>;

/** The layer tells which plies a closed joint joins. */
const OF_SOLIDS = {
  kind: true,
  x0: true,
  y0: true,
  x1: true,
  y1: true,
  body: true,
  stuff: true,
  layer: true,
  ply: false,
  crossX: true,
  crossY: true,
  closed: true,
  turnUp: true,
  drifted: false,
} as const satisfies Record<keyof SolidRegion, boolean>;

const OF_SECTIONS = {
  name: false,
  kind: true,
  slumped: false,
  moved: false,
  lays: false,
  regions: false,
  bands: false,
  frame: true,
  sagging: true,
  potted: true,
  chambers: false,
  stackTops: false,
  coreAbove: false,
} as const satisfies Record<keyof Section, boolean>;

const shaping = <Field extends string>(fields: Readonly<Record<Field, boolean>>): readonly Field[] =>
  (Object.keys(fields) as Field[]).filter((field) => fields[field]);

const CONDUCTOR = shaping(OF_CONDUCTORS);
const SOLID = shaping(OF_SOLIDS);
const SECTION = shaping(OF_SECTIONS);

/** Regions are told field by field, the whole as one list, so that no two lists are told alike. */
export function geometryKeyOf(section: Section): string {
  const parts: unknown[] = SECTION.map((field) => section[field]);
  for (const region of section.regions) {
    if (region.kind === 'conductor') for (const field of CONDUCTOR) parts.push(region[field]);
    else for (const field of SOLID) parts.push(region[field]);
  }
  return JSON.stringify(parts);
}
