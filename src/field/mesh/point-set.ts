// Points of a mesh while it grows, mm. Two that all but coincide are one: where a wire touches a ply they share a point.

import { inMm } from '#units/quantity.ts';

import type { BodyMap } from './body-map.ts';

export class PointSet {
  readonly x: number[] = [];
  readonly y: number[] = [];
  readonly circle: number[] = [];
  readonly electrode: number[] = [];
  /** Centre and radius of each circle. */
  readonly circles: number[] = [];
  readonly #map: BodyMap;
  readonly #near: number;
  readonly #cells = new Map<number, number>();

  /** Points nearer than about `near` are one. */
  constructor(map: BodyMap, near: number) {
    [this.#map, this.#near] = [map, near];
  }

  addCircle(x: number, y: number, radius: number): number {
    this.circles.push(x, y, radius);
    return this.circles.length / 3 - 1;
  }

  /** The number of the point, an old one where there is one already. */
  add(x: number, y: number, circle: number, electrode = -1): number {
    const old = this.#find(x, y);
    if (old !== undefined) return old;
    const id = this.x.length;
    this.x.push(x);
    this.y.push(y);
    this.circle.push(circle);
    this.electrode.push(electrode === -1 ? this.#map.electrodeAt(x, y) : electrode);
    this.#cells.set(this.#key(Math.floor(x / this.#near), Math.floor(y / this.#near)), id);
    return id;
  }

  inFrame(x: number, y: number): boolean {
    const { frame, shell } = this.#map.section;
    if (shell) {
      return Math.hypot(x - inMm(shell.x), y - inMm(shell.y)) <= inMm(shell.radius) * (1 + 1e-9);
    }
    return x >= inMm(frame.x0) && y >= inMm(frame.y0) && x <= inMm(frame.x1) && y <= inMm(frame.y1);
  }

  #find(x: number, y: number): number | undefined {
    const [column, row] = [Math.floor(x / this.#near - 0.5), Math.floor(y / this.#near - 0.5)];
    for (let i = 0; i < 4; i++) {
      const found = this.#cells.get(this.#key(column + (i & 1), row + (i >> 1)));
      if (found !== undefined) return found;
    }
    return undefined;
  }

  #key(column: number, row: number): number {
    return column * 0x4000000 + row;
  }
}
