// What was found under one way to count the unknowns, remembered: it holds under every other that counts alike those that
// were asked for. Only for what asks by `isBest`, never for the room that a circuit takes or for intervals.

import { type Choice, isBest } from './assumption.ts';

interface Found<T> {
  readonly at: Choice['at'];
  /** By field whether it counted as best. */
  readonly asked: ReadonlyMap<string, boolean>;
  readonly value: T;
}

/** Grows with every way that differs, hence a class. */
export class ByChoice<T> {
  readonly #found: Found<T>[] = [];

  get(choice: Choice, make: (choice: Choice) => T): T {
    const known = this.#found.find(({ at, asked }) => at === choice.at && isCountedAlike(choice, asked));
    if (known) return known.value;
    const best = new Noted(choice.best);
    const value = make({ ...choice, best });
    this.#found.push({ at: choice.at, asked: best.asked, value });
    return value;
  }
}

const isCountedAlike = (choice: Choice, asked: ReadonlyMap<string, boolean>): boolean =>
  [...asked].every(([field, wasBest]) => isBest(choice, field) === wasBest);

/** A set that notes what it is asked for. At best nobody asks it: there every field counts as best. */
class Noted extends Set<string> {
  readonly asked = new Map<string, boolean>();
  readonly #fields: ReadonlySet<string>;

  constructor(fields: ReadonlySet<string>) {
    super(fields);
    this.#fields = fields;
  }

  override has(field: string): boolean {
    const has = this.#fields.has(field);
    this.asked.set(field, has);
    return has;
  }
}
