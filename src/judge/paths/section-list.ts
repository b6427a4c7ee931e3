// The sections of one build, each distinct geometry once, the plain one first: laid out only as far as one looks. A class,
// since it keeps what it has laid out.

import type { Section } from '#solver/section/section.ts';
import type { LayOut } from '#solver/placing/lay-out.ts';

/** A section with the number of its geometry: equal numbers have equal paths. */
export type KeyedSection = Section & { readonly geometry: number };

export class SectionList implements Iterable<KeyedSection> {
  readonly #made: KeyedSection[] = [];
  readonly #seen = new Set<number>();
  readonly #rest: Iterator<Section>;
  readonly #layOut: LayOut;
  readonly #geometryOf: (section: Section) => number;

  constructor(layOut: LayOut, geometryOf: (section: Section) => number) {
    this.#layOut = layOut;
    this.#rest = layOut.sections();
    this.#geometryOf = geometryOf;
  }

  *[Symbol.iterator](): Generator<KeyedSection, void, void> {
    for (let i = 0; this.#made[i] !== undefined || this.#makeNext(); i++) yield this.#made[i]!;
  }

  get all(): readonly KeyedSection[] {
    return [...this];
  }

  /** Those with just these leads first, as far as there are such, then all. */
  *from(leads: Iterable<readonly string[]>): Generator<KeyedSection, void, void> {
    for (const names of leads)
      for (const section of this.#layOut.sectionsWith(names)) yield this.#keyed(section);
    yield* this;
  }

  /** False where there is none left. */
  #makeNext(): boolean {
    for (let next = this.#rest.next(); next.done !== true; next = this.#rest.next()) {
      const section = this.#keyed(next.value);
      if (this.#seen.has(section.geometry)) continue;
      this.#seen.add(section.geometry);
      this.#made.push(section);
      return true;
    }
    return false;
  }

  #keyed(section: Section): KeyedSection {
    // its parts have served to tell it
    return { ...section, parts: undefined, geometry: this.#geometryOf(section) };
  }
}
