// Where each layer of a winding lies in potential, for the table of a build: while the mains goes through zero, at the
// high line, with the converter's first outputs, wound as is the custom (the start at the switched end).

import type { Design } from '#model/design.ts';
import { voltsPeak, type VoltsPeak } from '#units/quantity.ts';

import type { RunningConverter } from '#stress/converter/computed-stress.ts';
import { placedWindings, potentialAt } from './places.ts';

export interface PlacedLayer {
  readonly layer: number;
  readonly winding: string;
  /** Turns from the start of the winding. */
  readonly turns: readonly [number, number];
  /** Against the neutral, at the layer's first and last turn. */
  readonly on: readonly [VoltsPeak, VoltsPeak];
  readonly off: readonly [VoltsPeak, VoltsPeak];
}

export function placedLayers(design: Design, running: RunningConverter): readonly PlacedLayer[] {
  const run = running.runs[0];
  if (run === undefined) return [];
  const how = { diode: 'plus-lead', rail: 'minus', finishSwitches: new Set<string>() } as const;
  return placedWindings(design, running, run, how)
    .flatMap((winding) =>
      winding.layers.map(({ layer, from, to }): PlacedLayer => {
        const [first, last] = [potentialAt(winding, from), potentialAt(winding, to)];
        return {
          layer,
          winding: winding.winding,
          turns: [from, to],
          on: [voltsPeak(first.levels.on), voltsPeak(last.levels.on)],
          off: [voltsPeak(first.levels.off), voltsPeak(last.levels.off)],
        };
      }),
    )
    .sort((a, b) => a.layer - b.layer);
}
