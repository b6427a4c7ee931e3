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
