// What air is at an altitude: the pressure of the standard atmosphere, in pascal, and its density compared with sea level.

import type { Metres } from '#units/quantity.ts';

const SEA_LEVEL_PA = 101_325;
/** Standard atmosphere up to 11 km: p = p0 (1 - 2.25577e-5 h)^5.25588. */
const PER_METRE = 2.25577e-5;
const EXPONENT = 5.25588;

export const pressureAt = (altitude: Metres): number =>
  SEA_LEVEL_PA * Math.pow(Math.max(0, 1 - PER_METRE * altitude), EXPONENT);

/** At one temperature the density goes with the pressure. */
export const relativeDensity = (altitude: Metres): number => pressureAt(altitude) / SEA_LEVEL_PA;
