// Filled margins as blocks on the floor of their band.

import { nm } from '#units/quantity.ts';
import type { BuildLayer } from '#solver/section/build.ts';
import { rect } from '#solver/section/draft.ts';
import type { Laying, LayerBand, Span } from './placing.ts';
import type { Block } from '#solver/section/placement.ts';
import type { SolidRegion } from '#solver/section/section.ts';

/** A lead on the band's outer face takes its height from the block under it. */
export function layBlocks({ draft, placed }: Laying, layer: BuildLayer, band: LayerBand, room: Span): void {
  const { blocks } = placed.places.get(layer)!;
  for (const side of ['left', 'right'] as const) {
    const block = blocks[side];
    if (block?.owner !== layer) continue;
    const beside = band.lead?.lay.exit === side ? band.lead : null;
    if (beside?.lifts) continue;
    const top = Math.min(band.y0 + block.height, beside?.y0 ?? Infinity);
    const x0 = Math.max(block.x0, room.x0);
    const x1 = Math.min(block.x1, room.x1);
    draft.solid(rect(x0, band.y0, x1, top), {
      kind: 'block',
      body: draft.body(),
      stuff: block.margin.stuff,
      layer: layer.index,
      ply: null,
      // along the axis, where it spaces, it is strong
      crossX: 'strong',
      crossY: acrossTurns(block, top - band.y0),
      turnUp: nm(0),
      drifted: false,
    });
  }
}

/** Tape wound in many turns is as many plies as its height holds turns; a moulded ring is one solid. */
const acrossTurns = ({ margin }: Block, height: number): SolidRegion['crossY'] =>
  margin.moulded ? 'measured' : Math.max(1, Math.floor(height / margin.turn));
