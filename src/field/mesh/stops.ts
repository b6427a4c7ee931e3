// Which points lie on an upright or level edge: there the edge has to be divided. Millimetres.

import type { PointSet } from './point-set.ts';

/** Ends of an edge, and how thin the body is that it bounds. */
export type Edge = readonly [x0: number, y0: number, x1: number, y1: number, thin: number];

/** Points nearer to a line than this lie on it, mm. */
const ON = 1e-7;

export class Stops {
  readonly #points: PointSet;
  readonly #byX: Int32Array;
  readonly #byY: Int32Array;

  constructor(points: PointSet) {
    this.#points = points;
    const ids = Int32Array.from(points.x.keys());
    this.#byX = ids.slice().sort((a, b) => points.x[a]! - points.x[b]!);
    this.#byY = ids.slice().sort((a, b) => points.y[a]! - points.y[b]!);
  }

  /** Where on the edge, 0 to 1 and rising, without its ends. */
  on([x0, y0, x1, y1]: Edge): readonly number[] {
    const level = y0 === y1;
    const [order, across, along] = level
      ? [this.#byY, this.#points.y, this.#points.x]
      : [this.#byX, this.#points.x, this.#points.y];
    const [line, from, length] = level ? [y0, x0, x1 - x0] : [x0, y0, y1 - y0];
    const found: number[] = [];
    for (let i = firstAt(order, across, line - ON); i < order.length; i++) {
      const id = order[i]!;
      if (across[id]! > line + ON) break;
      const at = (along[id]! - from) / length;
      if (at > 1e-9 && at < 1 - 1e-9) found.push(at);
    }
    return found.sort((a, b) => a - b);
  }
}

function firstAt(order: Int32Array, value: readonly number[], least: number): number {
  let [low, high] = [0, order.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (value[order[middle]!]! < least) low = middle + 1;
    else high = middle;
  }
  return low;
}
