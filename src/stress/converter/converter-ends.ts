// The potential of every end of a circuit against the neutral, in every switching state. A circuit that is no mains is
// tied to the neutral at its return, as laboratories measure; one on the mains side at the negative bulk rail.
// Where a rectifier lies is not in the file: with it in the plus lead the other end of the winding switches.
//
//   plus lead:    return o--winding--o switched -->|--o plus        return lead:  return o--|<--o switched --winding--o plus

import type { Circuit } from '#model/design.ts';

import type { WoundCircuit, Primary } from './converter-turns.ts';
import type { OperatingCase } from './converter-cases.ts';
import type { EndName, SwitchingState } from '#stress/pair/pair-stress.ts';

export interface End {
  readonly name: EndName;
  readonly levels: Readonly<Record<SwitchingState, number>>;
  readonly swing: number;
}

type Levels = End['levels'];

export function endsOf(
  circuit: Circuit,
  wound: WoundCircuit,
  primary: Primary,
  run: OperatingCase,
): readonly End[] {
  const { rails } = run;
  const mains = circuit.role === 'mains';
  const isPrimary = circuit.id === primary.circuit;
  const fed = run.outputs.has(circuit.id);
  const bases = !mains ? [0] : fed ? [rails.minus] : [rails.minus, rails.plus];
  const counted = countedWindings(
    wound,
    isPrimary ? primary.windings : [],
    fed ? run : null,
    primary,
    circuit.id,
  );
  const others = bases.flatMap((base) =>
    counted.flatMap(({ id, turns }) => windingEnds(circuit.id, id, turns / primary.turns, base, run)),
  );
  const bare = wound.windings.length === 0 ? bareEnds(circuit.id, bases, run) : [];
  const all = isPrimary ? [...primaryEnds(primary, run), ...others] : [...others, ...bare];
  const swing = mains ? rails.swing : 0;
  return all.map((end) => ({ ...end, swing }));
}

type Placed = Omit<End, 'swing'>;

/**
 * Each winding by itself; with them all in series where their sum fits the stated output better than the largest, or
 * where nothing is stated.
 */
function countedWindings(
  { windings, total, largest }: WoundCircuit,
  without: readonly string[],
  fed: OperatingCase | null,
  primary: Primary,
  circuit: string,
): readonly { readonly id: string; readonly turns: number }[] {
  const own = windings.filter(({ id }) => !without.includes(id));
  if (own.length < 2) return own;
  const volts = fed?.outputs.get(circuit) ?? 0;
  const expected = fed !== null && fed.reflected > 0 ? (volts * primary.turns) / fed.reflected : 0;
  const away = (turns: number) => Math.abs(Math.log(turns / expected));
  const series = expected <= 0 || away(total) < away(largest);
  return series ? [...own, { id: own.map(({ id }) => id).join('+'), turns: total }] : own;
}

function primaryEnds(
  { circuit, windings }: Primary,
  { rails, reflected, overshoot }: OperatingCase,
): readonly Placed[] {
  const winding = windings.join('+');
  const name = (at: EndName['at']): EndName => ({ circuit, winding, at, diode: null });
  const switched = {
    on: rails.minus,
    off: rails.plus + reflected,
    spike: rails.plus + reflected + overshoot,
    idle: rails.plus,
  };
  return [
    { name: name('switched'), levels: switched },
    { name: name('bulk-plus'), levels: still(rails.plus) },
    { name: name('bulk-minus'), levels: still(rails.minus) },
  ];
}

function windingEnds(
  circuit: string,
  winding: string,
  ratio: number,
  base: number,
  run: OperatingCase,
): readonly Placed[] {
  const volts = run.outputs.get(circuit) ?? run.reflected * ratio;
  const name = (at: EndName['at'], diode: EndName['diode']): EndName => ({ circuit, winding, at, diode });
  const on = run.bulk * ratio;
  // The spike lies in the primary's leakage and is not carried over.
  const off = run.reflected * ratio;
  const inPlus: Levels = { on: base - on, off: base + off, spike: base + off, idle: base };
  const plus = base + volts;
  const inReturn: Levels = { on: plus + on, off: base, spike: base, idle: plus };
  return [
    { name: name('return', null), levels: still(base) },
    { name: name('output-plus', null), levels: still(base + volts) },
    { name: name('switched', 'plus-lead'), levels: inPlus },
    { name: name('switched', 'return-lead'), levels: inReturn },
  ];
}

/** A screen, an earth, a circuit known by its leads only. */
function bareEnds(circuit: string, bases: readonly number[], { outputs }: OperatingCase): readonly Placed[] {
  const volts = outputs.get(circuit);
  return bases.flatMap((base) => {
    const tied: Placed = { name: { circuit, winding: null, at: 'tied', diode: null }, levels: still(base) };
    if (volts === undefined) return [tied];
    const name: EndName = { circuit, winding: null, at: 'output-plus', diode: null };
    return [tied, { name, levels: still(base + volts) }];
  });
}

const still = (level: number): Levels => ({ on: level, off: level, spike: level, idle: level });
