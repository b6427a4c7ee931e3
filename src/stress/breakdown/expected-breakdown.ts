// What the weakest path between two circuits would probably break down at: the air or surface along it by the Paschen
// curve, the plies that it punctures by their rated breakdown, added up; at a contact the enamel alone. A surface holds
// what as much air does, or less. An expectation, for the trap that a build passes its test and still falls short.
//
// Step: expected-breakdown {length, plies, perPly, enamel, least, likely, most}, mm and V peak.

import { because, type Because } from '#standards/because.ts';
import { inMm, voltsPeak, type Metres, type Nm, type VoltsPeak, type VoltsRms } from '#units/quantity.ts';

import { airBreakdown, type Breakdown } from './paschen.ts';

export interface PathFigures {
  readonly length: Nm;
  /** Plies punctured. */
  readonly plies: number;
}

export interface Materials {
  /** Rated breakdown of the weakest ply; null where it is not known. */
  readonly perPly: VoltsRms | null;
  /** What the enamel of the weaker wire holds; null where it is not known. */
  readonly enamel: VoltsRms | null;
  readonly altitude: Metres;
}

export interface ExpectedBreakdown extends Breakdown {
  readonly path: PathFigures;
  readonly because: Because;
}

/** The weakest of several paths; null where there is none, or where one rests on a strength that nobody knows. */
export function weakestBreakdown(
  paths: readonly PathFigures[],
  materials: Materials,
): ExpectedBreakdown | null {
  let weakest: ExpectedBreakdown | null = null;
  for (const path of paths) {
    const found = expectedBreakdown(path, materials);
    if (found === null) return null;
    if (weakest === null || found.likely < weakest.likely) weakest = found;
  }
  return weakest;
}

function expectedBreakdown(
  path: PathFigures,
  { perPly, enamel, altitude }: Materials,
): ExpectedBreakdown | null {
  const air = airBreakdown(path.length, altitude);
  const touching = path.length === 0 && path.plies === 0;
  if ((path.plies > 0 && perPly === null) || (touching && enamel === null)) return null;
  const solid = Math.SQRT2 * ((touching ? enamel : perPly === null ? 0 : perPly * path.plies) ?? 0);
  const withSolid = (volts: VoltsPeak) => voltsPeak(volts + solid);
  const [least, likely, most] = [withSolid(air.least), withSolid(air.likely), withSolid(air.most)];
  const values = {
    length: inMm(path.length),
    plies: path.plies,
    perPly: path.plies > 0 ? perPly : null,
    enamel: touching ? enamel : null,
    least,
    likely,
    most,
  };
  return { least, likely, most, path, because: because('expected-breakdown', values) };
}
