// The voltages of a pair while they are being found, each figure with its basis and its reason.

import type { Circuit } from '#model/design.ts';
import type { Because } from '#standards/because.ts';
import type { Basis, ComputedStress, OpenVoltage, StressNote } from '#stress/pair/pair-stress.ts';
import type { Hertz, VoltsPeak, VoltsRms } from '#units/quantity.ts';

export interface Figure<Q> {
  readonly value: Q;
  readonly basis: Basis;
  readonly because: Because;
  /** The part of itself by which it may be higher. */
  readonly within: number;
  readonly open: readonly OpenVoltage[];
}

export interface Pair {
  readonly a: Circuit;
  readonly b: Circuit;
  readonly rms: Figure<VoltsRms>;
  readonly peak: Figure<VoltsPeak>;
  readonly frequency: Figure<Hertz>;
  readonly computed: ComputedStress | null;
  readonly notes: readonly StressNote[];
}
