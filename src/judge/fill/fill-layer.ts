// One layer of a build, with what nobody knows of it counted as chosen.

import type { Book } from '#books/questions/book.ts';
import { Filling } from '#judge/assume/fill-context.ts';
import { plainly } from '#judge/verdict/assumed.ts';
import type { Design } from '#model/design.ts';
import type { Layer, WindingLayer } from '#model/design/layer.ts';
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
    case 'winding': {
      const winding = design.windings.find(({ id }) => id === layer.winding)!;
      const w = design.windings.indexOf(winding);
      return {
        kind: 'winding',
        ...placed,
        winding: winding.id,
        circuit: winding.circuit,
        beside: layer.beside,
        turns: turnsOf(filling, design, layer, field, wires, margins),
        strands: layer.strands,
        spread: layer.spread,
        startsAt: startsAt(winding.id),
        wire: wires.get(winding.id)!,
        anchored: winding.anchored && isShown(design, `windings[${w}].anchored`),
        extent: layer.extent && { from: layer.extent.from.value, to: layer.extent.to.value },
      };
    }
    case 'tape':
      return {
        kind: 'tape',
        ...placed,
        ...fillSheet(filling, book, layer, field, { bonded: layer.bonded ? index : null }),
        inset: { left: layer.inset.left.value, right: layer.inset.right.value },
        cemented: layer.cemented && design.surroundings.proof === 'tested',
        turnUp: layer.turnUp && isShown(design, `${field}.turnUp`) ? layer.turnUp.value : nm(0),
      };
    case 'screen':
      return {
        kind: 'screen',
        ...placed,
        circuit: layer.circuit,
        id: layer.id ?? unusedName(design, `screen ${index + 1}`),
        // a screen of no thickness is there all the same
        thickness: nm(Math.max(1, layer.thickness.value)),
        overlap: layer.overlap && fillSheet(filling, book, layer.overlap, `${field}.overlap`),
        inset: { left: layer.inset.left.value, right: layer.inset.right.value },
      };
  }
}

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
const isShown = (design: Design, field: string): boolean =>
  design.evidence.some((entry) => entry.fields.includes(field));

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
