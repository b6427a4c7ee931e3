// What makes up a touch current, the part that counts most first, and the largest capacitor that would do where it is too much.

import type { BridgingPart } from '#stress/current/leakage-branches.ts';
import type { Leakage, TouchCurrent } from '#stress/current/leakage.ts';

import type { CircuitLook } from '#words/design/circuit-look.ts';
import { pairNames } from '#words/verdict/pair-words.ts';
import { capacitance, milliamperes } from './leakage-words.ts';

/** `CY1, 1 nF: 0.083 mA`, as if the output were tied straight to earth. */
export function touchShares(
  { parts, touch }: Pick<Leakage, 'parts' | 'touch'>,
  looks: readonly CircuitLook[],
): readonly string[] {
  if (touch === null) return [];
  return parts
    .map((part, i) => ({ part, share: touch.through[i] ?? 0 }))
    .filter(({ share }) => share > 0)
    .sort((a, b) => b.share - a.share)
    .map(({ part, share }) => `${partName(part, looks)}: ${milliamperes(share)}`);
}

const partName = ({ id, between, farads }: BridgingPart, looks: readonly CircuitLook[]): string =>
  [id ?? `facing layers, ${pairNames(between, looks)}`, farads === null ? '' : capacitance(farads)]
    .filter((piece) => piece !== '')
    .join(', ');

/**
 * Null where the limit is kept, or where no capacitor of the file is what exceeds it. All else stays; the current through the
 * body is taken as proportional to that into earth, which counts it a little high.
 */
export function largestThatWouldDo({ parts, touch }: Pick<Leakage, 'parts' | 'touch'>): string | null {
  if (touch === null) return null;
  const allowed = touch.plain * keptShare(touch);
  if (allowed >= touch.plain) return null;
  const shares = parts.map((part, i) => ({ part, share: touch.through[i] ?? 0 }));
  const [most] = shares
    .filter(({ part }) => part.from === 'file' && part.farads !== null)
    .sort((a, b) => b.share - a.share);
  if (most?.part.farads == null || most.share === 0) return null;
  const left = most.share - (touch.plain - allowed);
  if (left <= 0) return null;
  return `at most ${capacitance(floorTo2((most.part.farads * left) / most.share))} in place of ${most.part.id ?? 'it'}`;
}

/** The share of the current, rms and peak, that the limits allow. */
const keptShare = ({ total, limit }: TouchCurrent): number =>
  Math.min(1, limit.rms / total.rms, limit.peak / total.peak);

/** Down to two figures: more would be too much. */
function floorTo2(farads: number): number {
  const step = 10 ** (Math.floor(Math.log10(farads)) - 1);
  return Math.floor(farads / step + 1e-9) * step;
}
