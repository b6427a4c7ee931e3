// The oracle's handling: row by row how far a winding's ends go, and how far tapes and screens wander.

import type { BuildLayer, BuildWindingLayer } from '#solver/section/build.ts';
import type { Side } from '#units/terms.ts';
import { type Box, box, boxes } from './box.ts';
import type { OracleBand, OracleBlock } from './oracle-stack.ts';

export type OracleSlump = null | 'as-is' | 'left' | 'right';

export interface Free {
  readonly left: number;
  readonly right: number;
}

export interface Span {
  readonly x0: number;
  readonly x1: number;
}

/** What was handled: how it was pushed, and which layers may have moved. */
export interface OracleHandling {
  readonly slump: OracleSlump;
  readonly moves: (layer: BuildLayer) => boolean;
}

/** Occupied width of a band in its section, ends clipped at risers, before handling; what is in a riser's way keeps touching it. */
export function clipped(band: Span, free: Free): Span {
  const x0 = Math.min(Math.max(band.x0, free.left), free.right - 1);
  return { x0, x1: Math.max(Math.min(band.x1, free.right), x0 + 1) };
}

/** A winding in the section without leads, with the windings that share its band and all their blocks. */
export interface PlainBand {
  readonly band: OracleBand;
  readonly mates: readonly OracleBand[];
}

const blockAt = ({ band, mates }: PlainBand, side: Side): OracleBlock | undefined =>
  mates
    .flatMap((mate) => mate.blocks)
    .find((b) =>
      side === 'left' ? b.x1 <= band.x0 && b.x0 >= band.ends.x0 : b.x0 >= band.x1 && b.x1 <= band.ends.x1,
    );

const gapAt = ({ x0, x1, ends }: OracleBand, side: Side): number =>
  Math.max(0, side === 'left' ? x0 - ends.x0 : ends.x1 - x1);

/** A row is held by an anchor, by the flange that it touches, or by a block beside it that reaches its middle. */
function isHeld(plain: PlainBand, layer: BuildWindingLayer, side: Side, row: number): boolean {
  if (!layer.wire.slumps || layer.anchored || gapAt(plain.band, side) === 0) return true;
  const block = blockAt(plain, side);
  if (block === undefined) return false;
  const touches = side === 'left' ? block.x1 === plain.band.x0 : block.x0 === plain.band.x1;
  return touches && reaches(block, layer, row);
}

const reaches = (block: OracleBlock, { wire }: BuildWindingLayer, row: number): boolean =>
  2 * block.height >= (2 * row + 1) * wire.overall;

const rowsOf = (plain: PlainBand, layer: BuildWindingLayer): number[] =>
  Array.from({ length: plain.band.own / layer.wire.overall }, (_, row) => row);

export const isLoose = (plain: PlainBand, side: Side): boolean => {
  const { layer } = plain.band;
  return layer.kind === 'winding' && rowsOf(plain, layer).some((row) => !isHeld(plain, layer, side, row));
};

/** Two loose ends with nothing between them. */
export function facesAnother(plain: PlainBand, side: Side, moves: OracleHandling['moves']): boolean {
  const { band, mates } = plain;
  if (blockAt(plain, side) !== undefined || gapAt(band, side) === 0) return false;
  return mates.some(
    (mate) =>
      moves(mate.layer) &&
      (side === 'left'
        ? mate.x1 === band.ends.x0 && mate !== band
        : mate.x0 === band.ends.x1 && mate !== band) &&
      isLoose({ band: mate, mates }, side === 'left' ? 'right' : 'left'),
  );
}

/** What a winding's rows take up beyond one end, above the floor `y0`. */
export function stretchedRows(
  plain: PlainBand,
  drawn: Span,
  free: Free,
  y0: number,
  side: Side,
  { slump, moves }: OracleHandling,
): Box[] {
  const { layer } = plain.band;
  if (layer.kind !== 'winding' || slump === null || !moves(layer)) return [];
  if (facesAnother(plain, side, moves) && slump !== side) return [];
  const block = blockAt(plain, side);
  const d = layer.wire.overall;
  const { ends } = plain.band;
  return rowsOf(plain, layer).flatMap((row) => {
    if (isHeld(plain, layer, side, row)) return [];
    const stopped = block !== undefined && reaches(block, layer, row);
    const [low, high] = [y0 + row * d, y0 + (row + 1) * d];
    const far = side === 'left' ? Math.max(free.left, ends.x0) : Math.min(free.right, ends.x1);
    if (block === undefined) {
      return side === 'left' ? boxes(box(far, low, drawn.x0, high)) : boxes(box(drawn.x1, low, far, high));
    }
    const face = side === 'left' ? Math.max(block.x1, far) : Math.min(block.x0, far);
    const near = side === 'left' ? box(face, low, drawn.x0, high) : box(drawn.x1, low, face, high);
    if (stopped) return boxes(near);
    const over = Math.max(low, y0 + block.height);
    return boxes(near, side === 'left' ? box(far, over, face, high) : box(face, over, far, high));
  });
}

/** How far a tape or screen can go to one side; 0 where it already meets something there. */
export function drift(band: OracleBand, free: Free, side: Side): number {
  const { x0, x1 } = clipped(band, free);
  if ((band.kind !== 'tape' && band.kind !== 'screen') || x0 >= x1) return 0;
  const block = band.holding.find((b) => b.side === side);
  return side === 'left'
    ? Math.max(0, x0 - Math.max(free.left, block?.x1 ?? free.left))
    : Math.max(0, Math.min(free.right, block?.x0 ?? free.right) - x1);
}
