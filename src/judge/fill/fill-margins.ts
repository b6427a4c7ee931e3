// How wide the margins of every layer are, where some are not known: nothing for the layer's own pairs, the widest that
// leaves the turns their rows at best, and both for a third circuit's. Two of one layer share the room between them.

import { plainly } from '#judge/verdict/assumed.ts';
import type { Design } from '#model/design.ts';
import type { Layer } from '#model/design/layer.ts';
import type { Side } from '#units/terms.ts';
import { isKnown } from '#model/quantity/reading.ts';
import type { BuildWire } from '#solver/section/build.ts';
import { nm, type Nm } from '#units/quantity.ts';
import { isBest } from '#judge/assume/assumption.ts';
import type { Filling } from '#judge/assume/fill-context.ts';
import { circuitOf } from '#judge/conductors/layer-circuit.ts';

export type Widths = Record<Side, Nm>;

/** Widths by the layer's place in the file. */
export type AllWidths = readonly Widths[];

export interface FilledWidths {
  /** Of these the better counts. */
  readonly better: readonly AllWidths[];
  /** Of these the worse counts, beside each of the better. */
  readonly worse: (better: AllWidths) => readonly AllWidths[];
}

/** Layers of which every choice is tried with every choice of the others; more are changed all at once. */
const MOST_APART = 2;

interface Open {
  readonly layer: number;
  readonly options: readonly Widths[];
  readonly isBetter: boolean;
}

export function fillWidths(
  filling: Filling,
  design: Design,
  wires: ReadonlyMap<string, BuildWire>,
): FilledWidths {
  const all = design.layers.map((layer, index) => widthsOf(filling, design, layer, index, wires));
  const first = all.map(({ options }) => options[0]!);
  const open = all.filter(({ options }) => options.length > 1);
  return {
    better: choices(
      first,
      open.filter(({ isBetter }) => isBetter),
    ),
    worse: (better) =>
      choices(
        better,
        open.filter(({ isBetter }) => !isBetter),
      ),
  };
}

function choices(from: AllWidths, open: readonly Open[]): readonly AllWidths[] {
  const set = (widths: AllWidths, { layer }: Open, one: Widths): AllWidths => widths.with(layer, one);
  if (open.length <= MOST_APART) {
    return open.reduce<readonly AllWidths[]>(
      (sets, one) => sets.flatMap((widths) => one.options.map((option) => set(widths, one, option))),
      [from],
    );
  }
  const most = Math.max(...open.map(({ options }) => options.length));
  return Array.from({ length: most }, (_, i) =>
    open.reduce((widths, one) => set(widths, one, one.options[i % one.options.length]!), from),
  );
}

function widthsOf(
  filling: Filling,
  design: Design,
  layer: Layer,
  index: number,
  wires: ReadonlyMap<string, BuildWire>,
): Open {
  const circuit = circuitOf(design, layer);
  const fields = {
    left: `layers[${index}].margins.left.width`,
    right: `layers[${index}].margins.right.width`,
  };
  const at = (side: Side) => {
    const { width } = layer.margins[side];
    if (isKnown(width)) return width.value;
    return circuit === null
      ? filling.unknown(fields[side], plainly('no-length'))
      : filling.room(fields[side], circuit, plainly('no-length'));
  };
  const sides = { left: at('left'), right: at('right') };
  const isOpen = (side: Side) => typeof sides[side] === 'string';
  const room = roomBeside(design, layer, wires);
  const isBetter = (['left', 'right'] as const).some(
    (side) => isOpen(side) && isBest(filling.choice, fields[side]),
  );
  return { layer: index, isBetter, options: optionsOf(sides, room, isHeapedUp(layer)) };
}

/** The turns of one part of a row lie at one side, wherever the margin lets them begin. */
const isHeapedUp = (layer: Layer): boolean => layer.kind === 'winding' && !layer.spread;

type End = Nm | 'worst' | 'best';

function optionsOf({ left, right }: Record<Side, End>, room: Nm, heaped: boolean): readonly Widths[] {
  const width = (end: End): Nm => (typeof end === 'number' ? end : nm(0));
  const none = { left: width(left), right: width(right) };
  const all = (side: Side): Widths => ({ ...none, [side]: room });
  const can = (end: End): boolean => end === 'best' || (heaped && end === 'worst');
  const widened = [...(can(left) ? [all('left')] : []), ...(can(right) ? [all('right')] : [])];
  if (left === 'best' && right === 'best') {
    const half = nm(Math.floor(room / 2));
    return [...widened, { left: half, right: half }];
  }
  return left === 'best' || right === 'best' ? widened : [none, ...widened];
}

/** What the margins that are not known have between them, the turns keeping their rows. */
function roomBeside(design: Design, layer: Layer, wires: ReadonlyMap<string, BuildWire>): Nm {
  const { left, right } = layer.margins;
  if (layer.kind === 'tape' || (isKnown(left.width) && isKnown(right.width))) return nm(0);
  const known = [left.width, right.width].filter(isKnown).reduce((sum, width) => sum + width.value, 0);
  const room = design.former.chambers[layer.chamber]!.width.value - known;
  // foil keeps no turns: the narrowest strip is still a screen
  if (layer.kind === 'screen') return nm(Math.max(0, room - 1));
  const perTurn = wires.get(layer.winding)!.overall * layer.strands;
  // of turns that nobody counted there is at least one
  const turns = typeof layer.turns === 'number' ? layer.turns : 1;
  const rows = Math.ceil(turns / Math.max(1, Math.floor(room / perTurn)));
  const needed = Math.ceil(turns / rows) * perTurn;
  return nm(Math.max(0, room - needed));
}
