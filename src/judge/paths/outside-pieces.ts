// Pieces of a path outside the winding window: distances that the file states, and those between leads that leave at one
// side.

import type { Design } from '#model/design.ts';
import type { Build, Lay } from '#solver/section/build.ts';
import { chamberFaces } from '#solver/section/fit.ts';
import { neighbourLays } from '#solver/placing/lay-out.ts';
import { placementOf } from '#solver/section/placement.ts';
import type { SolidOptions } from '#solver/network/pieces.ts';
import type { Metric, MaterialGroup } from '#units/terms.ts';
import { puncturedBy } from '#solver/network/runs.ts';
import { nm, type Nm } from '#units/quantity.ts';
import type { FilledOutside } from '#judge/fill/fill-outside.ts';
import type { ChainPiece } from '#judge/grade/chain.ts';
import { rankOfGroup } from '#judge/assume/stuff.ts';

/** `filled`: what each of the file's distances counts as. */
export function outsidePieces(
  design: Design,
  filled: readonly FilledOutside[],
  build: Build,
  metric: Metric,
  strength: SolidOptions,
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
function leadsApart(build: Build, metric: Metric, strength: SolidOptions): readonly ChainPiece[] {
  const isOpen = (lay: Lay) =>
    !isStrongCover(lay, strength) &&
    !(isStrongSleeve(lay, strength) && lay.sleeve!.into >= runOf(build, lay));
  if (build.lays.every(({ apart }) => apart === null)) return [];
  return neighbourLays(build).flatMap(([a, b]): readonly ChainPiece[] => {
    const stated = [a.apart, b.apart].filter((one) => one !== null);
    if (stated.length === 0 || !isOpen(a) || !isOpen(b)) return [];
    const length = nm(Math.min(...stated));
    return [outsidePiece(metric, [a.circuit, b.circuit], length, `${a.name} to ${b.name}`, 'IIIb', null)];
  });
}

const isStrongCover = ({ wire: { cover } }: Lay, strength: SolidOptions): boolean =>
  cover?.plies === null &&
  puncturedBy(strength, { stuff: cover.stuff, isCover: true }, 'strong', cover.thickness) === null;

const isStrongSleeve = ({ sleeve }: Lay, strength: SolidOptions): boolean =>
  sleeve !== null &&
  puncturedBy(strength, { stuff: sleeve.stuff, isCover: false }, 'measured', sleeve.wall) === null;

/** How far a lead runs inside the chamber, from its winding's end to the flange where it leaves. */
function runOf(build: Build, { layer, at, exit }: Lay): number {
  const wound = build.layers[layer]!;
  const place = placementOf(build, wound);
  const face = chamberFaces(build)[wound.chamber]!;
  const end = at === 'left' ? place.x0 : place.x1;
  return exit === 'left' ? end - face.x0 : face.x1 - end;
}
