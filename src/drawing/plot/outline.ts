// Where each switching state lies along one period of the mains, for the plot.

import type { PairWaveform } from '#stress/pair/pair-stress.ts';
import { voltsPeak, type VoltsPeak } from '#units/quantity.ts';

export interface Outline {
  /** Angle of the mains, 0 to 360 degrees. */
  readonly angle: number;
  /** Voltage in each state, in the order of the waveform's states. */
  readonly volts: readonly VoltsPeak[];
}

/** Where each state lies along the mains period: switching is far too quick to be drawn, so a plot fills between them. */
export function outlineOf({ swing, states }: PairWaveform, points: number): readonly Outline[] {
  return Array.from({ length: points }, (_, i) => {
    const angle = (360 * i) / (points - 1);
    const mains = swing * Math.sin((angle * Math.PI) / 180);
    return { angle, volts: states.map(({ level }) => voltsPeak(level + mains)) };
  });
}
