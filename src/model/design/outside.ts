// What stands between circuits outside the window: distances, and parts that bridge them.

import type { Known, Unknown } from '#model/quantity/reading.ts';
import type { Farads, Nm, Ohms, VoltsRms } from '#units/quantity.ts';
import type { MaterialGroup } from '#units/terms.ts';
import type { GivenVoltage } from './voltages.ts';

export interface Outside {
  readonly between: readonly [string, string];
  readonly what: string;
  readonly clearance: Known<Nm> | null;
  readonly creepage: Known<Nm> | null;
  readonly materialGroup: MaterialGroup | Unknown;
  /** The voltage at this place, where it is known: it wins here over the pair's. */
  readonly working: GivenVoltage | null;
}

export interface Bridge {
  readonly id: string;
  readonly kind: 'capacitor' | 'optocoupler' | 'resistor';
  readonly between: readonly [string, string];
  readonly capacitance: Known<Farads> | null;
  readonly resistance: Known<Ohms> | null;
  readonly safetyClass: 'Y1' | 'Y2' | 'Y4' | 'X1' | 'X2' | 'none' | Unknown;
  /** Rated voltage of one part, rms. */
  readonly rated: Known<VoltsRms> | null;
  readonly inSeries: number;
  readonly clearance: Known<Nm> | null;
  readonly creepage: Known<Nm> | null;
  readonly throughInsulation: Known<Nm> | null;
  readonly approval: 'none' | 'basic' | 'reinforced' | Unknown;
  readonly working: GivenVoltage | null;
}
