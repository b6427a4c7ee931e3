// Numbers and points as the notes of photographs and measurements write them, and what reads them back.

export interface NotePoint {
  readonly x: number;
  readonly y: number;
}

/** Hundredths of a pixel: finer than any hand. */
export const notePoint = ({ x, y }: NotePoint): string => `${x.toFixed(2)},${y.toFixed(2)}`;

export const POINT = String.raw`-?\d{1,5}\.\d{2},-?\d{1,5}\.\d{2}`;
export const NUMBER = String.raw`\d{1,6}(?:\.\d{1,6})?`;

export function pointOf(text: string): NotePoint {
  const [x = 0, y = 0] = text.split(',').map(Number);
  return { x, y };
}

/** Without noughts at the end and without an exponent. */
export const plainNumber = (value: number): string => String(Number(value.toFixed(6)));

/** Points are kept as they are written, so that a note read back gives the same figures. */
export const keptPoint = ({ x, y }: NotePoint): NotePoint => ({
  // `+ 0` turns -0 into 0
  x: Number(x.toFixed(2)) + 0,
  y: Number(y.toFixed(2)) + 0,
});
