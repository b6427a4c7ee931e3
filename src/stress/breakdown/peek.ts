// At what field strength a smooth round wire glows in wide air, after Peek: 30 kV/cm, raised the more the thinner the
// wire (memory: the rule was seen in no document). Peak; the density is relative to air at sea level.

import { inMm, type Nm } from '#units/quantity.ts';

/** V per mm of clean wire. */
const FLAT = 3000;
/** Root of the centimetre. */
const BEND = 0.301;

export function coronaOnset(radius: Nm, density: number): number {
  return FLAT * density * (1 + BEND / Math.sqrt((density * inMm(radius)) / 10));
}
