// A solved field ready to be asked at any point: potential, field strength, what is there. Millimetres, volts, V/mm.

import { inMm } from '#units/quantity.ts';

import { AIR } from '#field/mesh/body-map.ts';
import type { FieldState, SolvedField } from '#field/solve/solve-field.ts';
import { neighboursOf } from '#field/adapt/neighbours.ts';
import { smoothStrength, type CornerStrength } from './smooth-strength.ts';

export interface Probe {
  readonly volts: number;
  /** V/mm; 0 in metal. */
  readonly strength: number;
  /** Index of the body, `AIR` for none. */
  readonly body: number;
  readonly isMetal: boolean;
}

export class FieldView {
  readonly field: SolvedField;
  readonly state: FieldState;
  /** Field of each triangle, V/mm: two numbers each. */
  readonly vector: Float64Array;
  #across: Int32Array | null = null;
  #strongest: number | null = null;
  #smooth: CornerStrength | null = null;
  #lists: { readonly first: Int32Array; readonly listed: Int32Array } | null = null;
  readonly #columns: number;
  readonly #rows: number;
  readonly #step: number;

  constructor(field: SolvedField, state: FieldState) {
    [this.field, this.state] = [field, state];
    const { mesh, section } = field;
    this.vector = vectorsOf(field, state);
    const [width, height] = [
      inMm(section.frame.x1) - inMm(section.frame.x0),
      inMm(section.frame.y1) - inMm(section.frame.y0),
    ];
    this.#step = Math.sqrt((width * height) / (mesh.body.length / 2 + 1));
    this.#columns = Math.ceil(width / this.#step) + 1;
    this.#rows = Math.ceil(height / this.#step) + 1;
  }

