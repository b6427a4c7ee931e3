// What stands where nobody gave a figure and the format takes no unknown: an interval that holds most of such parts, of
// which the worse end counts. It is listed with the other intervals, and named as not measured beside its field.
// Common practice for small mains transformers, no limit of any standard.

interface Interval {
  readonly value: string;
  readonly plusMinus: string;
}

const between = (value: string, plusMinus: string): Interval => ({ value, plusMinus });

export const unmeasured = {
  /** 100 to 240 V, the mains of the world. */
  supply: between('170 V', '70 V'),
  /** Between the flanges. */
  width: between('12 mm', '4 mm'),
  /** From the tube to the rim. */
  height: between('6 mm', '2 mm'),
  divider: between('1 mm', '1 mm'),
  /** A screen. */
  foil: between('0.05 mm', '0.05 mm'),
  /** Where a tape or screen ends: at the flange, or up to a millimetre short of it. */
  inset: between('0.5 mm', '0.5 mm'),
} as const satisfies Readonly<Record<string, Interval>>;

/** Whether a field of the file holds one of these as it was put there. */
export const isUnmeasured = (field: unknown): boolean =>
  Object.values(unmeasured).some((interval) => JSON.stringify(interval) === JSON.stringify(field));
