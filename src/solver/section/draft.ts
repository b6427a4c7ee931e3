// The regions of one section while they are laid in: every chamber's layers, leads, risers, then former and core.

import { nm, type Nm } from '#units/quantity.ts';
import type { Build, BuildSheet, BuildWire, Lay } from './build.ts';
import type { ConductorRegion, Rect, Region, RegionPart, SolidRegion } from './section.ts';

/** Numbers bodies, solids without a joint in them, as they come: no two drafts that share it number one alike. */
export class Bodies {
  #count = 0;

  next(): number {
    return this.#count++;
  }
}

/** A buffer that grows, hence a class. */
export class Draft {
  readonly regions: Region[] = [];
  readonly build: Build;
  readonly bodies: Bodies;
  readonly #named = new Map<string, number>();
  readonly #parts: RegionPart[] = [];
  /** Regions up to here are in a part. */
  #parted = 0;

  constructor(build: Build, bodies: Bodies) {
    this.build = build;
    this.bodies = bodies;
  }

  body(): number {
    return this.bodies.next();
  }

  /** Lays in what was laid before and is the same in every section. */
  take(regions: readonly Region[]): void {
    if (regions.length === 0) return;
    this.#closePart();
    for (const region of regions) this.regions.push(region);
    this.#parts.push({ regions, isShared: true });
    this.#parted = this.regions.length;
  }

  parts(): readonly RegionPart[] {
    this.#closePart();
    return this.#parts;
  }

  #closePart(): void {
    if (this.#parted === this.regions.length) return;
    this.#parts.push({ regions: this.regions.slice(this.#parted), isShared: false });
    this.#parted = this.regions.length;
  }

  /** One body for all pieces of the same sleeve, cover or moulding. */
  bodyOf(name: string): number {
    const body = this.#named.get(name) ?? this.body();
    this.#named.set(name, body);
    return body;
  }

  conductor(rect: Rect, what: Omit<ConductorRegion, keyof Rect | 'kind'>): void {
    if (isEmpty(rect)) return;
    const { x0, y0, x1, y1 } = rect;
    const { conductor, of, layer, bare, crossing, strippedLead, stretched } = what;
    // written out: a spread of the parts is many times slower, and this runs for every region of every section
    this.regions.push({
      kind: 'conductor',
      x0,
      y0,
      x1,
      y1,
      conductor,
      of,
      layer,
      bare,
      crossing,
      strippedLead,
      stretched,
    });
  }

  solid(rect: Rect, what: Omit<SolidRegion, keyof Rect | 'closed'> & { closed?: boolean }): void {
    if (isEmpty(rect)) return;
    const { x0, y0, x1, y1 } = rect;
    const { kind, body, stuff, layer, ply, crossX, crossY, turnUp, drifted } = what;
    const closed = what.closed === true || this.build.potted;
    this.regions.push({
      kind,
      x0,
      y0,
      x1,
      y1,
      body,
      stuff,
      layer,
      ply,
      crossX,
      crossY,
      closed,
      turnUp,
      drifted,
    });
  }

  /** Plies of a sheet stacked from y0 outward, each a body of its own. */
  plies(x0: Nm, x1: Nm, y0: Nm, sheet: BuildSheet, what: Partial<SolidRegion>): void {
    for (let ply = 0; ply < sheet.plies; ply++) {
      const bottom = y0 + ply * sheet.plyThickness;
      this.ply(rect(x0, bottom, x1, bottom + sheet.plyThickness), sheet, ply, what);
    }
  }

  ply(at: Rect, { stuff }: BuildSheet, ply: number, what: Partial<SolidRegion>): void {
    this.solid(at, {
      kind: 'ply',
      body: this.body(),
      stuff,
      layer: null,
      crossX: 'measured',
      crossY: 'measured',
      turnUp: nm(0),
      drifted: false,
      ...what,
      ply,
    });
  }

  /** The hull of wire: its conductor, and the cover round it where there is one. */
  wire(
    hull: Rect,
    wire: BuildWire,
    what: Omit<ConductorRegion, keyof Rect | 'kind' | 'bare'>,
    body: number = this.body(),
  ): void {
    if (isEmpty(hull)) return;
    const cover = wire.cover;
    if (!cover) return this.conductor(hull, { ...what, bare: wire.bare });
    const crossing = cover.plies ?? 'strong';
    this.solid(hull, {
      kind: 'wireCover',
      body,
      stuff: cover.stuff,
      layer: what.layer,
      ply: null,
      crossX: crossing,
      crossY: crossing,
      turnUp: nm(0),
      drifted: false,
    });
    this.conductor(shrink(hull, cover.thickness), { ...what, bare: false });
  }

  sleeve(hull: Rect, lay: Lay, layer: number | null): void {
    if (!lay.sleeve || lay.sleeve.wall === 0) return;
    this.solid(hull, {
      kind: 'sleeve',
      body: this.bodyOf(`sleeve ${lay.name}`),
      stuff: lay.sleeve.stuff,
      layer,
      ply: null,
      crossX: 'measured',
      crossY: 'measured',
      turnUp: nm(0),
      drifted: false,
    });
  }
}

export const rect = (x0: number, y0: number, x1: number, y1: number): Rect => ({
  x0: nm(x0),
  y0: nm(y0),
  x1: nm(x1),
  y1: nm(y1),
});

export const isEmpty = (r: Rect): boolean => r.x1 <= r.x0 || r.y1 <= r.y0;

export const shrink = (r: Rect, by: number): Rect => rect(r.x0 + by, r.y0 + by, r.x1 - by, r.y1 - by);
