// Numbers as they are printed: with their unit, and rounded so that a build never looks better than it is.
// What was measured is rounded down, what is asked is rounded up.

// Lengths come in millimetres and are printed in the unit that the reader asked for (`length-unit.ts`).

import { inUnit, unitStep } from './length-unit.ts';

/** A length that the build has: `4.83`, rounded down. */
export const lengthDown = (mm: number): string => printed(mm, Math.floor);

/** Room that the build takes up: `2.78`, rounded up. */
export const lengthTaken = (mm: number): string => printed(mm, Math.ceil);

/** A length that neither is asked nor counts for anything, to the nearest step. */
export const lengthNear = (mm: number): string => inUnit(mm).toFixed(unitStep().decimals);

/** The same without noughts at its end, a digit more where the figure has it. */
export const lengthPlain = (mm: number): string => trimmed(inUnit(mm).toFixed(unitStep().fine));

/** A length that is asked: `5.6`, rounded up, one decimal or two. Null: the book's tables end before it. */
export const lengthUp = (mm: number | null): string =>
  mm === null ? BEYOND : trimmed(printed(mm, Math.ceil), 1);

/** The same with its unit. */
export const askedLength = (mm: number | null): string =>
  mm === null ? BEYOND : `${lengthUp(mm)} ${unitStep().unit}`;

/** No figure, because the tables of the book end before it; nothing that is built reaches it. */
const BEYOND = 'beyond the tables';

/** A dimension of the drawing: `3.00`, to the nearest step, more digits where the figure has them. */
export function dimension(mm: number): string {
  const { unit, stepNm } = unitStep();
  const isWhole = unit !== 'mm' ? mm * NM_PER_MM >= FINE_UNDER_NM : inNm(mm) % stepNm === 0;
  return isWhole ? lengthNear(inNm(mm) / NM_PER_MM) : lengthPlain(inNm(mm) / NM_PER_MM);
}

const NM_PER_MM = 1_000_000;
/** Foils and films, under ten thousandths of an inch, are told to a hundredth of one. */
const FINE_UNDER_NM = 254_000;

/** Volts: whole from ten upward. */
export const volts = (value: number): string => `${significant(value, 10)} V`;

/** A test voltage, in kilovolts with two decimals at most: `2.83 kV`. Asked, so rounded up. */
export const kilovoltsUp = (value: number | null): string => {
  if (value === null) return BEYOND;
  const hundredths = Math.ceil(Math.round(value * 1000) / 10_000);
  return `${trimmed((hundredths / 100).toFixed(2), 1)} kV`;
};

/** Frequency with the prefix that leaves one to three digits before the point. */
export function frequency(hertz: number): string {
  if (hertz >= 1e6) return `${plain(hertz / 1e6)} MHz`;
  if (hertz >= 1e3) return `${plain(hertz / 1e3)} kHz`;
  return `${plain(hertz)} Hz`;
}

/** A number without a unit, at most four decimals, no trailing noughts. */
export const plain = (value: number): string => trimmed(value.toFixed(4));

/** Words for small counts: `no ply`, `one ply`, `3 plies`. */
export function plies(count: number): string {
  if (count === 0) return 'no ply';
  return count === 1 ? 'one ply' : `${count} plies`;
}

const inNm = (mm: number): number => Math.round(mm * NM_PER_MM);

function printed(mm: number, whole: (steps: number) => number): string {
  const { stepNm, decimals } = unitStep();
  return (whole(inNm(mm) / stepNm) / 10 ** decimals).toFixed(decimals);
}

function significant(value: number, wholeFrom: number): string {
  return Math.abs(value) >= wholeFrom ? value.toFixed(0) : trimmed(value.toFixed(2));
}

/** Drops trailing noughts, keeping at least `least` decimals. */
function trimmed(text: string, least = 0): string {
  const [whole = '0', part = ''] = text.split('.');
  const kept = part.replace(/0+$/, '').padEnd(least, '0');
  return kept === '' ? whole : `${whole}.${kept}`;
}
