// The bands of one chamber from the tube outward: heights of layers, room that leads take, what they lift.

import { nm, type Nm } from '#units/quantity.ts';
import type { Build, BuildTapeLayer, Lay } from './build.ts';
import { fitOf, placementOf } from './fit.ts';
import { crossesBack, leadSize } from './lead-shape.ts';

/** A lead's own height in the band that it lies in. */
export interface LaidLead {
  readonly lay: Lay;
  readonly y0: Nm;
  readonly y1: Nm;
  /** Higher than the band: it stands on the floor, and the block beside it is gone. */
  readonly lifts: boolean;
}

export type StackBand =
  | {
      readonly kind: 'layer';
      /** Position in `build.layers`. */
      readonly position: number;
      readonly y0: Nm;
      readonly y1: Nm;
      /** Height of the layer itself; the band may be higher. */
      readonly height: Nm;
      readonly lead: LaidLead | null;
    }
  | {
      readonly kind: 'cross-tape';
      readonly position: number;
      readonly y0: Nm;
      readonly y1: Nm;
      readonly tape: BuildTapeLayer;
      readonly plies: number;
    }
  | {
      readonly kind: 'crossing-lead';
      readonly position: number;
      readonly y0: Nm;
      readonly y1: Nm;
      readonly lead: LaidLead;
    };

/** Bands of one chamber, innermost first. */
export function stackOf(build: Build, chamber: number, lays: readonly Lay[]): readonly StackBand[] {
  const bands: StackBand[] = [];
  let y = 0;
  build.layers.forEach((layer, position) => {
    if (layer.chamber !== chamber) return;
    const own = lays.filter((lay) => lay.layer === position);
    const { height } = fitOf(build, layer);
    const { blocks } = placementOf(build, layer);
    const blockHeights = (['left', 'right'] as const).map((side) =>
      blocks[side] > 0 ? (layer.margins[side].height ?? height) : 0,
    );
    const band = Math.max(height, ...blockHeights);
    const straight = own.find((lay) => !crossesBack(lay));
    const size = straight ? leadSize(straight) : 0;
    const top = y + Math.max(band, size);
    const lead = straight ? laid(straight, y, top, band) : null;
    bands.push({ kind: 'layer', position, y0: nm(y), y1: nm(top), height, lead });
    y = top;
    for (const lay of own.filter(crossesBack)) {
      const tape = lay.crossTape > 0 ? nextTape(build, chamber, position) : null;
      if (tape) {
        const plies = nm(lay.crossTape * tape.plyThickness);
        bands.push({
          kind: 'cross-tape',
          position,
          y0: nm(y),
          y1: nm(y + plies),
          tape,
          plies: lay.crossTape,
        });
        y += plies;
      }
      const over = y + leadSize(lay);
      bands.push({
        kind: 'crossing-lead',
        position,
        y0: nm(y),
        y1: nm(over),
        lead: { lay, y0: nm(y), y1: nm(over), lifts: false },
      });
      y = over;
    }
  });
  return bands;
}

export const topOf = (bands: readonly StackBand[]): Nm => bands.at(-1)?.y1 ?? nm(0);

function laid(lay: Lay, floor: number, top: number, band: number): LaidLead {
  const size = leadSize(lay);
  // higher than the band: on its floor; else on its outer face
  return size > band
    ? { lay, y0: nm(floor), y1: nm(floor + size), lifts: true }
    : { lay, y0: nm(top - size), y1: nm(top), lifts: false };
}

/** The tape that is wound next after a layer; where none follows there is nothing to lay between. */
function nextTape(build: Build, chamber: number, position: number): BuildTapeLayer | null {
  const isTape = (layer: Build['layers'][number]): layer is BuildTapeLayer =>
    layer.kind === 'tape' && layer.chamber === chamber;
  return build.layers.slice(position + 1).find(isTape) ?? null;
}
