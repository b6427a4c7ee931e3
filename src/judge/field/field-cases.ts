// At which potentials a section is looked at. For every two circuits one case: the moment at which the peak that stands
// between them is reached, each turn at its place between start and finish, scaled so that the pair carries the peak
// that it was judged at. Without a converter a circuit stands at one potential from end to end. Where the core's bond is
// not known, the first pair is also looked at with the core tied to each circuit.

import type { AskedState } from '#field/solve/solve-field.ts';
import type { Design } from '#model/design.ts';
import type { StressPair } from '#judge/study/stress-report.ts';
import { runningConverter } from '#stress/converter/computed-stress.ts';
import { potentialAt } from '#stress/turns/places.ts';
import { waysWound, type Way } from '#stress/turns/ways-wound.ts';
import type { SwitchingState } from '#stress/pair/pair-stress.ts';
import type { DrawnField } from '#judge/drawn-field/drawn-field.ts';

export interface FieldCase extends AskedState {
  readonly between: readonly [string, string];
  /** Across the pair, V. */
  readonly peak: number;
  /** Circuit that the core was taken to be tied to, where its bond is not known; null: as the file says, or floating. */
  readonly coreTied: string | null;
  /** Each turn at its own potential; else each circuit at one. */
  readonly byTurn: boolean;
}

/** Pairs beyond these, of lower peaks, are left out. */
const MOST_PAIRS = 4;

export function fieldCases(
  design: Design,
  drawn: DrawnField,
  pairs: readonly StressPair[],
): readonly FieldCase[] {
  const owners = new Set(drawn.electrodes.map(({ owner }) => owner));
  const stressed = pairs
    .filter(({ between: [a, b], peak }) => owners.has(a) && owners.has(b) && peak > 0)
    .sort((a, b) => b.peak - a.peak)
    .slice(0, MOST_PAIRS);
  const running = runningConverter(design);
  const ways = running === null ? [] : waysWound(design, running);
  return stressed.flatMap((pair, i) => {
    const moment = worstMoment(ways, pair.between);
    const volts = moment === null ? evenly(design, drawn, pairs, pair) : momentary(drawn, moment, pair.peak);
    const tied = i === 0 && typeof design.core.bond !== 'string' ? pair.between : [];
    return [null, ...tied].map((coreTied): FieldCase => {
      const asked = withCore(drawn, volts, coreTied);
      return { between: pair.between, peak: pair.peak, coreTied, byTurn: moment !== null, ...asked };
    });
  });
}

function withCore(drawn: DrawnField, volts: Float64Array, tied: string | null): AskedState {
  if (tied === null) return { electrodes: volts, floating: drawn.floating };
  const level = stillLevel(drawn, volts, tied);
  const electrodes = volts.map((value, i) => (drawn.section.electrodes[i] === drawn.core ? level : value));
  return { electrodes, floating: drawn.floating.filter((i) => i !== drawn.core) };
}

/** Potential where a circuit is tied: the end of its turns that lies nearer to the others. */
function stillLevel(drawn: DrawnField, volts: Float64Array, circuit: string): number {
  const own = drawn.electrodes.flatMap(({ owner, turn }, i) =>
    owner === circuit && turn ? [volts[i]!] : [],
  );
  return own.reduce((least, value) => (Math.abs(value) < Math.abs(least) ? value : least), own[0] ?? 0);
}

interface Moment {
  readonly way: Way;
  readonly state: SwitchingState;
  readonly sign: 1 | -1;
  readonly volts: number;
}

const STATES: readonly SwitchingState[] = ['on', 'off', 'spike', 'idle'];

function worstMoment(ways: readonly Way[], [a, b]: readonly [string, string]): Moment | null {
  let worst: Moment | null = null;
  for (const way of ways) {
    const ends = (circuit: string) =>
      way.placed.filter((one) => one.circuit === circuit).flatMap(({ start, finish }) => [start, finish]);
    for (const from of ends(a)) {
      for (const to of ends(b)) {
        for (const state of STATES) {
          if (state !== 'spike' && !way.run.run.shares.some((one) => one.state === state)) continue;
          for (const sign of [1, -1] as const) {
            const volts = Math.abs(
              from.levels[state] + sign * from.swing - to.levels[state] - sign * to.swing,
            );
            if (worst === null || volts > worst.volts) worst = { way, state, sign, volts };
          }
        }
      }
    }
  }
  return worst === null || worst.volts === 0 ? null : worst;
}

function momentary(drawn: DrawnField, { way, state, sign, volts }: Moment, peak: number): Float64Array {
  const at = (winding: string, turn: number): number => {
    const placed = way.placed.find((one) => one.winding === winding);
    if (placed === undefined) return 0;
    const { levels, swing } = potentialAt(placed, Math.min(turn, placed.turns));
    return ((levels[state] + sign * swing) * peak) / volts;
  };
  const turns = Float64Array.from(drawn.electrodes, ({ turn }) => (turn ? at(turn.winding, turn.at) : 0));
  return turns.map((value, i) => {
    const { owner, turn } = drawn.electrodes[i]!;
    return turn ? value : stillLevel(drawn, turns, owner);
  });
}

/** The second of the pair at 0, its first at the peak, every other circuit at its own peak against the second. */
function evenly(
  design: Design,
  drawn: DrawnField,
  pairs: readonly StressPair[],
  { between: [first, second], peak }: StressPair,
): Float64Array {
  const isMains = (id: string) => design.circuits.find((one) => one.id === id)?.role === 'mains';
  const level = (owner: string): number => {
    if (owner === first) return peak;
    if (owner === second || isMains(owner) === isMains(second)) return 0;
    const own = pairs.find(({ between }) => between.includes(owner) && between.includes(second));
    return Math.min(peak, own?.peak ?? 0);
  };
  return Float64Array.from(drawn.electrodes, ({ owner }) => level(owner));
}
