// One layer of a build, with what nobody knows of it counted as chosen.

import type { Book } from '#books/questions/book.ts';
import { Filling } from '#judge/assume/fill-context.ts';
import { plainly } from '#judge/verdict/assumed.ts';
import type { Design } from '#model/design.ts';
import type { Layer, ScreenLayer, TapeLayer, WindingLayer } from '#model/design/layer.ts';
import type { BuildLayer, BuildMargin, BuildWire } from '#solver/section/build.ts';
import { nm } from '#units/quantity.ts';
import type { Side } from '#units/terms.ts';
import type { Widths } from './fill-margins.ts';
import { fillBlock, fillSheet } from '#judge/fill/solids/fill-solid.ts';

export function fillLayer(
  filling: Filling,
  book: Book,
  design: Design,
  layer: Layer,
  index: number,
  wires: ReadonlyMap<string, BuildWire>,
  widths: Widths,
  startsAt: (winding: string) => Side,
): BuildLayer {
  const field = `layers[${index}]`;
  const margins = fillMargins(filling, book, layer, index, widths);
  const placed = { index, chamber: layer.chamber, margins };
  switch (layer.kind) {
    case 'winding':
      return {
        kind: 'winding',
        ...placed,
        ...ofWinding(design, layer.winding, wires, startsAt),
        ...ofTurns(layer),
        turns: turnsOf(filling, design, layer, field, wires, margins),
      };
    case 'tape':
      return {
        kind: 'tape',
        ...placed,
        ...fillSheet(filling, book, layer, field, { bonded: layer.bonded ? index : null }),
        inset: insetOf(layer),
        cemented: layer.cemented && design.surroundings.proof === 'tested',
        turnUp: layer.turnUp && isShown(design, `${field}.turnUp`) ? layer.turnUp.value : nm(0),
      };
    case 'screen':
      return {
        kind: 'screen',
        ...placed,
        ...ofScreen(design, layer, index),
        overlap: layer.overlap && fillSheet(filling, book, layer.overlap, `${field}.overlap`),
        inset: insetOf(layer),
      };
  }
}

const ofScreen = (design: Design, { circuit, id, thickness }: ScreenLayer, index: number) => ({
  circuit,
  id: id ?? unusedName(design, `screen ${index + 1}`),
  // a screen of no thickness is there all the same
  thickness: nm(Math.max(1, thickness.value)),
});

/** What a layer has of the winding that it belongs to. */
function ofWinding(
  { windings, evidence }: Design,
  id: string,
  wires: ReadonlyMap<string, BuildWire>,
  startsAt: (winding: string) => Side,
) {
  const w = windings.findIndex((winding) => winding.id === id);
  const { circuit, anchored } = windings[w]!;
  return {
    winding: id,
    circuit,
    startsAt: startsAt(id),
    wire: wires.get(id)!,
    anchored: anchored && isShown({ evidence }, `windings[${w}].anchored`),
  };
}

const ofTurns = ({ beside, strands, spread, extent }: WindingLayer) => ({
  beside,
  strands,
  spread,
  extent: extent && { from: extent.from.value, to: extent.to.value },
});

const insetOf = ({ inset: { left, right } }: Pick<TapeLayer | ScreenLayer, 'inset'>) => ({
  left: left.value,
  right: right.value,
});

/** Turns that nobody counted fill one row. */
function turnsOf(
  filling: Filling,
  design: Design,
  layer: WindingLayer,
  field: string,
  wires: ReadonlyMap<string, BuildWire>,
  margins: Record<Side, BuildMargin>,
): number {
  if (typeof layer.turns === 'number') return layer.turns;
  filling.unknown(`${field}.turns`, plainly('full-row'));
  const { extent } = layer;
  const width =
    extent === null
      ? design.former.chambers[layer.chamber]!.width.value - margins.left.width - margins.right.width
      : extent.to.value - extent.from.value;
  return Math.max(1, Math.floor(width / (wires.get(layer.winding)!.overall * layer.strands)));
}

/** A name that no circuit, part or other screen has. */
function unusedName({ circuits, parts, layers }: Design, wish: string): string {
  const named = layers.map((layer) => (layer.kind === 'screen' ? layer.id : null));
  const taken = [...circuits.map(({ id }) => id), ...parts.map(({ id }) => id), ...named];
  let name = wish;
  while (taken.includes(name)) name += '*';
  return name;
}

/** Credit only where an entry of evidence names the field. */
const isShown = ({ evidence }: Pick<Design, 'evidence'>, field: string): boolean =>
  evidence.some((entry) => entry.fields.includes(field));

function fillMargins(
  filling: Filling,
  book: Book,
  layer: Layer,
  index: number,
  widths: Widths,
): Record<Side, BuildMargin> {
  const fill = (side: Side): BuildMargin => {
    const margin = layer.margins[side];
    return {
      width: widths[side],
      filled: margin.filled,
      height: margin.height?.value ?? null,
      moulded: margin.moulded,
      ...fillBlock(filling, book, margin, `layers[${index}].margins.${side}`),
    };
  };
  return { left: fill('left'), right: fill('right') };
}