  /** The triangle across each side, -1 where none is; worked out when it is first asked for. */
  get across(): Int32Array {
    const { triangles, x } = this.field.mesh;
    return (this.#across ??= neighboursOf(triangles, x.length));
  }

  /** Field strength at the three corners of a triangle, smooth within each body. */
  get cornerStrength(): CornerStrength {
    return (this.#smooth ??= smoothStrength(this.field.mesh, this.vector));
  }

  /** The triangle at a point, or -1. */
  triangleAt(x: number, y: number): number {
    const cell = this.#row(y) * this.#columns + this.#column(x);
    const { mesh } = this.field;
    const { first, listed } = (this.#lists ??= this.#sorted());
    for (let k = first[cell]!; k < first[cell + 1]!; k++) {
      const t = listed[k]!;
      const [u, v, w] = weights(mesh, t, x, y);
      if (u >= -1e-9 && v >= -1e-9 && w >= -1e-9) return t;
    }
    return -1;
  }

  voltsIn(triangle: number, x: number, y: number): number {
    const { mesh } = this.field;
    const { triangles } = mesh;
    const { potential } = this.state;
    const [u, v, w] = weights(mesh, triangle, x, y);
    const at = 3 * triangle;
    return (
      u * potential[triangles[at]!]! + v * potential[triangles[at + 1]!]! + w * potential[triangles[at + 2]!]!
    );
  }

  strengthIn(triangle: number): number {
    return Math.hypot(this.vector[2 * triangle]!, this.vector[2 * triangle + 1]!);
  }

  /** Of the triangles of air, the fifth strongest of a thousand: the very edge of a foil is stronger without end. */
  get strongestInAir(): number {
    return (this.#strongest ??= this.#amongStrongest());
  }

  #amongStrongest(): number {
    const all = Float64Array.from(this.field.mesh.body, (one, t) => (one === AIR ? this.strengthIn(t) : -1));
    const inAir = all.filter((strength) => strength >= 0).sort();
    return inAir[inAir.length - 1 - Math.floor(inAir.length / 200)] ?? 0;
  }

  at(x: number, y: number): Probe | null {
    const { map, mesh } = this.field;
    const code = map.at(x, y);
    const electrode = map.electrodeAt(x, y);
    if (electrode !== -1) {
      const body = code === AIR ? AIR : code >> 1;
      return { volts: this.state.electrodes[electrode]!, strength: 0, body, isMetal: true };
    }
    const triangle = this.triangleAt(x, y);
    if (triangle === -1) return null;
    const volts = this.voltsIn(triangle, x, y);
    return { volts, strength: this.strengthIn(triangle), body: mesh.body[triangle]!, isMetal: false };
  }

  #sorted() {
    const { mesh } = this.field;
    const first = new Int32Array(this.#columns * this.#rows + 1);
    const each = (put: (cell: number, t: number) => void): void => {
      for (let t = 0; t < mesh.body.length; t++) {
        const [x0, y0, x1, y1] = hullOf(mesh, t);
        for (let row = this.#row(y0); row <= this.#row(y1); row++) {
          for (let column = this.#column(x0); column <= this.#column(x1); column++) {
            put(row * this.#columns + column, t);
          }
        }
      }
    };
    each((cell) => (first[cell + 1]! += 1));
    for (let i = 0; i + 1 < first.length; i++) first[i + 1]! += first[i]!;
    const listed = new Int32Array(first.at(-1)!);
    const place = first.slice();
    each((cell, t) => (listed[place[cell]!++] = t));
    return { first, listed };
  }

  #column(x: number): number {
    const at = Math.floor((x - inMm(this.field.section.frame.x0)) / this.#step);
    return Math.min(this.#columns - 1, Math.max(0, at));
  }

  #row(y: number): number {
    const at = Math.floor((y - inMm(this.field.section.frame.y0)) / this.#step);
    return Math.min(this.#rows - 1, Math.max(0, at));
  }
}

type Mesh = SolvedField['mesh'];

/** Shares of the three corners at a point. */
export function weights(
  { x, y, triangles }: Mesh,
  t: number,
  px: number,
  py: number,
): readonly [number, number, number] {
  const [a, b, c] = [triangles[3 * t]!, triangles[3 * t + 1]!, triangles[3 * t + 2]!];
  const [ux, uy, vx, vy] = [x[b]! - x[a]!, y[b]! - y[a]!, x[c]! - x[a]!, y[c]! - y[a]!];
  const whole = ux * vy - uy * vx;
  const [dx, dy] = [px - x[a]!, py - y[a]!];
  const v = (dx * vy - dy * vx) / whole;
  const w = (ux * dy - uy * dx) / whole;
  return [1 - v - w, v, w];
}

function hullOf({ x, y, triangles }: Mesh, t: number): readonly [number, number, number, number] {
  const [a, b, c] = [triangles[3 * t]!, triangles[3 * t + 1]!, triangles[3 * t + 2]!];
  return [
    Math.min(x[a]!, x[b]!, x[c]!),
    Math.min(y[a]!, y[b]!, y[c]!),
    Math.max(x[a]!, x[b]!, x[c]!),
    Math.max(y[a]!, y[b]!, y[c]!),
  ];
}

/** Minus the slope of the potential. */
function vectorsOf({ mesh }: SolvedField, { potential }: FieldState): Float64Array {
  const { x, y, triangles } = mesh;
  const found = new Float64Array((2 * triangles.length) / 3);
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [triangles[t]!, triangles[t + 1]!, triangles[t + 2]!];
    const [ux, uy, vx, vy] = [x[b]! - x[a]!, y[b]! - y[a]!, x[c]! - x[a]!, y[c]! - y[a]!];
    const whole = ux * vy - uy * vx;
    const [u, v] = [potential[b]! - potential[a]!, potential[c]! - potential[a]!];
    found[(2 * t) / 3] = whole === 0 ? 0 : -(u * vy - v * uy) / whole;
    found[(2 * t) / 3 + 1] = whole === 0 ? 0 : -(v * ux - u * vx) / whole;
  }
  return found;
}
