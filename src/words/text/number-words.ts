// Numbers as they are printed: with their unit, and rounded so that a build never looks better than it is.
// What was measured is rounded down, what is asked is rounded up.

const NM_PER_MM = 1_000_000;
/** Printed lengths have two decimals of a millimetre. */
const STEP_NM = 10_000;

/** A length that the build has: `4.83`, rounded down. */
export const lengthDown = (mm: number): string => printed(Math.floor(inNm(mm) / STEP_NM));

/** Room that the build takes up: `2.78`, rounded up, two decimals. */
export const lengthTaken = (mm: number): string => printed(Math.ceil(inNm(mm) / STEP_NM));

/** A length that is asked: `5.6`, rounded up, one decimal or two. Null: the book's tables end before it. */
export const lengthUp = (mm: number | null): string =>
  mm === null ? BEYOND : trimmed(printed(Math.ceil(inNm(mm) / STEP_NM)), 1);

/** The same with its unit. */
export const askedLength = (mm: number | null): string => (mm === null ? BEYOND : `${lengthUp(mm)} mm`);

/** No figure, because the tables of the book end before it; nothing that is built reaches it. */
const BEYOND = 'beyond the tables';

/** A dimension of the drawing: `3.00`, to the nearest hundredth, more digits where the figure has them. */
export function dimension(mm: number): string {
  const whole = inNm(mm);
  return whole % STEP_NM === 0 ? printed(whole / STEP_NM) : trimmed((whole / NM_PER_MM).toFixed(4));
}

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

const printed = (hundredths: number): string => (hundredths / 100).toFixed(2);

function significant(value: number, wholeFrom: number): string {
  return Math.abs(value) >= wholeFrom ? value.toFixed(0) : trimmed(value.toFixed(2));
}

/** Drops trailing noughts, keeping at least `least` decimals. */
function trimmed(text: string, least = 0): string {
  const [whole = '0', part = ''] = text.split('.');
  const kept = part.replace(/0+$/, '').padEnd(least, '0');
  return kept === '' ? whole : `${whole}.${kept}`;
}
