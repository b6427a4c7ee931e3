// The colours of field strength, from the sheet to dark water; lightness only falls (on the dark sheet it only rises), so
// that it reads in grey. The scale is one of roots: the weak field is seen too.

import type { ThemeName } from '#drawing/scene/palette.ts';

type Rgb = readonly [number, number, number];

const RAMPS: Readonly<Record<ThemeName, readonly Rgb[]>> = {
  light: [
    [248, 249, 247],
    [221, 233, 222],
    [158, 203, 190],
    [79, 146, 148],
    [32, 84, 102],
    [10, 32, 46],
  ],
  dark: [
    [22, 28, 29],
    [26, 52, 58],
    [30, 93, 102],
    [72, 150, 150],
    [157, 209, 195],
    [232, 246, 238],
  ],
  paper: [
    [255, 255, 255],
    [221, 233, 222],
    [158, 203, 190],
    [79, 146, 148],
    [32, 84, 102],
    [10, 32, 46],
  ],
  print: [
    [255, 255, 255],
    [235, 235, 235],
    [200, 200, 200],
    [145, 145, 145],
    [92, 92, 92],
    [40, 40, 40],
  ],
};

/** Steps of the scale; more are not told apart. */
export const STEPS = 14;

/** Which step a field strength falls on, 0 to `STEPS - 1`. */
export const stepOf = (strength: number, strongest: number): number =>
  Math.min(STEPS - 1, Math.floor(STEPS * Math.sqrt(Math.max(0, strength) / Math.max(strongest, 1e-9))));

/** The field strength at which a step begins. */
export const strengthAt = (step: number, strongest: number): number => (step / STEPS) ** 2 * strongest;

export function rampColor(theme: ThemeName, step: number): string {
  const ramp = RAMPS[theme];
  const at = (step / (STEPS - 1)) * (ramp.length - 1);
  const i = Math.min(ramp.length - 2, Math.floor(at));
  const [a, b] = [ramp[i]!, ramp[i + 1]!];
  const mixed = a.map((value, k) => Math.round(value + (b[k]! - value) * (at - i)));
  return `#${mixed.map((value) => value.toString(16).padStart(2, '0')).join('')}`;
}
