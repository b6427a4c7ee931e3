// Layers of whose height nobody knows the least: turns that were not counted, a wire or a ply of no known size. They are
// laid out thin; beside that each in turn is so high that the stack reaches the rim, near to the core and over the top.
// Where many are open one run stands for all: the rim no higher than the stack, which is worse than any of them.

import type { Design } from '#model/design.ts';
import type { Build, BuildLayer } from '#solver/section/build.ts';
import { chamberFits } from '#solver/placing/chamber-fits.ts';
import { nm } from '#units/quantity.ts';
import { isBest, type Choice } from '#judge/assume/assumption.ts';

interface OpenHeight {
  /** Place in the file's layers. */
  readonly layer: number;
  readonly fields: readonly string[];
}

export const openHeights = (design: Design): readonly OpenHeight[] =>
  design.layers.flatMap((_, layer) => {
    const fields = openFields(design, layer);
    return fields.length === 0 ? [] : [{ layer, fields }];
  });

function openFields(design: Design, index: number): readonly string[] {
  const layer = design.layers[index]!;
  if (layer.kind === 'tape') {
    const isOpen = layer.plyThickness?.kind === 'unknown' && layer.material === null;
    return isOpen ? [`layers[${index}].plyThickness`] : [];
  }
  if (layer.kind !== 'winding') return [];
  const w = design.windings.findIndex(({ id }) => id === layer.winding);
  const { conductor, overallDiameter } = design.windings[w]!.wire;
  return [
    ...(typeof layer.turns === 'number' ? [] : [`layers[${index}].turns`]),
    ...(overallDiameter === null && conductor?.kind === 'unknown' ? [`windings[${w}].wire.conductor`] : []),
  ];
}

/** At best the stack is as it is drawn, and the core out of reach; that takes all that is open. */
export function isCoreOutOfReach(design: Design, choice: Choice): boolean {
  const open = openHeights(design);
  return open.length > 0 && open.every(({ fields }) => fields.every((field) => isBest(choice, field)));
}

/** More open layers than this are judged by one run for all, for each asks for a search of its own. */
const MOST_APART = 1;

/** The build with each layer that may be higher grown in turn, until its chamber is full. */
export function grownBuilds(design: Design, choice: Choice, build: Build): readonly Build[] {
  const open = openHeights(design).filter(({ fields }) => fields.some((field) => !isBest(choice, field)));
  if (open.length === 0) return [];
  const fits = chamberFits(build);
  if (open.length > MOST_APART) {
    const used = Math.max(1, ...fits.map((fit) => fit.used));
    return used < build.height ? [{ ...build, height: nm(used) }] : [];
  }
  return open.flatMap(({ layer }): readonly Build[] => {
    const grown = build.layers[layer]!;
    const fit = fits[grown.chamber]!;
    const room = fit.available - fit.used;
    if (room <= 0) return [];
    const rows = fit.layers.find((each) => each.layer === layer)!;
    return [{ ...build, layers: build.layers.with(layer, higherBy(grown, room, rows)) }];
  });
}

/** Up to the rim or, of whole rows, the least past it. */
function higherBy(
  layer: BuildLayer,
  room: number,
  { rows, turnsPerRow }: { readonly rows: number; readonly turnsPerRow: number },
): BuildLayer {
  switch (layer.kind) {
    case 'winding': {
      const more = Math.ceil(room / layer.wire.overall);
      return { ...layer, turns: (rows + more) * turnsPerRow };
    }
    case 'tape':
      return { ...layer, plyThickness: nm(layer.plyThickness + Math.ceil(room / layer.plies)) };
    case 'screen':
      return layer;
  }
}
