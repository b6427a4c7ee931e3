// Sizes of a lead-out: how high it lies in its band, how wide its riser is, which of it displaces other layers.

import { nm, type Nm } from '#units/quantity.ts';
import type { Lay } from '#solver/section/build.ts';
import type { PlacedBuild } from '#solver/section/placement.ts';

/** One wire and its sleeve, both walls: height in the band and width of the riser. */
export const leadSize = (lay: Lay): Nm => nm(lay.wire.overall + 2 * (lay.sleeve?.wall ?? 0));

/**
 * It runs in a band of its own over its own winding, where it leaves at the other side, or over a winding that lies in
 * the same band between its end and the flange.
 */
export const crosses = ({ build, places }: PlacedBuild, lay: Lay): boolean =>
  lay.at !== lay.exit || places.get(build.layers[lay.layer]!)!.neighbours[lay.exit] !== null;

/** The sleeve covers a riser that stands `offset` from the flange: it reaches inside as far as the riser does. */
export const riserIsSleeved = (lay: Lay, offset: number): boolean =>
  lay.sleeve !== null && lay.sleeve.wall > 0 && lay.sleeve.into >= offset + leadSize(lay);

/** A strong sleeve or cover leaves the joints of other layers as long as they were: its riser takes no room. */
export function riserIsStrong(lay: Lay, offset: number, strength: SleeveStrength): boolean {
  if (lay.wire.cover && lay.wire.cover.plies === null) return true;
  return riserIsSleeved(lay, offset) && sleeveIsStrong(lay, strength);
}

/** What makes a sleeve strong: walls from this thickness up. What test they stand is no matter of where things lie. */
export interface SleeveStrength {
  readonly leastThickness: Nm;
}

export const sleeveIsStrong = ({ sleeve }: Lay, { leastThickness }: SleeveStrength): boolean =>
  sleeve !== null && sleeve.wall >= leastThickness;
