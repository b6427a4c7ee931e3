// At what peak voltage an air gap breaks down. Three published forms for a uniform field are asked; they differ by up to
// a third, and real electrodes hold less than the form over some millimetres. So the answer is a likely value with a
// band, an expectation for the reader of a test, never a withstand voltage.

import { inMm, voltsPeak, type Metres, type Nm, type VoltsPeak } from '#units/quantity.ts';

import { pressureAt, relativeDensity } from './air.ts';

export interface Breakdown {
  readonly least: VoltsPeak;
  readonly likely: VoltsPeak;
  readonly most: VoltsPeak;
}

/** No uniform air gap breaks down under this, whatever its length: measured minimum, at 7.5 um and one atmosphere. */
const LEAST_OF_AIR = 327;
/** Contacts under about a micrometre break earlier, by field emission: 350 V per micrometre. */
const EMISSION_V_PER_MM = 350_000;
/** Measured breakdown of small electrodes over the uniform form: 0.75 to 1.15 of it. */
const REAL_ELECTRODES = 0.75;

export function airBreakdown(gap: Nm, altitude: Metres): Breakdown {
  const millimetres = inMm(gap);
  const emission = EMISSION_V_PER_MM * millimetres;
  const kPaCm = (pressureAt(altitude) / 1000) * (millimetres / 10);
  const held = (volts: number) => Math.min(Math.max(volts, LEAST_OF_AIR), emission);
  const likely = held(uniformField(millimetres / 10, relativeDensity(altitude)));
  const forms = [likely, held(townsend(kPaCm * 10, AIR)), held(piecewise(kPaCm))];
  return {
    least: voltsPeak(REAL_ELECTRODES * Math.min(...forms)),
    likely: voltsPeak(likely),
    most: voltsPeak(Math.max(...forms)),
  };
}

/**
 * What a gap in the middle of solids holds, where a discharge would go unseen: the lower of the two forms that are told
 * for short gaps, never under the least of air, whatever lies left of the minimum.
 */
export function gapHolds(gap: Nm, altitude: Metres): VoltsPeak {
  const millimetres = inMm(gap);
  const forms = [
    uniformField(millimetres / 10, relativeDensity(altitude)),
    townsend(pressureAt(altitude) * (millimetres / 1000), AIR),
  ];
  return voltsPeak(Math.max(LEAST_OF_AIR, Math.min(...forms)));
}

/** V = 24.22 d + 6.08 sqrt(d) kV, d in centimetres times the relative density. */
export function uniformField(centimetres: number, density: number): number {
  const x = centimetres * density;
  return 1000 * (24.22 * x + 6.08 * Math.sqrt(x));
}

export interface Gas {
  /** Ionisation per pascal and metre. */
  readonly a: number;
  /** Volts per pascal and metre. */
  readonly b: number;
  readonly gamma: number;
}

/** Published printings of air: 15 and 365 per cm Torr, which are these per Pa m. */
export const AIR: Gas = { a: 11.25, b: 273.75, gamma: 0.01 };

/** Townsend's form; 0 to the left of its branch, where it has no solution. `product`: pressure times gap, Pa m. */
export function townsend(product: number, { a, b, gamma }: Gas): number {
  const needed = Math.log(1 + 1 / gamma);
  const gain = Math.log((a * product) / needed);
  return gain > 0 ? (b * product) / gain : 0;
}

/** A fit in three pieces; `product` in kPa cm. It jumps at 0.2, which is why it only widens a band. */
export function piecewise(product: number): number {
  const k =
    product <= 0.2
      ? 2.0583 * Math.pow(product, -0.1724)
      : product <= 100
        ? 3.5134 * Math.pow(product, 0.0599)
        : 4.6295;
  const below = Math.log(product) + k;
  return below > 0 ? (2737.5 * product) / below : 0;
}
