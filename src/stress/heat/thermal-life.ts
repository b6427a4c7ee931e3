// A rule of thumb for how long insulation lasts: its class stands for 20 000 hours, and 10 K more halve them. Beside it
// the same by the law behind the rule, for the span of activation energies met with; neither is a promise.

import type { Celsius } from '#units/quantity.ts';

export interface LifeHours {
  readonly byHalving: number;
  /** By Arrhenius, at 0.8 and at 1.1 eV, the shorter first. */
  readonly byArrhenius: readonly [number, number];
}

const HOURS_AT_CLASS = 20_000;
const HALVED_BY_K = 10;
const ENERGIES_EV = [0.8, 1.1] as const;
const BOLTZMANN_EV_PER_K = 8.617333262e-5;
const ZERO_C_IN_K = 273.15;

export function lifeHours(thermalClass: Celsius, hottest: Celsius): LifeHours {
  const byEnergy = ENERGIES_EV.map((energy) => HOURS_AT_CLASS * ageingRatio(energy, hottest, thermalClass));
  return {
    byHalving: HOURS_AT_CLASS * Math.pow(2, (thermalClass - hottest) / HALVED_BY_K),
    byArrhenius: [Math.min(...byEnergy), Math.max(...byEnergy)],
  };
}

/** How many times quicker a reaction of this activation energy runs at `warmer` than at `cooler`. */
export function ageingRatio(energyEv: number, cooler: Celsius, warmer: Celsius): number {
  const reciprocal = (celsius: Celsius) => 1 / (celsius + ZERO_C_IN_K);
  return Math.exp((energyEv / BOLTZMANN_EV_PER_K) * (reciprocal(cooler) - reciprocal(warmer)));
}
