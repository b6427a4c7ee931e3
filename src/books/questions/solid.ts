// A solid as far as a rule book tells solids apart, what it is shown to stand, and the test levels that it is held to.

import type { Because } from '#standards/because.ts';
import type { MaterialGroup } from '#units/terms.ts';
import type { Nm, VoltsPeak } from '#units/quantity.ts';

/** What a solid stands for 60 s: a peak, whatever is asked, or nothing that was shown. */
export type Strength = VoltsPeak | 'whatever' | null;

export interface Solid {
  /** `run`: a run through another solid that is as thick as a strong solid, but shows only so much. */
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

/** So many of one solid, crossed one after another. */
export interface Crossed {
  readonly solid: Solid;
  readonly count: number;
}

export interface Levels {
  readonly basic: VoltsPeak | null;
  readonly reinforced: VoltsPeak | null;
}

/**
 * Test levels of a pair for solids of one material, peak: the larger of the ordinary one and that for high frequency. Null
 * where the book has none: then nothing stands it.
 */
export interface TestLevels extends Levels {
  /** Where the book has a level of its own for it. */
  readonly supplementary?: VoltsPeak | null;
  readonly ordinary: Levels;
}

/** By the material's id; null: none is named. */
export type LevelsOf = (material: string | null) => TestLevels;

/** A strength may fall short of a level by this part and still count. */
export const SLACK = 0.001;

export const stands = (strength: Strength, level: VoltsPeak | null): boolean =>
  strength === 'whatever' || (strength !== null && level !== null && strength >= level * (1 - SLACK));
