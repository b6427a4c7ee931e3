// The marks of a ruler at some scale: whole millimetres as staff pieces (filled and hollow in turn), fine ticks
// between them as far as they can be told apart, and numbers as far as they do not touch.

export interface RulerMarks {
  /** Millimetres at which a staff piece ends; the piece from `n` to `n + step` is filled where `n / step` is even. */
  readonly step: number;
  /** Distance of the fine ticks, mm; null where they would run together. */
  readonly fine: number | null;
  /** Distance of the numbers, mm. */
  readonly numbers: number;
  readonly from: number;
  readonly to: number;
}

const STEPS = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000] as const;
const FINE = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5] as const;
const NUMBERS = [0.1, 0.2, 0.5, ...STEPS] as const;
const LEAST_PIECE_PX = 5;
const LEAST_FINE_PX = 4;
/** Parts of a millimetre are numbered only where one millimetre is as wide as this. */
const PARTS_FROM_PX = 150;

/** Marks between two millimetre values; `perMm` in pixels, `room` the pixels that one number takes. */
export function rulerMarks(from: number, to: number, perMm: number, room: number): RulerMarks {
  const step = STEPS.find((mm) => mm * perMm >= LEAST_PIECE_PX) ?? 1000;
  const fine = step === 1 ? (FINE.find((mm) => mm * perMm >= LEAST_FINE_PX) ?? null) : null;
  const numbers = NUMBERS.find((mm) => mm * perMm >= room && (mm >= 1 || perMm >= PARTS_FROM_PX)) ?? 1000;
  return { step, fine, numbers, from: Math.min(from, to), to: Math.max(from, to) };
}

/** The multiples of `step` in the ruler, each rounded so that 0.1 is written 0.1. */
export function multiples(step: number, from: number, to: number): readonly number[] {
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) =>
    Number(((first + index) * step).toFixed(6)),
  );
}
