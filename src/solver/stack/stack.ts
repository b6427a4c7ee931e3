// The bands of one chamber from the tube outward: heights of layers, room that leads take, what they lift.

import { nm, type Nm } from '#units/quantity.ts';
import type { Build, BuildTapeLayer, Lay } from '#solver/section/build.ts';
import { crosses, leadSize } from './lead-shape.ts';
import type { PlacedBuild } from '#solver/section/placement.ts';

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

/** Bands of one chamber, innermost first; windings side by side have one each, of the same height. */
export function stackOf(placed: PlacedBuild, chamber: number, lays: readonly Lay[]): readonly StackBand[] {
  const { build } = placed;
  const bands: StackBand[] = [];
  for (const { positions, height: nominal } of placed.bands[chamber]!) {
    const y0 = topOf(bands);
    const own = lays.length === 0 ? lays : lays.filter((lay) => positions.includes(lay.layer));
    const straight = own.filter((lay) => !crosses(placed, lay));
    const y1 = nm(y0 + Math.max(nominal, ...straight.map(leadSize)));
    for (const position of positions) {
      const lay = straight.find(({ layer }) => layer === position);
      const { height } = placed.fits.get(build.layers[position]!)!;
      const lead = lay ? laid(lay, y0, y1, nominal) : null;
      bands.push({ kind: 'layer', position, y0, y1, height, lead });
    }
    for (const lay of own)
      if (!straight.includes(lay)) bands.push(...crossingBands(placed, lay, topOf(bands)));
  }
  return bands;
}

/** The plies of the next tape that lie over the winding, then the band that the lead has to itself. */
function crossingBands({ build }: PlacedBuild, lay: Lay, floor: Nm): readonly StackBand[] {
  const position = lay.layer;
  const tape = lay.crossTape > 0 ? nextTape(build, build.layers[position]!.chamber, position) : null;
  const y0 = nm(floor + (tape ? lay.crossTape * tape.plyThickness : 0));
  const y1 = nm(y0 + leadSize(lay));
  const lead: StackBand = { kind: 'crossing-lead', position, y0, y1, lead: { lay, y0, y1, lifts: false } };
  if (!tape) return [lead];
  return [{ kind: 'cross-tape', position, y0: floor, y1: y0, tape, plies: lay.crossTape }, lead];
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
