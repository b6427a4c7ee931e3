// Which body lies at a point, by a grid of buckets: millimetres in, index of the body or `AIR` out.
// Closed sets: a point on the edge of metal is metal.

import { inMm } from '#units/quantity.ts';

import type { Body, FieldSection } from '#field/field-section.ts';

/** No body: the background. */
export const AIR = -1;
/** Two points closer than this, mm, are one for the question whether metal holds them. */
const ON = 1e-9;

export class BodyMap {
  readonly section: FieldSection;
  readonly #shapes: Float64Array;
  readonly #buckets: Int32Array[];
  readonly #columns: number;
  readonly #rows: number;
  readonly #x0: number;
  readonly #y0: number;
  readonly #step: number;

  constructor(section: FieldSection) {
    this.section = section;
    const { frame, bodies } = section;
    [this.#x0, this.#y0] = [inMm(frame.x0), inMm(frame.y0)];
    const [width, height] = [inMm(frame.x1) - this.#x0, inMm(frame.y1) - this.#y0];
    this.#step = Math.max(Math.sqrt((width * height) / (2 * bodies.length + 16)), 1e-6);
    this.#columns = Math.ceil(width / this.#step) + 1;
    this.#rows = Math.ceil(height / this.#step) + 1;
    this.#shapes = Float64Array.from(bodies.flatMap(shapeOf));
    const lists: number[][] = Array.from({ length: this.#columns * this.#rows }, () => []);
    bodies.forEach((body, i) => this.#spread(body, i, lists));
    this.#buckets = lists.map((list) => Int32Array.from(list));
  }

  /** The body at a point and whether its metal is there: `2 x body + 1` for metal, `2 x body` for its solid, or `AIR`. */
  at(x: number, y: number): number {
    const { bodies } = this.section;
    let found = AIR;
    let rank = 0;
    for (const i of this.#bucket(x, y)) {
      const body = bodies[i]!;
      const here = this.#rank(body, i, x, y);
      if (here >= rank && here > 0) {
        rank = here;
        found = 2 * i + (here > 2 ? 1 : 0);
      }
    }
    return found;
  }

  /** The electrode whose metal holds the point, or -1. */
  electrodeAt(x: number, y: number): number {
    const { bodies, shell } = this.section;
    if (shell && Math.hypot(x - inMm(shell.x), y - inMm(shell.y)) >= inMm(shell.radius) - ON) {
      return shell.electrode;
    }
    const found = this.at(x, y);
    return found === AIR || found % 2 === 0 ? -1 : (bodies[found >> 1]!.electrode ?? -1);
  }

  /** Bodies that may reach into a box, mm. */
  near(x0: number, y0: number, x1: number, y1: number): ReadonlySet<number> {
    const found = new Set<number>();
    for (let row = this.#row(y0); row <= this.#row(y1); row++) {
      for (let column = this.#column(x0); column <= this.#column(x1); column++) {
        for (const i of this.#buckets[row * this.#columns + column]!) found.add(i);
      }
    }
    return found;
  }

  /** 0 outside; 1 in a solid box, 2 in a cover, 3 in a metal box, 4 in the metal of a disc. */
  #rank(body: Body, i: number, x: number, y: number): number {
    const s = this.#shapes;
    const k = 4 * i;
    if (body.shape === 'disc') {
      const apart = Math.hypot(x - s[k]!, y - s[k + 1]!);
      return apart <= s[k + 2]! + ON ? 4 : apart <= s[k + 3]! ? 2 : 0;
    }
    const inside = x >= s[k]! - ON && y >= s[k + 1]! - ON && x <= s[k + 2]! + ON && y <= s[k + 3]! + ON;
    return inside ? (body.electrode === null ? 1 : 3) : 0;
  }

  #bucket(x: number, y: number): Int32Array {
    return this.#buckets[this.#row(y) * this.#columns + this.#column(x)]!;
  }

  #column(x: number): number {
    return Math.min(this.#columns - 1, Math.max(0, Math.floor((x - this.#x0) / this.#step)));
  }

  #row(y: number): number {
    return Math.min(this.#rows - 1, Math.max(0, Math.floor((y - this.#y0) / this.#step)));
  }

  #spread(body: Body, i: number, lists: number[][]): void {
    const [a, b, c, d] = shapeOf(body) as [number, number, number, number];
    const box = body.shape === 'disc' ? ([a - d, b - d, a + d, b + d] as const) : ([a, b, c, d] as const);
    for (let row = this.#row(box[1] - ON); row <= this.#row(box[3] + ON); row++) {
      for (let column = this.#column(box[0] - ON); column <= this.#column(box[2] + ON); column++) {
        lists[row * this.#columns + column]!.push(i);
      }
    }
  }
}

/** Disc: centre and the two radii; box: its corners. */
function shapeOf(body: Body): readonly number[] {
  return body.shape === 'disc'
    ? [inMm(body.x), inMm(body.y), inMm(body.metal) / 2, inMm(body.overall) / 2]
    : [inMm(body.x0), inMm(body.y0), inMm(body.x1), inMm(body.y1)];
}
