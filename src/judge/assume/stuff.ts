// The solids of a build, numbered: the solver carries only their numbers.

import type { Solid } from '#books/questions/solid.ts';
import type { MaterialGroup } from '#units/terms.ts';
import type { StuffId } from '#solver/section/build.ts';

export const GROUPS: readonly MaterialGroup[] = ['I', 'II', 'IIIa', 'IIIb'];

export const rankOfGroup = (group: MaterialGroup): number => GROUPS.indexOf(group);

/** The stuffs of a build, numbered as they come; equal ones share a number. A buffer that grows, hence a class. */
export class Stuffs {
  readonly all: Solid[] = [];
  readonly #ids = new Map<string, StuffId>();

  /** `apart` keeps solids apart that are alike but not the same thing, such as the covers of two windings. */
  id(stuff: Solid, apart = ''): StuffId {
    const { kind, alike, group, strength, stated, perMm, material, solid, bonded, layers } = stuff;
    const key = [kind, alike, group, strength, stated, perMm, material, solid, bonded, layers, apart].join();
    const known = this.#ids.get(key);
    if (known !== undefined) return known;
    this.all.push(stuff);
    this.#ids.set(key, this.all.length - 1);
    return this.all.length - 1;
  }
}
