// Numbers and points of photographs and measurements: how they are kept, and how the words of older files hold them.

export interface NotePoint {
  readonly x: number;
  readonly y: number;
}

export const POINT = String.raw`-?\d{1,5}\.\d{2},-?\d{1,5}\.\d{2}`;
export const NUMBER = String.raw`\d{1,6}(?:\.\d{1,6})?`;

export function pointOf(text: string): NotePoint {
  const [x = 0, y = 0] = text.split(',').map(Number);
  return { x, y };
}

/** Without noughts at the end and without an exponent. */
export const plainNumber = (value: number): string => String(Number(value.toFixed(6)));

/** Hundredths of a pixel: finer than any hand. */
export const keptPoint = ({ x, y }: NotePoint): NotePoint => ({
  // `+ 0` turns -0 into 0
  x: Number(x.toFixed(2)) + 0,
  y: Number(y.toFixed(2)) + 0,
});
