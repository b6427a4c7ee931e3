// All that shapes a path of a section, as one string. What a region has is listed here field by field, shaping or not: one
// that is added later and not placed does not compile.

import type { ConductorRegion, Region, Section, SolidRegion } from '#solver/section/section.ts';

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
  parts: false,
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

/** Tells sections; each part that several of them share is told once. Hence a class. */
export class GeometryKeys {
  readonly #told = new WeakMap<readonly Region[], string>();
  readonly #numberOf: (told: string) => number;

  /** `numberOf`: another number for every other text. */
  constructor(numberOf: (told: string) => number) {
    this.#numberOf = numberOf;
  }

  /** The same however the regions are parted: each is told field by field, the whole as one list. */
  of(section: Section): string {
    const bodies = new Map<number, number>();
    let count = 0;
    const parts = (section.parts ?? [{ regions: section.regions, isShared: false }]).map((part) => {
      const told = part.isShared ? this.#shared(part.regions) : this.#tell(part.regions, count, bodies);
      count += part.regions.length;
      return told;
    });
    return `${JSON.stringify(SECTION.map((field) => section[field]))} ${parts.join(' ')}`;
  }

  #shared(regions: readonly Region[]): string {
    const known = this.#told.get(regions) ?? this.#tell(regions, 0, new Map());
    this.#told.set(regions, known);
    return known;
  }

  /** `from`: place of the first in the section; `bodies`: place of the last region of each. */
  #tell(regions: readonly Region[], from: number, bodies: Map<number, number>): string {
    return regions
      .map((region, i) => {
        const what = this.#numberOf(JSON.stringify(fieldsOf(region)));
        return region.kind === 'conductor' ? what : `${what}:${backTo(bodies, region.body, from + i)}`;
      })
      .join(' ');
  }
}

const fieldsOf = (region: Region): readonly unknown[] =>
  region.kind === 'conductor'
    ? CONDUCTOR.map((field) => region[field])
    : SOLID.map((field) => (field === 'body' ? null : region[field]));

/** How many regions ago the same body came last, 0 for never: all that matters of its number is which others have it. */
function backTo(bodies: Map<number, number>, body: number, at: number): number {
  const last = bodies.get(body);
  bodies.set(body, at);
  return last === undefined ? 0 : at - last;
}
