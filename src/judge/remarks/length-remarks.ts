// Pairs that have what they need by a hair of length: by a figure that is interpolated, or by the climb along ply edges.
// Told of the shortest way through nothing, whatever other path limits the pair.

import { GROUPS } from '#judge/assume/stuff.ts';
import { reaches } from '#standards/ladder.ts';
import type { FoundPath, PairOutcome } from '#judge/paths/case-result.ts';
import type { Leg } from '#solver/network/pieces.ts';
import type { Region } from '#solver/section/section.ts';
import { nextRowOf } from '#standards/tables/next-row.ts';
import type { Remark } from '#judge/verdict/remark.ts';

export const lengthRemarks = (barriers: readonly PairOutcome[]): readonly Remark[] => [
  ...barriers.flatMap(byInterpolation),
  ...barriers.flatMap(byClimb),
];

/** The pair meets with the interpolated figure, but not with the next row of the table. */
function byInterpolation(pair: PairOutcome): readonly Remark[] {
  const { between, required } = pair;
  const next = byLengthAlone(pair).flatMap((path) => {
    const figures = path.metric === 'creepage' ? required.creepage(GROUPS[path.rank]!) : required.clearance;
    const row = nextRowOf((isStrong(pair) ? figures.reinforced : figures.basic).because);
    return row !== null && path.length / 1e6 < row ? [row] : [];
  })[0];
  if (next === undefined) return [];
  return [{ kind: 'interpolated', between, nextRow: next }];
}

/** Without the climb along the ply edges the path would be too short. */
function byClimb(pair: PairOutcome): readonly Remark[] {
  const climb = byLengthAlone(pair).flatMap((path) => {
    const climbed = climbOf(path);
    const limits = path.asked.distance(path.rank);
    const wanted = isStrong(pair) ? limits.reinforced : limits.basic;
    return wanted === null || path.length - climbed >= wanted || climbed === 0 ? [] : [climbed];
  })[0];
  if (climb === undefined) return [];
  return [{ kind: 'meets-by-climb', between: pair.between, climb: climb / 1e6 }];
}

const isStrong = ({ needed }: PairOutcome): boolean => needed === 'reinforced' || needed === 'double';

/** Up and down the edges of plies at a flange; a bare flange or divider is a wall that stands. */
function climbOf({ chain, section }: FoundPath): number {
  const legs = chain.pieces.flatMap((piece) => (piece.kind === 'inside' ? piece.piece.trace() : []));
  const faces = section?.chambers.flatMap(({ x0, x1 }) => [x0, x1]) ?? [];
  return legs
    .filter((leg) => leg.from[0] === leg.to[0] && leg.from[1] !== leg.to[1] && faces.includes(leg.from[0]))
    .reduce((sum, leg) => sum + leg.length * shareAtPlies(leg, section?.regions ?? []), 0);
}

/** Which part of an upright leg runs along the edges of plies. */
function shareAtPlies({ from, to }: Leg, regions: readonly Region[]): number {
  const [x, low, high] = [from[0], Math.min(from[1], to[1]), Math.max(from[1], to[1])];
  const along = regions
    .filter((r) => r.kind === 'ply' && (r.x0 === x || r.x1 === x))
    .reduce((sum, r) => sum + Math.max(0, Math.min(high, r.y1) - Math.max(low, r.y0)), 0);
  return Math.min(1, along / (high - low));
}

/** The shortest ways through nothing, of a pair that has what it needs: only their length holds it there. */
function byLengthAlone({ holding, shortest, achieved, needed }: PairOutcome): readonly FoundPath[] {
  if (!reaches(achieved, needed)) return [];
  const paths = [holding, shortest.creepage[0], shortest.clearance[0]];
  return paths.flatMap((path) => (path?.kind === 'path' && path.plies === 0 ? [path] : []));
}
