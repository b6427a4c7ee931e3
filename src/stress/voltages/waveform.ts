// The voltage between two ends over one mains period, switching states riding on the mains: its true rms and its peak.
// The switching period is short against the mains period and fits into it a whole number of times, so that in every
// state the sine averages to 0 and its square to a half: the integral is then exact, piece by piece.

import { voltsPeak, voltsRms, type VoltsPeak, type VoltsRms } from '#units/quantity.ts';

import type { PairWaveform } from './pair-stress.ts';

export function rmsOf({ swing, states }: PairWaveform): VoltsRms {
  let square = 0;
  for (const { share, level } of states) square += share * (level * level + (swing * swing) / 2);
  return voltsRms(Math.sqrt(square));
}

/** A spike counts in full, however short: it recurs. */
export function peakOf({ swing, states }: PairWaveform): VoltsPeak {
  return voltsPeak(Math.max(...states.map(({ level }) => Math.abs(level))) + Math.abs(swing));
}

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
