// What the probe found at one place, in a line.

import { lengthNear } from '#words/text/number-words.ts';
import { lengthUnit } from '#words/text/length-unit.ts';

export interface Probed {
  readonly at: readonly [number, number];
  readonly volts: number;
  /** V/mm; null in metal. */
  readonly strength: number | null;
  readonly what: string;
}

export function probeWords({ at: [x, y], volts, strength, what }: Probed): string {
  const field = strength === null ? '' : `, ${(strength / 1000).toFixed(2)} kV/mm`;
  return `x ${lengthNear(x)} ${lengthUnit()}, y ${lengthNear(y)} ${lengthUnit()}: ${what}, ${Math.round(volts)} V${field}`;
}
