// The turns of a converter's windings, and which of them are the primary: the circuit on the mains side with the most
// turns that is no output. Where several windings lie in it the file does not say whether they are one primary in
// series or a primary and another winding: the reading nearer to the stated voltages holds, else the fewer turns.

import type { Design } from '#model/design.ts';
import type { Converter, ConverterVariant } from '#model/design/voltages.ts';

import { windingTurns } from './winding-turns.ts';
import type { StressNote } from '#stress/pair/pair-stress.ts';

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

/** `own`: turns of windings that differ from the file's layers. */
export function woundCircuits(
  design: Design,
  own: Readonly<Record<string, number>> = {},
): ReadonlyMap<string, WoundCircuit> {
  const turns = windingTurns(design, own);
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

/**
 * What a variant reflects by its own turns: with each output's voltage and turns against those of the converter's own
 * outputs, else by the turns alone. The highest over its outputs; null where it states no turns.
 */
export function reflectedByTurns(
  design: Design,
  converter: Converter,
  variant: ConverterVariant,
): number | null {
  if (Object.keys(variant.turns).length === 0) return null;
  const [file, own] = [woundCircuits(design), woundCircuits(design, variant.turns)];
  const primary = primaryOf(design, converter, own);
  const before = primaryOf(design, converter, file);
  if (primary === null || before === null) return null;
  const all = variant.outputs.flatMap(({ circuit, voltage }) => {
    const turns = own.get(circuit)?.largest ?? 0;
    if (turns === 0) return [];
    const reflected = (voltage.value * primary.turns) / turns;
    const base = converter.outputs.find((output) => output.circuit === circuit);
    const baseTurns = file.get(circuit)?.largest ?? 0;
    if (base === undefined || baseTurns === 0 || base.voltage.value === 0) return [reflected];
    // rectifier drops and the like are in what the converter states, and go along
    const byBase = (base.voltage.value * before.turns) / baseTurns;
    return [(reflected * converter.reflectedVoltage.value) / byBase];
  });
  return all.length === 0 ? null : Math.max(...all);
}
