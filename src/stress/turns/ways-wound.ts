// The voltage between turns of two layers, at its worst over what a design file leaves open: every way in which the
// converter runs, the rectifiers in either lead, either rail under an unnamed circuit, each winding either way round.

import type { Design } from '#model/design.ts';
import type { VoltsPeak, VoltsRms } from '#units/quantity.ts';

import type { RunningConverter } from '#stress/converter/computed-stress.ts';
import { placedWindings, potentialAt, voltageBetweenPlaces, type PlacedWinding, type Run } from './places.ts';

export interface Way {
  readonly run: Run;
  readonly placed: readonly PlacedWinding[];
}

/** Turns of one layer, counted from where the layer begins. */
export interface TurnsOfLayer {
  readonly layer: number;
  readonly turns: readonly (number | 'last')[];
}

export interface WorstBetween {
  readonly windings: readonly [string, string];
  readonly peak: VoltsPeak;
  readonly rms: VoltsRms;
  readonly run: Run;
  /** Turns from the start of each winding. */
  readonly turns: readonly [number, number];
}

/** Which end of a winding switches is not among the ways: `worstBetween` takes each winding both ways round. */
export function waysWound(design: Design, running: RunningConverter): readonly Way[] {
  const none: ReadonlySet<string> = new Set();
  const how = (['plus-lead', 'return-lead'] as const).flatMap((diode) =>
    (['minus', 'plus'] as const).map((rail) => ({ diode, rail, finishSwitches: none })),
  );
  return running.runs.flatMap((run) =>
    how.map((one) => ({ run, placed: placedWindings(design, running, run, one) })),
  );
}

export const endsOfLayer = (layer: number): TurnsOfLayer => ({ layer, turns: [0, 'last'] });

/** Null where one of the layers is no winding. Peak and rms are searched together: those of the highest peak. */
export function worstBetween(
  ways: readonly Way[],
  one: TurnsOfLayer,
  other: TurnsOfLayer,
): WorstBetween | null {
  let worst: WorstBetween | null = null;
  for (const { run, placed } of ways) {
    const [a, b] = [one, other].map(({ layer }) =>
      placed.find(({ layers }) => layers.some((held) => held.layer === layer)),
    );
    if (a === undefined || b === undefined) continue;
    for (const turnA of turnsOf(a, one, a !== b)) {
      for (const turnB of turnsOf(b, other, a !== b)) {
        const found = voltageBetweenPlaces(run, potentialAt(a, turnA), potentialAt(b, turnB));
        if (worst === null || found.peak > worst.peak) {
          worst = { ...found, windings: [a.winding, b.winding], run, turns: [turnA, turnB] };
        }
      }
    }
  }
  return worst;
}

/** `eitherWay`: also as they would lie with start and finish swapped. */
function turnsOf(
  winding: PlacedWinding,
  { layer, turns }: TurnsOfLayer,
  eitherWay: boolean,
): readonly number[] {
  const held = winding.layers.find((one) => one.layer === layer);
  if (held === undefined) return [];
  const own = turns.map((turn) => (turn === 'last' ? held.to : Math.min(held.to, held.from + turn)));
  return eitherWay ? [...own, ...own.map((turn) => winding.turns - turn)] : own;
}
