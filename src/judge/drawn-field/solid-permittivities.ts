// The relative permittivity of everything solid in a section, with where each figure was seen. A material that is not
// known counts with a figure from the upper half of its kind: that raises the field in the air beside it.

import type { Design } from '#model/design.ts';
import type { Sheet } from '#model/design/sheet.ts';
import { formerById, tapeById, type Figure } from '#standards/materials/materials.ts';
import { permittivityOf, type PlainSolid } from '#standards/materials/permittivities.ts';
import type { Confirmed } from '#standards/because.ts';
import type { SolidRegion } from '#solver/section/section.ts';

export interface CountedPermittivity {
  /** Id of a material, or a kind of solid whose material is not known. */
  readonly what: string;
  readonly value: number;
  readonly confirmed: Confirmed;
}

export class SolidPermittivities {
  readonly #design: Design;
  readonly #counted = new Map<string, CountedPermittivity>();

  constructor(design: Design) {
    this.#design = design;
  }

  get counted(): readonly CountedPermittivity[] {
    return [...this.#counted.values()];
  }

  of(region: SolidRegion): number {
    const { former, core, layers } = this.#design;
    const layer = region.layer === null ? null : (layers[region.layer] ?? null);
    if (region.kind === 'moulding') return this.#former();
    if (region.kind === 'wrap') return this.#sheet(core.wrap, 'tape');
    if (region.kind === 'block') return this.#margin(region);
    if (layer?.kind === 'tape') return this.#sheet(layer, 'tape');
    if (layer?.kind === 'screen') return this.#sheet(layer.overlap, 'tape');
    return this.#sheet(former.wall.kind === 'plies' ? former.wall : null, 'tape');
  }

  ofWire(kind: 'enamel' | 'cover'): number {
    return this.#plain(kind);
  }

  compound(): number {
    return this.#plain('compound');
  }

  #former(): number {
    const { material } = this.#design.former;
    const listed = typeof material === 'string' ? formerById(material) : null;
    return this.#listed(listed, 'moulding');
  }

  #sheet(sheet: Pick<Sheet, 'material'> | null, plain: PlainSolid): number {
    return this.#listed(sheet?.material == null ? null : tapeById(sheet.material), plain);
  }

  #margin({ layer, x0 }: SolidRegion): number {
    const drawn = layer === null ? null : this.#design.layers[layer];
    if (drawn == null) return this.#plain('margin');
    // the block at the left begins at its chamber's face
    const faces = this.#design.former.chambers.reduce<readonly number[]>(
      (all, { width }, i) => [...all, all[i]! + width.value + (this.#design.former.dividers[i]?.value ?? 0)],
      [0],
    );
    const side = x0 === faces[drawn.chamber] ? 'left' : 'right';
    return this.#sheet(drawn.margins[side], 'margin');
  }

  #listed(
    material: { readonly id: string; readonly permittivity: Figure<number> | null } | null,
    plain: PlainSolid,
  ): number {
    return material?.permittivity == null
      ? this.#plain(plain)
      : this.#count(material.id, material.permittivity);
  }

  #plain(kind: PlainSolid): number {
    return this.#count(kind, permittivityOf(kind));
  }

  #count(what: string, { value, cite }: Figure<number>): number {
    this.#counted.set(what, { what, value, confirmed: cite.confirmed });
    return value;
  }
}
