// Pieces of a path outside the winding window: distances that the file states, and those between leads that leave at one
// side.

import type { Design } from '#model/design.ts';
import type { Build, Lay } from '#solver/build.ts';
import { neighbourLays } from '#solver/lay-out.ts';
import type { Metric } from '#solver/pieces.ts';
import type { MaterialGroup } from '#standards/grade.ts';
import { nm, type Nm } from '#units/quantity.ts';
import type { ChainPiece } from './chain.ts';
import { rankOfGroup } from './stuff.ts';

/** `groups`: that of each of the file's distances. One without this metric says nothing of it. */
export function outsidePieces(
  design: Design,
  groups: readonly MaterialGroup[],
  build: Build,
  metric: Metric,
  leastThickness: Nm,
): readonly ChainPiece[] {
  const entries = design.outside.flatMap((entry, i): readonly ChainPiece[] => {
    const length = entry[metric]?.value;
    return length === undefined ? [] : [outsidePiece(metric, entry.between, length, entry.what, groups[i]!)];
  });
  return [...entries, ...leadsApart(build, metric, leastThickness)];
}

const outsidePiece = (
  metric: Metric,
  between: readonly [string, string],
  length: Nm,
  what: string,
  group: MaterialGroup,
): ChainPiece => ({
  kind: 'outside',
  between,
  length,
  plies: 0,
  rank: metric === 'creepage' ? rankOfGroup(group) : 0,
  what,
  group,
});

/** Leads that leave at one side a stated distance apart; a strong sleeve or cover leaves no path between them. */
function leadsApart(build: Build, metric: Metric, leastThickness: Nm): readonly ChainPiece[] {
  const isOpen = (lay: Lay) =>
    !(lay.wire.cover && lay.wire.cover.plies === null) &&
    (lay.sleeve === null || lay.sleeve.wall < leastThickness);
  return neighbourLays(build).flatMap(([a, b]): readonly ChainPiece[] => {
    const stated = [a.apart, b.apart].filter((one) => one !== null);
    if (stated.length === 0 || !isOpen(a) || !isOpen(b)) return [];
    const length = nm(Math.min(...stated));
    return [outsidePiece(metric, [a.circuit, b.circuit], length, `${a.name} to ${b.name}`, 'IIIb')];
  });
}
