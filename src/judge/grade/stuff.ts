// What solids are made of, as far as grading tells them apart: the solver carries only their numbers.

import type { Because } from '#standards/because.ts';
import type { MaterialGroup } from '#standards/grade.ts';
import type { StuffId } from '#solver/section/build.ts';
import type { Nm, VoltsPeak } from '#units/quantity.ts';

/** What a solid stands for 60 s: a peak, whatever is asked, or nothing that was shown. */
export type Strength = VoltsPeak | 'whatever' | null;

export interface Stuff {
  /** `run`: a run through another stuff that is as thick as a strong solid, but shows only so much. */
  readonly kind: 'sheet' | 'wall' | 'block' | 'sleeve' | 'cover' | 'full-cover' | 'closed-joint' | 'run';
  /** Solids of one material and thickness add their strengths; others count twice the weaker. */
  readonly alike: string;
  readonly group: MaterialGroup;
  /** Of one ply, or of the whole where it is no sheet. */
  readonly strength: Strength;
  /** Strength that was stated, not taken from a table: holds for thick solids too. */
  readonly stated: boolean;
  /** What a millimetre of it shows, V peak: 0 of what is woven or wound, without end where all is taken at its best. */
  readonly perMm: number;
  /** Row of the reduction at high frequency: an id of ours; null where no material is named. */
  readonly material: string | null;
  readonly thickness: Nm;
  /** What of a sheet's thickness is solid through and through: its film. */
  readonly solid: Nm;
  /** Plies of this file's layer cannot be parted and are graded together. */
  readonly bonded: number | null;
  /** Certified layers of a wire's cover. */
  readonly layers: 1 | 2 | 3 | null;
  readonly because: Because;
}

export const GROUPS: readonly MaterialGroup[] = ['I', 'II', 'IIIa', 'IIIb'];

export const rankOfGroup = (group: MaterialGroup): number => GROUPS.indexOf(group);

/** The stuffs of a build, numbered as they come; equal ones share a number. A buffer that grows, hence a class. */
export class Stuffs {
  readonly all: Stuff[] = [];
  readonly #ids = new Map<string, StuffId>();

  /** `apart` keeps solids apart that are alike but not the same thing, such as the covers of two windings. */
  id(stuff: Stuff, apart = ''): StuffId {
    const { kind, alike, group, strength, stated, perMm, material, solid, bonded, layers } = stuff;
    const key = [kind, alike, group, strength, stated, perMm, material, solid, bonded, layers, apart].join();
    const known = this.#ids.get(key);
    if (known !== undefined) return known;
    this.all.push(stuff);
    this.#ids.set(key, this.all.length - 1);
    return this.all.length - 1;
  }
}
