// The potential along every winding, turn by turn, for one way in which the converter runs: it goes evenly from the
// winding's start to its finish. Which of the two switches is not in the file; by custom the start lies buried and
// switches. Turn 0 is the start, the number of turns the finish.

import type { Design } from '#model/design.ts';
import { voltsPeak, voltsRms, type VoltsPeak, type VoltsRms } from '#units/quantity.ts';

import type { RunningConverter } from '#stress/converter/computed-stress.ts';
import { openTurns } from '#stress/converter/winding-turns.ts';
import type { End } from '#stress/converter/converter-ends.ts';
import type { SwitchingState } from '#stress/pair/pair-stress.ts';

export type Run = RunningConverter['runs'][number];
export type Diode = 'plus-lead' | 'return-lead';
export type Switching = 'start' | 'finish';

export interface PlacedWinding {
  readonly winding: string;
  readonly circuit: string;
  readonly turns: number;
  readonly start: Potential;
  readonly finish: Potential;
  /** The turns that each of its layers holds, in the order wound. */
  readonly layers: readonly { readonly layer: number; readonly from: number; readonly to: number }[];
}

/** Against the neutral: `levels` by switching state, riding on a sine of amplitude `swing`. */
export type Potential = Pick<End, 'levels' | 'swing'>;

export interface HowWound {
  /** Lead in which the rectifier lies, of all windings but the primary. */
  readonly diode: Diode;
  /** Bulk rail that a mains circuit is tied to which the converter does not name. */
  readonly rail: 'minus' | 'plus';
  /** Windings whose finish switches; of all others the start does. */
  readonly finishSwitches: ReadonlySet<string>;
}

export function placedWindings(
  design: Design,
  { primary }: RunningConverter,
  run: Run,
  how: HowWound,
): readonly PlacedWinding[] {
  let before = 0;
  return design.windings.flatMap(({ id, circuit }): readonly PlacedWinding[] => {
    const layers = layersOf(design, id);
    const turns = layers.at(-1)?.to ?? 0;
    if (turns === 0) return [];
    const partOfPrimary = primary.windings.includes(id);
    const whole = endPotentials(run, circuit, partOfPrimary ? null : id, how);
    if (whole === null) return [];
    const [switched, still] = partOfPrimary
      ? [
          mixed(whole.switched, whole.still, before / primary.turns),
          mixed(whole.switched, whole.still, (before + turns) / primary.turns),
        ]
      : [whole.switched, whole.still];
    if (partOfPrimary) before += turns;
    const [start, finish] = how.finishSwitches.has(id) ? [still, switched] : [switched, still];
    return [{ winding: id, circuit, turns, start, finish, layers }];
  });
}

/** Potential at a turn, whole or not. */
export const potentialAt = ({ start, finish, turns }: PlacedWinding, turn: number): Potential =>
  mixed(start, finish, turn / turns);

export interface PlaceVoltage {
  readonly rms: VoltsRms;
  readonly peak: VoltsPeak;
}

export function voltageBetweenPlaces(run: Run, a: Potential, b: Potential): PlaceVoltage {
  const swing = a.swing - b.swing;
  let square = 0;
  let peak = 0;
  for (const { state, share } of run.run.shares) {
    const level = a.levels[state] - b.levels[state];
    square += share * (level * level + (swing * swing) / 2);
    peak = Math.max(peak, Math.abs(level));
  }
  return { rms: voltsRms(Math.sqrt(square)), peak: voltsPeak(peak + Math.abs(swing)) };
}

/** None where nobody counted the turns of one: the others would lie anywhere. */
function layersOf(design: Design, winding: string): PlacedWinding['layers'] {
  if (openTurns(design).some((layer) => layer.winding === winding)) return [];
  let from = 0;
  return design.layers.flatMap((layer, index) => {
    if (layer.kind !== 'winding' || layer.winding !== winding || typeof layer.turns !== 'number') return [];
    const held = { layer: index, from, to: from + layer.turns };
    from = held.to;
    return [held];
  });
}

/** Null winding: the primary. */
function endPotentials(
  { ends }: Run,
  circuit: string,
  winding: string | null,
  { diode, rail }: HowWound,
): { readonly switched: Potential; readonly still: Potential } | null {
  const all = (ends.get(circuit) ?? []).filter(({ name }) => winding === null || name.winding === winding);
  const find = (at: End['name']['at'], lead: Diode | null) => {
    const found = all.filter(({ name }) => name.at === at && name.diode === lead);
    return found[rail === 'plus' ? found.length - 1 : 0];
  };
  const switched = find('switched', winding === null ? null : diode);
  const still =
    winding === null ? find('bulk-plus', null) : find(diode === 'plus-lead' ? 'return' : 'output-plus', null);
  return switched === undefined || still === undefined ? null : { switched, still };
}

const STATES: readonly SwitchingState[] = ['on', 'off', 'spike', 'idle'];

/** `share` of the way from `a` to `b`. */
function mixed(a: Potential, b: Potential, share: number): Potential {
  const at = (state: SwitchingState) => a.levels[state] + (b.levels[state] - a.levels[state]) * share;
  const levels = Object.fromEntries(STATES.map((state) => [state, at(state)])) as Record<
    SwitchingState,
    number
  >;
  return { levels, swing: a.swing + (b.swing - a.swing) * share };
}
