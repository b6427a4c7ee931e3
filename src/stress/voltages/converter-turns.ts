// The turns of a converter's windings, and which of them are the primary: the circuit on the mains side with the most
// turns that is no output. Where several windings lie in it the file does not say whether they are one primary in
// series or a primary and another winding: the reading nearer to the stated voltages holds, else the fewer turns.

import type { Converter, Design } from '#model/design.ts';

import type { StressNote } from './pair-stress.ts';

export interface WoundCircuit {
  readonly windings: readonly { readonly id: string; readonly turns: number }[];
  readonly total: number;
  readonly largest: number;
}

export interface Primary {
  readonly circuit: string;
  readonly turns: number;
  /** Windings that make it up. */
  readonly windings: readonly string[];
  readonly note: StressNote | null;
}

export function woundCircuits(design: Design): ReadonlyMap<string, WoundCircuit> {
  const turns = new Map<string, number>();
  for (const layer of design.layers) {
    if (layer.kind !== 'winding' || typeof layer.turns !== 'number') continue;
    turns.set(layer.winding, (turns.get(layer.winding) ?? 0) + layer.turns);
  }
  const wound = design.circuits.map(({ id }): [string, WoundCircuit] => {
    const windings = design.windings
      .filter(({ circuit }) => circuit === id)
      .map((winding) => ({ id: winding.id, turns: turns.get(winding.id) ?? 0 }))
      .filter((winding) => winding.turns > 0);
    const counts = windings.map((winding) => winding.turns);
    return [id, { windings, total: counts.reduce((sum, n) => sum + n, 0), largest: Math.max(0, ...counts) }];
  });
  return new Map(wound);
}

export function primaryOf(
  design: Design,
  converter: Converter,
  wound: ReadonlyMap<string, WoundCircuit>,
): Primary | null {
  const fed = new Set(
    [converter, ...converter.variants].flatMap(({ outputs }) => outputs.map((o) => o.circuit)),
  );
  let best: { readonly circuit: string; readonly wound: WoundCircuit } | null = null;
  for (const { id, role } of design.circuits) {
    const its = wound.get(id);
    if (role !== 'mains' || fed.has(id) || its === undefined || its.total === 0) continue;
    if (best === null || its.total > best.wound.total) best = { circuit: id, wound: its };
  }
  return best === null ? null : countedTurns(best.circuit, best.wound, converter, wound);
}

function countedTurns(
  circuit: string,
  { windings, total, largest }: WoundCircuit,
  converter: Converter,
  wound: ReadonlyMap<string, WoundCircuit>,
): Primary {
  const all = { circuit, turns: total, windings: windings.map(({ id }) => id) };
  if (windings.length === 1) return { ...all, note: null };
  const alone = {
    circuit,
    turns: largest,
    windings: windings
      .filter((w) => w.turns === largest)
      .slice(0, 1)
      .map((w) => w.id),
  };
  const expected = expectedTurns(converter, wound);
  if (expected === null) return { ...alone, note: { kind: 'primary-turns', turns: largest, by: 'fewest' } };
  const away = (turns: number) => Math.abs(Math.log(turns / expected));
  const chosen = away(total) < away(largest) ? all : alone;
  return { ...chosen, note: { kind: 'primary-turns', turns: chosen.turns, by: 'output' } };
}

/** Primary turns by the first output that is wound: reflected voltage over output voltage is the ratio of the turns. */
function expectedTurns(
  { outputs, reflectedVoltage }: Converter,
  wound: ReadonlyMap<string, WoundCircuit>,
): number | null {
  for (const { circuit, voltage } of outputs) {
    const largest = wound.get(circuit)?.largest ?? 0;
    if (largest > 0 && voltage.value > 0 && reflectedVoltage.value > 0) {
      return (largest * reflectedVoltage.value) / voltage.value;
    }
  }
  return null;
}
