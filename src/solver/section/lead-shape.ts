// Sizes of a lead-out: how high it lies in its band, how wide its riser is, which of it displaces other layers.

import { nm, type Nm } from '#units/quantity.ts';
import type { Lay, StuffId } from './build.ts';

/** One wire and its sleeve, both walls: height in the band and width of the riser. */
export const leadSize = (lay: Lay): Nm => nm(lay.wire.overall + 2 * (lay.sleeve?.wall ?? 0));

export const crossesBack = (lay: Lay): boolean => lay.at !== lay.exit;

/** The sleeve covers the riser: it reaches inside at least as far as the riser is wide. */
export const riserIsSleeved = (lay: Lay): boolean =>
  lay.sleeve !== null && lay.sleeve.wall > 0 && lay.sleeve.into >= leadSize(lay);

/** A strong sleeve or cover leaves the joints of other layers as long as they were: its riser takes no room. */
export function riserIsStrong(lay: Lay, strength: SleeveStrength): boolean {
  if (lay.wire.cover && lay.wire.cover.plies === null) return true;
  return riserIsSleeved(lay) && sleeveIsStrong(lay, strength);
}

/** What makes a sleeve strong. */
export interface SleeveStrength {
  /** Walls from this thickness up. */
  readonly leastThickness: Nm;
  /** But not those whose stated withstand is under a test. */
  readonly weak?: readonly StuffId[];
}

export const sleeveIsStrong = ({ sleeve }: Lay, { leastThickness, weak }: SleeveStrength): boolean =>
  sleeve !== null && sleeve.wall >= leastThickness && !(weak?.includes(sleeve.stuff) ?? false);
