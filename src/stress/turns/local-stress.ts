// The voltage between neighbouring layers on one side of the barrier, where only enamel and functional tape stand
// between: layers of one winding, primary and auxiliary. At its worst: which turns of two layers face each other, which
// end of a winding switches and where its rectifier lies are not in the file, so all are tried.
//
// Steps: local-stress {peak, rms, line, variant, turnA, turnB}; under it round-wire and its kin for what enamel holds.

import type { Design } from '#model/design.ts';
import { facingLayers } from '#model/design/facing-layers.ts';
import type { Layer, TapeLayer } from '#model/design/layer.ts';
import { because, type Because } from '#standards/because.ts';
import { voltsRms, type VoltsPeak, type VoltsRms } from '#units/quantity.ts';

import type { RunningConverter } from '#stress/converter/computed-stress.ts';
import { enamelHolds } from '#stress/breakdown/enamel-holds.ts';
import { endsOfLayer, waysWound, worstBetween } from './ways-wound.ts';

export interface LocalStress {
  /** Indices in the file's `layers`, the inner first. */
  readonly layers: readonly [number, number];
  readonly windings: readonly [string, string];
  readonly peak: VoltsPeak;
  readonly rms: VoltsRms;
  /** Plies of tape between them; unknown counts as one. */
  readonly plies: number;
  /** Least breakdown of the weaker wire's enamel; null where the tables do not say. */
  readonly holds: VoltsRms | null;
  /** More than the enamel holds, and no tape between. */
  readonly exceeds: boolean;
  readonly because: Because;
}

export function localStresses(design: Design, running: RunningConverter): readonly LocalStress[] {
  const ways = waysWound(design, running);
  return neighbours(design).flatMap(({ inner, outer, plies }) => {
    const worst = worstBetween(ways, endsOfLayer(inner), endsOfLayer(outer));
    if (worst === null) return [];
    const wires = worst.windings.map((id) => design.windings.find((winding) => winding.id === id)?.wire);
    const held = wires.map((wire) => (wire === undefined ? null : enamelHolds(wire)));
    const known = held.every((one) => one !== null) ? held : [];
    const holds = known.length === 0 ? null : voltsRms(Math.min(...known.map((one) => one?.value ?? 0)));
    const exceeds = holds !== null && plies === 0 && worst.peak > holds * Math.SQRT2;
    const from = held.flatMap((one) => (one === null ? [] : [one.because]));
    const { peak, rms, run, turns } = worst;
    const values = {
      peak,
      rms,
      line: run.run.line,
      variant: run.run.variant,
      turnA: turns[0],
      turnB: turns[1],
      holds,
    };
    return [
      {
        layers: [inner, outer] as const,
        windings: worst.windings,
        peak,
        rms,
        plies,
        holds,
        exceeds,
        because: because('local-stress', values, [], from),
      },
    ];
  });
}

interface Neighbours {
  readonly inner: number;
  readonly outer: number;
  readonly plies: number;
}

/** Winding layers with nothing or tape between, both on one side of the barrier. */
const neighbours = (design: Design): readonly Neighbours[] =>
  facingLayers(design.layers).flatMap(({ inner, outer, tapes }) =>
    isOneSide(design, design.layers[inner]!, design.layers[outer]!)
      ? [{ inner, outer, plies: tapes.reduce((sum, tape) => sum + pliesOf(tape), 0) }]
      : [],
  );

const pliesOf = ({ plies }: TapeLayer): number => (typeof plies === 'number' ? plies : 1);

function isOneSide(design: Design, a: Layer, b: Layer): boolean {
  const roleOf = (layer: Layer) => {
    const winding = layer.kind === 'winding' && design.windings.find(({ id }) => id === layer.winding);
    return winding && design.circuits.find(({ id }) => id === winding.circuit)?.role;
  };
  const role = roleOf(a);
  return role !== undefined && role === roleOf(b);
}
