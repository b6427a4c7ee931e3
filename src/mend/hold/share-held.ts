// The share of pieces wound by hand that a mend holds in, by drawn pieces; and whether it holds in all of them for certain.

import type { FileJudge } from '#judge/judging/judge-files.ts';
import type { Reached } from '#judge/judging/short-judgement.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { coordinatesOf } from '#spread/coordinates.ts';
import type { Placement } from '#spread/placement.ts';
import { spreadPart } from '#spread/spread.ts';
import { worstPiece } from '#spread/worst-piece.ts';

export interface Holding {
  readonly judge: FileJudge;
  readonly placement: Placement;
  /** No more time: what is drawn so far is told. */
  readonly isOver: () => boolean;
}

export interface HeldShare {
  readonly share: number;
  /** Pieces that it was counted of. */
  readonly drawn: number;
  readonly isCut: boolean;
}

const holds = ({ mended }: Reached): boolean => mended;

/** `least`: a share below it need not be known; it ends as soon as it is below for certain. */
export function* shareOf(
  doc: DesignFile,
  draws: number,
  { judge, placement, isOver }: Holding,
  least = 0,
): Generator<void, HeldShare, void> {
  const search = spreadPart(doc, judge, { seed: 1, draws, measured: 0, placement, holds }, [0, draws]);
  for (;;) {
    const { done, value } = search.next();
    const { count, meets } = value;
    if (done === true || count - meets > (1 - least) * draws + 1e-9)
      return { share: meets / draws, drawn: draws, isCut: false };
    if (isOver()) return { share: count === 0 ? 0 : meets / count, drawn: count, isCut: true };
    yield;
  }
}

/**
 * Whether the worst piece of all holds, no ply forgotten: then all do, but for those with a ply too few. Where sleeves may end
 * before their windings the worst piece takes many judgements to find; that is left to drawing.
 */
export function holdsForCertain(doc: DesignFile, { judge, placement }: Holding): boolean {
  const lengths = coordinatesOf(doc, { ...placement, forgottenPly: 0 });
  if (lengths.some(({ isTense }) => isTense)) return false;
  return judge.reach(worstPiece(doc, lengths))?.mended === true;
}
