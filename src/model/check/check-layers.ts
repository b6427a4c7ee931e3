// Layers that make sense: their winding, circuit, chamber and materials exist, and they keep some width in the chamber.

import { nm, type Nm } from '#units/quantity.ts';
import type { BadInput } from '#model/faults/bad-input.ts';
import { badField } from '#model/faults/bad-field.ts';
import { beyondMatter, checkSheet, oneOf, type Keys, type KnownIds } from './check-ids.ts';
import { checkBeside } from './check-beside.ts';
import { checkLead } from './check-windings.ts';
import type { Design } from '#model/design.ts';
import type { Layer, Margin, ScreenLayer, TapeLayer, WindingLayer } from '#model/design/layer.ts';
import type { Side } from '#units/terms.ts';
import { isKnown, type Known } from '#model/quantity/reading.ts';

export function checkLayers(design: Design, known: KnownIds): readonly BadInput[] {
  const windings = design.windings.map(({ id }) => id);
  const circuits = design.circuits.map(({ id }) => id);
  return design.layers.flatMap((layer, i) => {
    const keys: Keys = ['layers', i];
    return [
      ...checkWidth(keys, layer, design),
      ...checkBlocks(keys, layer, known),
      ...(layer.kind === 'winding' ? oneOf([...keys, 'winding'], layer.winding, windings, 'winding') : []),
      ...(layer.kind === 'winding' && layer.beside ? checkBeside(design, i) : []),
      ...(layer.kind === 'tape' ? checkSheet(keys, layer, known) : []),
      ...(layer.kind === 'tape' ? checkTurnUp(keys, layer, design) : []),
      ...(layer.kind === 'screen' ? checkScreen(keys, layer, circuits, known) : []),
    ];
  });
}

/** Edges can be turned up to the rim and no further. */
function checkTurnUp(keys: Keys, { turnUp }: TapeLayer, { former }: Design): readonly BadInput[] {
  if (turnUp === null || turnUp.value <= former.height.value) return [];
  const most = `no more than the flange is high, ${shown(former.height.value)}`;
  return [badField([...keys, 'turnUp'], shown(turnUp.value), most)];
}

function checkWidth(keys: Keys, layer: Layer, design: Design): readonly BadInput[] {
  const chamber = design.former.chambers[layer.chamber];
  if (!chamber)
    return [
      badField(
        [...keys, 'chamber'],
        layer.chamber,
        `a chamber from 0 to ${design.former.chambers.length - 1}`,
      ),
    ];
  const narrowest = lowest(chamber.width);
  const taken = takenAt(layer, 'left') + takenAt(layer, 'right');
  const faults: BadInput[] = [];
  if (taken >= narrowest) {
    const found = `${shown(nm(taken))} in all`;
    faults.push(
      badField([...keys, widestField(layer)], found, `less than the chamber's width of ${shown(narrowest)}`),
    );
  }
  if (layer.kind === 'winding' && layer.extent)
    faults.push(...checkExtent([...keys, 'extent'], layer.extent, chamber.width));
  return faults;
}

function checkExtent(
  keys: Keys,
  { from, to }: NonNullable<WindingLayer['extent']>,
  width: Known<Nm>,
): readonly BadInput[] {
  if (highest(from) >= lowest(to))
    return [
      badField(
        [...keys, 'to'],
        shown(to.value),
        `more than \`from\` at both ends of their intervals, ${shown(highest(from))}`,
      ),
    ];
  return to.value > width.value
    ? [
        badField(
          [...keys, 'to'],
          shown(to.value),
          `no more than the chamber's width of ${shown(width.value)}`,
        ),
      ]
    : [];
}

/** An inset lies beside the margin at the same side. */
const takenAt = (layer: Layer, side: Side): number =>
  widest(layer.margins[side]) + (layer.kind === 'winding' ? 0 : highest(layer.inset[side]));
const widestField = (layer: Layer): 'margins' | 'inset' =>
  layer.kind === 'winding' || widest(layer.margins.left) >= highest(layer.inset.left) ? 'margins' : 'inset';
const widest = (margin: Margin): number => (isKnown(margin.width) ? highest(margin.width) : 0);
const highest = (reading: Known<Nm>): Nm => nm(reading.value + reading.plusMinus);
const lowest = (reading: Known<Nm>): Nm => nm(reading.value - reading.plusMinus);
const shown = (value: Nm): string => `${value / 1e6} mm`;

const checkBlocks = (keys: Keys, layer: Layer, known: KnownIds): readonly BadInput[] =>
  (['left', 'right'] as const).flatMap((side) => {
    const at: Keys = [...keys, 'margins', side];
    const { material, moulded, height, withstand } = layer.margins[side];
    // a block wound of tape is stated by its turns, a moulded one by its height
    const turn = material === null ? null : (known.plies.get(material) ?? null);
    return [
      ...oneOf([...at, 'material'], material, [...known.tapes, ...known.formers], 'tape or former'),
      ...beyondMatter([...at, 'withstand'], withstand, moulded ? (height?.value ?? null) : turn),
    ];
  });

const checkScreen = (
  keys: Keys,
  screen: ScreenLayer,
  circuits: readonly string[],
  known: KnownIds,
): readonly BadInput[] => [
  ...oneOf([...keys, 'circuit'], screen.circuit, circuits, 'circuit'),
  ...(screen.overlap ? checkSheet([...keys, 'overlap'], screen.overlap, known) : []),
  ...(screen.lead !== null && typeof screen.lead === 'object'
    ? checkLead([...keys, 'lead'], screen.lead, known)
    : []),
];
