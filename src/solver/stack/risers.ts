// Risers: the columns that leads climb at the inside of a flange, and where the layers further out end at them.

import { nm, type Nm } from '#units/quantity.ts';
import type { Build, Lay } from '#solver/section/build.ts';
import type { Side } from '#units/terms.ts';
import { crosses, leadSize, riserIsStrong, type SleeveStrength } from './lead-shape.ts';
import { layersOfBand, type PlacedBuild } from '#solver/section/placement.ts';
import { type StackBand, topOf } from './stack.ts';

/** One column that displaces what lies further out. */
export interface Riser {
  readonly lay: Lay;
  readonly chamber: number;
  readonly side: Side;
  /** Distance of the column from the flange: behind the columns of layers further in. */
  readonly offset: Nm;
  readonly width: Nm;
  readonly y0: Nm;
  readonly y1: Nm;
  /** It begins on top of its own winding, for want of room beside it. */
  readonly onTop: boolean;
  /** What ends at it: of a layer (position in `build.layers`) all that reaches higher than its foot. */
  readonly displaces: (position: number, top: Nm) => boolean;
}

/** All columns of these lays, innermost layer first. `stacks` holds the bands of every chamber. */
export function risersOf(
  placed: PlacedBuild,
  lays: readonly Lay[],
  stacks: readonly (readonly StackBand[])[],
  strength: SleeveStrength,
): readonly Riser[] {
  const { build } = placed;
  const risers: Riser[] = [];
  for (const lay of [...lays].sort((a, b) => a.layer - b.layer)) {
    const chamber = build.layers[lay.layer]!.chamber;
    const stack = stacks[chamber]!;
    const lead = leadOf(stack, lay);
    if (!lead) continue;
    const offset = clipOf(risers, chamber, lay.exit, lay.layer, lead.y1);
    if (lay.way === 'riser' && !riserIsStrong(lay, offset, strength)) {
      const last = lay.upTo ?? Infinity;
      const band = layersOfBand(build, build.layers[lay.layer]!);
      const lastOfBand = build.layers.indexOf(band.at(-1)!);
      const top = lay.upTo === null ? rimOr(build, stack) : bandTop(stack, lay.upTo);
      const beside = startsBeside(placed, lay, offset);
      risers.push({
        lay,
        chamber,
        side: lay.exit,
        offset,
        width: leadSize(lay),
        y0: beside ? lead.y0 : nm(Math.max(lead.y0, ownTop(stack, lay))),
        y1: top,
        onTop: !beside,
        displaces: (position) => position > lastOfBand && position <= last,
      });
    }
    const beyond = lay.kind === 'link' ? null : chamberBeyond(build, chamber, lay.exit);
    if (beyond !== null && !riserIsStrong(lay, 0, strength)) {
      // through a divider: in the neighbour chamber it climbs the divider's other face
      const side = lay.exit === 'left' ? 'right' : 'left';
      risers.push({
        lay,
        chamber: beyond,
        side,
        offset: behind(risers, beyond, side),
        width: leadSize(lay),
        y0: lead.y0,
        y1: rimOr(build, stacks[beyond]!),
        onTop: false,
        displaces: (_, top) => top > lead.y0,
      });
    }
  }
  return risers;
}

/** There is room for the column beside its own winding, or over it where it crosses back; else it begins on top. */
function startsBeside(placed: PlacedBuild, lay: Lay, offset: Nm): boolean {
  if (crosses(placed, lay)) return true;
  const layer = placed.build.layers[lay.layer]!;
  const place = placed.places.get(layer)!;
  const face = faceX(placed, layer.chamber, lay.exit);
  const room = lay.exit === 'left' ? place.x0 - face : face - place.x1;
  return room - offset >= leadSize(lay);
}

/** How far from the flange a layer, or a part of it that reaches up to `top`, ends for the columns beside it. */
export function clipOf(risers: readonly Riser[], chamber: number, side: Side, position: number, top: Nm): Nm {
  const beside = risers.filter(
    (riser) => riser.chamber === chamber && riser.side === side && riser.displaces(position, top),
  );
  return nm(Math.max(0, ...beside.map((riser) => riser.offset + riser.width)));
}

/** How far from a face a column stands that comes after all others there. */
const behind = (risers: readonly Riser[], chamber: number, side: Side): Nm =>
  nm(
    Math.max(
      0,
      ...risers
        .filter((riser) => riser.chamber === chamber && riser.side === side)
        .map((riser) => riser.offset + riser.width),
    ),
  );

/** x of the inner face of a flange or divider. */
export function faceX({ faces }: PlacedBuild, chamber: number, side: Side): Nm {
  const face = faces[chamber]!;
  return side === 'left' ? face.x0 : face.x1;
}

function leadOf(stack: readonly StackBand[], lay: Lay): { readonly y0: Nm; readonly y1: Nm } | null {
  for (const band of stack) {
    if (band.kind !== 'cross-tape' && band.lead?.lay === lay) return band.lead;
  }
  return null;
}

/** Top of the winding that a lead leaves; its band may be higher. */
function ownTop(stack: readonly StackBand[], lay: Lay): Nm {
  const own = stack.find((band) => band.kind === 'layer' && band.position === lay.layer);
  return own?.kind === 'layer' ? nm(own.y0 + own.height) : nm(0);
}

const rimOr = (build: Build, stack: readonly StackBand[]): Nm => nm(Math.max(build.height, topOf(stack)));

const bandTop = (stack: readonly StackBand[], position: number): Nm =>
  stack.find((band) => band.kind === 'layer' && band.position === position)!.y1;

/** The chamber that a lead enters through the divider at its exit; null at an outer flange. */
export function chamberBeyond(build: Build, chamber: number, exit: Side): number | null {
  const next = chamber + (exit === 'left' ? -1 : 1);
  return next >= 0 && next < build.chambers.length ? next : null;
}
