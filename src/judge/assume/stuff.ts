// The solids of a build, numbered: the solver carries only their numbers.

import type { Solid } from '#books/questions/solid.ts';
import type { MaterialGroup } from '#units/terms.ts';
import type { StuffId } from '#solver/section/build.ts';

export const GROUPS: readonly MaterialGroup[] = ['I', 'II', 'IIIa', 'IIIb'];

export const rankOfGroup = (group: MaterialGroup): number => GROUPS.indexOf(group);

/** The solids of one way to count a build, in the order in which they were asked for. */
export type SolidsById = ReadonlyMap<StuffId, Solid>;

/**
 * Numbers of solids by what they are. One for all the ways to count a build gives what they have in common the same number, so
 * that what was found with it in one holds in the others. A buffer that grows, hence a class.
 */
export class StuffNumbers {
  readonly #known = new Map<string, StuffId>();

  of(told: string): StuffId {
    const known = this.#known.get(told) ?? this.#known.size;
    this.#known.set(told, known);
    return known;
  }

  clear(): void {
    this.#known.clear();
  }
}

/** Whether a book may ask for it; a field that is added later and not placed does not compile. */
const ASKED_FOR = {
  kind: true,
  alike: true,
  group: true,
  strength: true,
  stated: true,
  perMm: true,
  material: true,
  thickness: true,
  solid: true,
  bonded: true,
  layers: true,
  because: false,
} as const satisfies Record<keyof Solid, boolean>;

const TELLING = (Object.keys(ASKED_FOR) as (keyof Solid)[]).filter((field) => ASKED_FOR[field]);

/** The stuffs of a build; equal ones share a number. A buffer that grows, hence a class. */
export class Stuffs {
  readonly all = new Map<StuffId, Solid>();
  readonly #numbers: StuffNumbers;

  constructor(numbers: StuffNumbers) {
    this.#numbers = numbers;
  }

  /** `apart` keeps solids apart that are alike but not the same thing, such as the covers of two windings. */
  id(stuff: Solid, apart = ''): StuffId {
    const id = this.#numbers.of([...TELLING.map((field) => stuff[field]), apart].join());
    if (!this.all.has(id)) this.all.set(id, stuff);
    return id;
  }
}
