// Branded numbers: a plain number that knows its unit, so that a length is never added to a voltage.
// Root mean square, peak and direct voltages are different units here on purpose.
// Lengths inside the program are whole nanometres (`Nm`); every comparison of lengths is one of integers.

/** A number that carries its unit in its type only. */
export type Quantity<Unit extends string> = number & { readonly unit: Unit };

export type Nm = Quantity<'nm'>;
export type Metres = Quantity<'m'>;
export type VoltsRms = Quantity<'V rms'>;
export type VoltsPeak = Quantity<'V peak'>;
export type VoltsDc = Quantity<'V dc'>;
export type Hertz = Quantity<'Hz'>;
export type Farads = Quantity<'F'>;
export type Ohms = Quantity<'ohm'>;
export type Amperes = Quantity<'A'>;
export type Seconds = Quantity<'s'>;
export type Watts = Quantity<'W'>;
export type Celsius = Quantity<'degC'>;

const NM_PER_MM = 1_000_000;

/** The one cast of this room: `value` is taken to be in the unit that the caller names. Throws on NaN and infinity. */
export function of<Unit extends string>(value: number): Quantity<Unit> {
  if (!Number.isFinite(value)) throw new RangeError(`a quantity must be finite, found ${value}`);
  return value as Quantity<Unit>;
}

/** Whole nanometres from a number that is already one; throws on fractions, which would be a bug of ours. */
export function nm(value: number): Nm {
  if (!Number.isSafeInteger(value)) throw new RangeError(`a length must be whole nanometres, found ${value}`);
  return value as Nm;
}

/** Millimetres to whole nanometres, to the nearest one. */
export const mm = (value: number): Nm => nm(Math.round(value * NM_PER_MM));

/** Nanometres to millimetres, as a plain number for printing and for tables. */
export const inMm = (value: Nm): number => value / NM_PER_MM;

export const voltsRms = (value: number): VoltsRms => of<'V rms'>(value);
export const voltsPeak = (value: number): VoltsPeak => of<'V peak'>(value);
export const voltsDc = (value: number): VoltsDc => of<'V dc'>(value);
export const hertz = (value: number): Hertz => of<'Hz'>(value);
export const metres = (value: number): Metres => of<'m'>(value);
export const farads = (value: number): Farads => of<'F'>(value);
export const ohms = (value: number): Ohms => of<'ohm'>(value);
export const amperes = (value: number): Amperes => of<'A'>(value);
export const seconds = (value: number): Seconds => of<'s'>(value);
export const celsius = (value: number): Celsius => of<'degC'>(value);

/** Peak of a sine of this root mean square. */
export const peakOfSine = (rms: VoltsRms): VoltsPeak => voltsPeak(rms * Math.SQRT2);
