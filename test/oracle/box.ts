// Rectangles in plain whole nanometres, for the oracle only: cut holes out, shrink a union, keep a part.

export interface Box {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** Null where nothing is left: the oracle has no rectangles without area. */
export function box(x0: number, y0: number, x1: number, y1: number): Box | null {
  return x0 < x1 && y0 < y1 ? { x0, y0, x1, y1 } : null;
}

export const boxes = (...maybe: readonly (Box | null)[]): Box[] => maybe.filter((b): b is Box => b !== null);

export const clip = (b: Box, to: Box): Box | null =>
  box(Math.max(b.x0, to.x0), Math.max(b.y0, to.y0), Math.min(b.x1, to.x1), Math.min(b.y1, to.y1));

export const overlap = (a: Box, b: Box): boolean => clip(a, b) !== null;

/** What is left of `whole` without the holes, as rectangles that do not overlap. */
export function subtract(whole: readonly Box[], holes: readonly Box[]): Box[] {
  return holes.reduce<readonly Box[]>((left, hole) => left.flatMap((b) => without(b, hole)), whole) as Box[];
}

function without(b: Box, hole: Box): Box[] {
  const c = clip(b, hole);
  if (c === null) return [b];
  return boxes(
    box(b.x0, b.y0, b.x1, c.y0),
    box(b.x0, c.y1, b.x1, b.y1),
    box(b.x0, c.y0, c.x0, c.y1),
    box(c.x1, c.y0, b.x1, c.y1),
  );
}

/** The points of the union that lie at least `by` inside it, measured along both axes; may overlap at no place. */
export function erode(union: readonly Box[], by: number): Box[] {
  if (by === 0) return subtract(union, []);
  const lines = (low: (b: Box) => number, high: (b: Box) => number): number[] =>
    [
      ...new Set(
        union.flatMap((b) => [low(b), high(b), low(b) - by, low(b) + by, high(b) - by, high(b) + by]),
      ),
    ].sort((a, b) => a - b);
  const xs = lines(
    (b) => b.x0,
    (b) => b.x1,
  );
  const ys = lines(
    (b) => b.y0,
    (b) => b.y1,
  );
  const kept: Box[] = [];
  for (let i = 0; i + 1 < xs.length; i++) {
    for (let j = 0; j + 1 < ys.length; j++) {
      const cell = { x0: xs[i]!, y0: ys[j]!, x1: xs[i + 1]!, y1: ys[j + 1]! };
      const around = { x0: cell.x0 - by, y0: cell.y0 - by, x1: cell.x1 + by, y1: cell.y1 + by };
      if (subtract([around], union).length === 0) kept.push(cell);
    }
  }
  return kept;
}
