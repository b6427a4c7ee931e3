// What was solved before on one mesh, and how much of a new set of potentials it is made of: the field is linear in them,
// so that most of what is asked later is already there but for a remainder, and the solver starts close by.

export class SolvedBefore {
  /** Potentials by electrode, at right angles to each other and of length one; the field of each stands beside it. */
  readonly #potentials: Float64Array[] = [];
  readonly #fields: Float64Array[] = [];
  readonly #points: number;

  constructor(points: number) {
    this.#points = points;
  }

  /** The field at every point as far as it is known: that of the nearest potentials that were solved before. */
  near(potentials: Float64Array): Float64Array {
    const field = new Float64Array(this.#points);
    this.#potentials.forEach((known, k) => addTimes(field, this.#fields[k]!, dot(known, potentials)));
    return field;
  }

  keep(potentials: Float64Array, field: Float64Array): void {
    const [rest, own] = [potentials.slice(), field.slice()];
    this.#potentials.forEach((known, k) => {
      const share = dot(known, rest);
      addTimes(rest, known, -share);
      addTimes(own, this.#fields[k]!, -share);
    });
    const size = Math.sqrt(dot(rest, rest));
    // what is all but there already would bring nothing but what its solution is off by
    if (!(size > LEAST_NEW * Math.sqrt(dot(potentials, potentials)))) return;
    this.#potentials.push(rest.map((value) => value / size));
    this.#fields.push(own.map((value) => value / size));
  }
}

const LEAST_NEW = 1e-3;

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}

function addTimes(into: Float64Array, what: Float64Array, factor: number): void {
  if (factor === 0) return;
  for (let i = 0; i < into.length; i++) into[i]! += factor * what[i]!;
}
