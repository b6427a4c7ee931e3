// The unit in which lengths are told to the one who reads: millimetres, inches or thousandths of an inch. It is millimetres
// until a page says otherwise; files, papers, the command line and the library stay in millimetres.
// Who shows the words says once how the unit is asked for, so that what is shown follows when it changes.

export const LENGTH_UNITS = ['mm', 'in', 'mil'] as const;

export type LengthUnit = (typeof LENGTH_UNITS)[number];

interface UnitStep {
  readonly unit: LengthUnit;
  readonly mm: number;
  /** A printed length is a whole number of these: a hundredth of a millimetre, a tenth of a thousandth of an inch. */
  readonly stepNm: number;
  readonly decimals: number;
  /** Decimals of a figure that must not lose what was typed. */
  readonly fine: number;
}

const STEPS: Readonly<Record<LengthUnit, UnitStep>> = {
  mm: { unit: 'mm', mm: 1, stepNm: 10_000, decimals: 2, fine: 4 },
  in: { unit: 'in', mm: 25.4, stepNm: 2540, decimals: 4, fine: 5 },
  mil: { unit: 'mil', mm: 0.0254, stepNm: 2540, decimals: 1, fine: 2 },
};

let asked: () => LengthUnit = () => 'mm';

/** From now on lengths are told in what this answers. */
export function tellLengthsIn(unit: () => LengthUnit): void {
  asked = unit;
}

/** What `make` writes is in millimetres whatever the reader has chosen: papers and files. */
export function inMillimetres<T>(make: () => T): T {
  const before = asked;
  asked = () => 'mm';
  try {
    return make();
  } finally {
    asked = before;
  }
}

export const unitStep = (): UnitStep => STEPS[asked()];

/** `mm`, to stand behind a figure. */
export const lengthUnit = (): LengthUnit => asked();

export const inUnit = (mm: number): number => mm / unitStep().mm;

export const mmOfUnit = (figure: number): number => figure * unitStep().mm;
