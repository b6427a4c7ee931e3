// The voltage that nothing between mains and anything else is taken to be below: the rated mains and its peak. For a
// direct supply its direct voltage.

import { because, type Because } from '#standards/because.ts';
import type { Supply } from '#model/design/supply.ts';
import { hertz, peakOfSine, voltsPeak, type Hertz, type VoltsPeak, type VoltsRms } from '#units/quantity.ts';

export interface VoltageFloor {
  readonly rms: VoltsRms;
  readonly peak: VoltsPeak;
  readonly frequency: Hertz;
  readonly because: Because;
}

export function voltageFloor(supply: Supply): VoltageFloor {
  const rms = supply.voltage.value;
  const direct = supply.kind === 'dc';
  const peak = direct ? voltsPeak(rms) : peakOfSine(rms);
  const frequency = direct ? hertz(0) : supply.frequency.value;
  return {
    rms,
    peak,
    frequency,
    because: because('voltage-floor', { supply: supply.kind, rms, peak, frequency }),
  };
}
