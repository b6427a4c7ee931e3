// What a design is fed from and what surrounds it.

import type { Known, Reading, Unknown } from '#model/quantity/reading.ts';
import type { Celsius, Hertz, Metres, VoltsPeak, VoltsRms } from '#units/quantity.ts';
import type { OvervoltageCategory, PollutionDegree } from '#units/terms.ts';

export interface Supply {
  readonly kind: 'ac' | 'dc';
  /** Highest voltage of the marked range; for a direct supply its direct voltage. */
  readonly voltage: Known<VoltsRms>;
  /** Lowest voltage of the marked range. */
  readonly lowest: Reading<VoltsRms>;
  /** Part of the voltage, 0.1 is 10 %. */
  readonly tolerance: number;
  readonly frequency: Known<Hertz>;
  readonly overvoltageCategory: OvervoltageCategory;
  /** The file names it. */
  readonly categoryStated: boolean;
  /** Where the build is sold, as a table names it; null: not said. */
  readonly market: string | null;
  /** A stated required withstand voltage, instead of the table's. */
  readonly transient: Known<VoltsPeak> | null;
}

export interface Surroundings {
  readonly pollutionDegree: PollutionDegree;
  readonly altitude: Known<Metres>;
  readonly hottestInsulation: Reading<Celsius>;
  readonly temperature: Temperature;
  readonly impregnation: 'none' | 'varnish' | 'potted';
  /** Covers potting, cemented joints and pollution degree 1. */
  readonly proof: 'tested' | 'none';
}

/** How the hottest insulation was measured, and in what use. */
export interface Temperature {
  readonly method: 'thermocouple' | 'resistance' | 'infrared' | Unknown;
  readonly condition: 'normal' | 'abnormal';
}
