// One mesh made ready to solve: points held by electrodes are taken out of the matrix, the rest gets its multigrid.
// Potentials go in by electrode and come out by point; charges come out by electrode, over the permittivity of vacuum.

import type { Nm } from '#units/quantity.ts';

import { conjugate } from '#field/linear/conjugate.ts';
import { Multigrid } from '#field/linear/multigrid.ts';
import { times, type Sparse } from '#field/linear/sparse.ts';
import type { Mesh } from '#field/mesh/mesh.ts';
import { stiffnessOf } from './stiffness.ts';

/** Of the answer's norm in energy: far below what the mesh is off by. */
const TOLERANCE = 1e-5;

export class System {
  readonly mesh: Mesh;
  readonly #whole: Sparse;
  readonly #free: Sparse;
  /** Point of each unknown. */
  readonly #point: Int32Array;
  readonly #multigrid: Multigrid;

  constructor(mesh: Mesh, axis: Nm | null) {
    this.mesh = mesh;
    this.#whole = stiffnessOf(mesh, axis);
    const { free, point } = withoutHeld(this.#whole, mesh.electrode);
    [this.#free, this.#point] = [free, point];
    this.#multigrid = new Multigrid(free);
  }

  /** Potential of every point; `near` is a guess that saves steps. */
  solve(potentials: Float64Array, near: Float64Array | null): Float64Array {
    const { electrode } = this.mesh;
    const found = new Float64Array(electrode.length);
    electrode.forEach((one, i) => (found[i] = one === -1 ? 0 : potentials[one]!));
    const pull = new Float64Array(found.length);
    times(this.#whole, found, pull);
    const point = this.#point;
    const [b, x] = [new Float64Array(point.length), new Float64Array(point.length)];
    point.forEach((at, i) => {
      b[i] = -pull[at]!;
      x[i] = near === null ? 0 : near[at]!;
    });
    conjugate(this.#free, this.#multigrid, b, x, TOLERANCE);
    point.forEach((at, i) => (found[at] = x[i]!));
    return found;
  }

  /** Charge of every point: 0 where the field is solved, that of the metal elsewhere. */
  charges(potential: Float64Array): Float64Array {
    const found = new Float64Array(potential.length);
    times(this.#whole, potential, found);
    return found;
  }

  /** Charge of every electrode. */
  electrodeCharges(potential: Float64Array, electrodes: number): Float64Array {
    const found = new Float64Array(electrodes);
    const charge = this.charges(potential);
    this.mesh.electrode.forEach((one, i) => {
      if (one !== -1) found[one]! += charge[i]!;
    });
    return found;
  }
}

/** Points that belong to no triangle have no equation either. */
function withoutHeld({ rows, start, column, value }: Sparse, electrode: Int32Array) {
  const number = new Int32Array(rows).fill(-1);
  const point: number[] = [];
  for (let i = 0; i < rows; i++) {
    if (electrode[i] !== -1 || start[i + 1]! - start[i]! < 2) continue;
    number[i] = point.length;
    point.push(i);
  }
  const begin = new Int32Array(point.length + 1);
  const [to, held] = [new Int32Array(column.length), new Float64Array(column.length)];
  let used = 0;
  point.forEach((i, row) => {
    for (let k = start[i]!; k < start[i + 1]!; k++) {
      const at = number[column[k]!]!;
      if (at === -1) continue;
      to[used] = at;
      held[used] = value[k]!;
      used += 1;
    }
    begin[row + 1] = used;
  });
  const free: Sparse = {
    rows: point.length,
    columns: point.length,
    start: begin,
    column: to.slice(0, used),
    value: held.slice(0, used),
  };
  return { free, point: Int32Array.from(point) };
}
