// The sections of one build, each distinct geometry once, the plain one first: laid out only as far as one looks. A class,
// since it keeps what it has laid out.

import { type LayOut, sectionsIn, sectionsWith } from '#solver/placing/lay-out.ts';
import type { Build } from '#solver/section/build.ts';
import type { Section } from '#solver/section/section.ts';

/** A section with the number of its geometry: equal numbers have equal paths. */
export type KeyedSection = Section & { readonly geometry: number };

export class SectionList implements Iterable<KeyedSection> {
  readonly #made: KeyedSection[] = [];
  readonly #seen: Set<number>;
  readonly #rest: Iterator<Section>;
  readonly #build: Build;
  readonly #layOut: LayOut;
  readonly #keyed: (section: Section) => KeyedSection;

  /** `known`: geometries that are left out. */
  constructor(
    build: Build,
    layOut: LayOut,
    keyed: (section: Section) => KeyedSection,
    known: Iterable<number> = [],
  ) {
    this.#build = build;
    this.#layOut = layOut;
    this.#rest = sectionsIn(build, layOut);
    this.#keyed = keyed;
    this.#seen = new Set(known);
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
      for (const section of sectionsWith(names, this.#build, this.#layOut)) yield this.#keyed(section);
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
}
