// How much of each chamber is used, and how each of its layers fits.

import type { Build } from '#solver/section/build.ts';
import { placedBuild } from '#solver/section/placement.ts';
import type { ChamberFit } from '#solver/section/section.ts';
import { stackOf, topOf } from '#solver/stack/stack.ts';

/** How the layers fill every chamber, with no lead laid in. */
export function chamberFits(build: Build): readonly ChamberFit[] {
  const placed = placedBuild(build);
  return build.chambers.map((_, chamber) => ({
    used: topOf(stackOf(placed, chamber, [])),
    available: build.height,
    layers: build.layers.filter((layer) => layer.chamber === chamber).map((layer) => placed.fits.get(layer)!),
  }));
}
