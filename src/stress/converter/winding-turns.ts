// The turns of every winding. Those that nobody counted follow from the stated voltages, as far as they tell: the primary
// is to an output as the reflected voltage to its own. A winding that they do not tell of is left out.

import type { Design } from '#model/design.ts';
import type { Converter, ConverterOutput } from '#model/design/voltages.ts';

export type Turns = ReadonlyMap<string, number>;

export function windingTurns(design: Design, own: Readonly<Record<string, number>> = {}): Turns {
  const turns = new Map<string, number>();
  for (const { winding, turns: held } of woundLayers(design))
    if (typeof held === 'number') turns.set(winding, (turns.get(winding) ?? 0) + held);
  for (const layer of openTurns(design)) turns.delete(layer.winding);
  for (const [winding, held] of Object.entries(own)) turns.set(winding, held);
  if (design.converter !== null) addByVoltage(design, design.converter, turns);
  return turns;
}

/** Layers whose turns nobody counted. */
export const openTurns = (design: Design) =>
  woundLayers(design).filter(({ turns }) => typeof turns !== 'number');

const woundLayers = ({ layers }: Design) =>
  layers.flatMap((layer, index) =>
    layer.kind === 'winding' ? [{ index, winding: layer.winding, turns: layer.turns }] : [],
  );

/** Only ratios of turns count, so where not even one is known the primary has any number of them. */
const ANY = 100;

function addByVoltage(design: Design, converter: Converter, turns: Map<string, number>): void {
  const open = design.windings.filter(
    ({ id }) =>
      !turns.has(id) && design.layers.some((layer) => layer.kind === 'winding' && layer.winding === id),
  );
  const reflected = converter.reflectedVoltage.value;
  const primary = onlyPrimary(design, converter);
  if (open.length === 0 || reflected <= 0 || primary === null) return;
  const outputs = [converter, ...converter.variants].flatMap((each) => each.outputs);
  const known = turns.get(primary.id) ?? byOutputs(design, outputs, reflected, turns) ?? ANY;
  for (const { id, circuit } of open) {
    const volts = voltsOf(outputs, circuit);
    if (id === primary.id) turns.set(id, known);
    else if (volts !== null) turns.set(id, (known * volts) / reflected);
  }
}

/** The one winding on the mains side that is no output; null where several could be the primary. */
function onlyPrimary(design: Design, { outputs, variants }: Converter) {
  const fed = new Set(
    [...outputs, ...variants.flatMap((each) => each.outputs)].map(({ circuit }) => circuit),
  );
  const all = design.windings.filter(
    ({ circuit }) =>
      !fed.has(circuit) && design.circuits.some(({ id, role }) => id === circuit && role === 'mains'),
  );
  return all.length === 1 ? all[0]! : null;
}

function byOutputs(
  { windings }: Design,
  outputs: readonly ConverterOutput[],
  reflected: number,
  turns: Turns,
): number | null {
  for (const { id, circuit } of windings) {
    const [held, volts] = [turns.get(id), voltsOf(outputs, circuit)];
    if (held !== undefined && volts !== null) return (held * reflected) / volts;
  }
  return null;
}

const voltsOf = (outputs: readonly ConverterOutput[], circuit: string): number | null =>
  outputs.find((each) => each.circuit === circuit && each.voltage.value > 0)?.voltage.value ?? null;
