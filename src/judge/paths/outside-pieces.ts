// Pieces of a path outside the winding window: distances that the file states, and those between leads that leave at one
// side.

import type { Design } from '#model/design.ts';
import type { Build, Lay, StuffId } from '#solver/section/build.ts';
import { chamberFaces } from '#solver/section/fit.ts';
import { neighbourLays } from '#solver/section/lay-out.ts';
import { sleeveIsStrong, type SleeveStrength } from '#solver/section/lead-shape.ts';
import { placementOf } from '#solver/section/placement.ts';
import type { Metric } from '#solver/paths/pieces.ts';
import type { MaterialGroup } from '#standards/grade.ts';
import { nm, type Nm } from '#units/quantity.ts';
import type { FilledOutside } from '#judge/fill/fill-outside.ts';
import type { ChainPiece } from '#judge/grade/chain.ts';
import { rankOfGroup } from '#judge/grade/stuff.ts';

/** What makes a sleeve strong enough: its thickness, but not where what it stands is under a test. */
export interface SleeveTest extends SleeveStrength {
  readonly weak: readonly StuffId[];
}

/** `filled`: what each of the file's distances counts as. */
export function outsidePieces(
  design: Design,
  filled: readonly FilledOutside[],
  build: Build,
  metric: Metric,
  strength: SleeveTest,
): readonly ChainPiece[] {
  const entries = design.outside.flatMap((entry, i): readonly ChainPiece[] => {
    const { length, group } = filled[i]!;
    const counted = length[metric];
    return counted === null ? [] : [outsidePiece(metric, entry.between, counted, entry.what, group, i)];
  });
  return [...entries, ...leadsApart(build, metric, strength)];
}

const outsidePiece = (
  metric: Metric,
  between: readonly [string, string],
  length: Nm,
  what: string,
  group: MaterialGroup,
  entry: number | null,
): ChainPiece => ({
  kind: 'outside',
  between,
  length,
  plies: 0,
  rank: metric === 'creepage' ? rankOfGroup(group) : 0,
  what,
  group,
  entry,
  isBare: false,
});

/**
 * Leads that leave at one side a stated distance apart; a strong cover, or a strong sleeve over the whole of one, leaves
 * no path between them.
 */
function leadsApart(build: Build, metric: Metric, strength: SleeveTest): readonly ChainPiece[] {
  const isStrong = (lay: Lay) => sleeveIsStrong(lay, strength) && !strength.weak.includes(lay.sleeve!.stuff);
  const isOpen = (lay: Lay) =>
    !(lay.wire.cover && lay.wire.cover.plies === null) &&
    !(isStrong(lay) && lay.sleeve!.into >= runOf(build, lay));
  return neighbourLays(build).flatMap(([a, b]): readonly ChainPiece[] => {
    const stated = [a.apart, b.apart].filter((one) => one !== null);
    if (stated.length === 0 || !isOpen(a) || !isOpen(b)) return [];
    const length = nm(Math.min(...stated));
    return [outsidePiece(metric, [a.circuit, b.circuit], length, `${a.name} to ${b.name}`, 'IIIb', null)];
  });
}

/** How far a lead runs inside the chamber, from its winding's end to the flange where it leaves. */
function runOf(build: Build, { layer, at, exit }: Lay): number {
  const wound = build.layers[layer]!;
  const place = placementOf(build, wound);
  const face = chamberFaces(build)[wound.chamber]!;
  const end = at === 'left' ? place.x0 : place.x1;
  return exit === 'left' ? end - face.x0 : face.x1 - end;
}
