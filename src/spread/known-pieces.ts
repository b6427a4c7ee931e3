// What judged pieces tell of others. A figure that no law holds for must be the same; of the others a piece that is no
// worse than one that meets, meets, and one that is no better than one that does not, does not.
// What seems not to matter is judged at its worse end first: if that meets, it meets at every other.

import type { Coordinate } from './coordinates.ts';

interface Piece {
  /** Of the lawful coordinates that matter, each turned so that more is better. */
  readonly good: readonly number[];
}

export class Known {
  readonly #coordinates: readonly Coordinate[];
  readonly #judge: (values: readonly number[]) => boolean;
  readonly #meets = new Map<string, Piece[]>();
  readonly #fails = new Map<string, Piece[]>();
  /** Lawful coordinates that change what is judged when they alone are bettered from the worst piece. */
  #matters: readonly number[] | null = null;

  constructor(coordinates: readonly Coordinate[], judge: (values: readonly number[]) => boolean) {
    this.#coordinates = coordinates;
    this.#judge = judge;
  }

  meets(values: readonly number[]): boolean {
    const matters = (this.#matters ??= this.#whatMatters());
    const key = this.#coordinates.map(({ isLaw }, i) => (isLaw ? '' : values[i])).join('|');
    const good = matters.map((i) => this.#good(i, values[i]!));
    if (this.#of(this.#meets, key).some((piece) => piece.good.every((least, i) => good[i]! >= least)))
      return true;
    if (this.#of(this.#fails, key).some((piece) => piece.good.every((most, i) => good[i]! <= most)))
      return false;
    const at = (end: 'worse' | 'better') =>
      values.map((value, i) =>
        this.#coordinates[i]!.isLaw && !matters.includes(i) ? this.#coordinates[i]![end] : value,
      );
    if (this.#judge(at('worse'))) {
      this.#of(this.#meets, key).push({ good });
      return true;
    }
    if (!this.#judge(at('better'))) {
      this.#of(this.#fails, key).push({ good });
      return false;
    }
    return this.#judge(values);
  }

  #of(pieces: Map<string, Piece[]>, key: string): Piece[] {
    const found = pieces.get(key) ?? [];
    pieces.set(key, found);
    return found;
  }

  #good(place: number, value: number): number {
    const { worse, better } = this.#coordinates[place]!;
    return better >= worse ? value : -value;
  }

  /** Spoiled one at a time from the best piece: what turns it matters; where nothing does alone, all are kept. */
  #whatMatters(): readonly number[] {
    const lawful = this.#coordinates.flatMap(({ isLaw }, i) => (isLaw ? [i] : []));
    const best = this.#coordinates.map(({ better }) => better);
    const worst = this.#coordinates.map(({ worse }) => worse);
    if (!this.#judge(best) || this.#judge(worst)) return [];
    const spoiled = lawful.filter(
      (place) => !this.#judge(best.map((value, i) => (i === place ? worst[i]! : value))),
    );
    const saved = lawful.filter((place) =>
      this.#judge(worst.map((value, i) => (i === place ? best[i]! : value))),
    );
    const found = [...new Set([...spoiled, ...saved])];
    return found.length > 0 ? found : this.#inHalves(lawful, best, worst);
  }

  /** Those without which the rest at best does not turn the worst piece: what is left after leaving out what may be. */
  #inHalves(lawful: readonly number[], best: readonly number[], worst: readonly number[]): readonly number[] {
    let kept = [...lawful];
    for (const place of lawful) {
      const without = kept.filter((each) => each !== place);
      const values = worst.map((value, i) => (without.includes(i) || !lawful.includes(i) ? best[i]! : value));
      if (this.#judge(values)) kept = without;
    }
    return kept;
  }
}
