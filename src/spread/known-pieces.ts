// What judged pieces tell of others. A figure that no law holds for must be the same; of the others a piece that is no
// worse than one that meets, meets, and one that is no better than one that does not, does not. So that a judged piece tells
// of many, what seems not to matter is judged at the end that tells more. What judges is a generator: a breath after each piece.

import type { Coordinate } from './coordinates.ts';
import type { Measure } from './sleeve-reach.ts';

/** After so many pieces that these two ends do not decide, every figure is taken to matter. */
const MOST_UNDECIDED = 3;

type Values = readonly number[];
type Steps<T> = Generator<void, T, void>;

export class Known {
  readonly #coordinates: readonly Coordinate[];
  /** More of each is never worse, at the same widths. */
  readonly #reaches: readonly Measure[];
  /** Places of those that a law holds for. */
  readonly #lawful: readonly number[];
  readonly #judge: (values: Values) => boolean;
  readonly #meets = new Map<string, Values[]>();
  readonly #fails = new Map<string, Values[]>();
  #undecided = 0;
  /** Lawful coordinates that change what is judged when they alone are bettered from the worst piece. */
  #matters: readonly number[] | null = null;

  constructor(
    coordinates: readonly Coordinate[],
    reaches: readonly Measure[],
    judge: (values: Values) => boolean,
  ) {
    this.#coordinates = coordinates;
    this.#reaches = reaches;
    // margins last: how far they may go hangs on the sleeves
    const lawful = coordinates.flatMap(({ isLaw }, i) => (isLaw ? [i] : []));
    const isTense = (place: number): number => Number(coordinates[place]!.isTense);
    this.#lawful = lawful.sort((a, b) => isTense(a) - isTense(b));
    this.#judge = judge;
  }

  *meets(values: Values): Steps<boolean> {
    if (this.#of(this.#meets, values).some((known) => this.#isNoWorse(values, known))) return true;
    if (this.#of(this.#fails, values).some((known) => this.#isNoWorse(known, values))) return false;
    const matters = (this.#matters ??= yield* this.#whatMatters());
    const spoiled = this.#with(values, 'worse', (place) => !matters.includes(place));
    if (yield* this.#judged(spoiled)) {
      this.note(spoiled, true);
      return true;
    }
    const isAll = matters.length === this.#lawful.length;
    const bettered = this.#with(values, 'better', (place) => !matters.includes(place));
    if (isAll || !(yield* this.#judged(bettered))) {
      this.note(bettered, false);
      return false;
    }
    // what seemed not to matter alone does together
    this.#undecided += 1;
    if (this.#undecided >= MOST_UNDECIDED) this.#matters = this.#lawful;
    const meets = yield* this.#judged(values);
    this.note(values, meets);
    return meets;
  }

  *#judged(values: Values): Steps<boolean> {
    const meets = this.#judge(values);
    yield;
    return meets;
  }

  /** A piece that was judged as it is. */
  note(values: Values, meets: boolean): void {
    this.#of(meets ? this.#meets : this.#fails, values).push(values);
  }

  /** What may be moved to this end and leaves the piece no worse, or no better, than it was. */
  #with(values: Values, end: 'worse' | 'better', isMoved: (place: number) => boolean): Values {
    const moved = [...values];
    for (const place of this.#lawful) {
      if (!isMoved(place)) continue;
      moved[place] = this.#coordinates[place]![end];
      const [good, bad] = end === 'better' ? [moved, values] : [values, moved];
      if (!this.#reachNoWorse(good, bad)) moved[place] = values[place]!;
    }
    return moved;
  }

  #reachNoWorse(a: Values, b: Values): boolean {
    return this.#reaches.every((reach) => reach(a) >= reach(b) - 1e-9);
  }

  /** Of two that differ only in what a law holds for. */
  #isNoWorse(a: Values, b: Values): boolean {
    const isEach = this.#lawful.every((place) => {
      const { worse, better } = this.#coordinates[place]!;
      return better >= worse ? a[place]! >= b[place]! : a[place]! <= b[place]!;
    });
    return isEach && this.#reachNoWorse(a, b);
  }

  /** Those of the same figures that no law holds for. */
  #of(pieces: Map<string, Values[]>, values: Values): Values[] {
    const key = this.#coordinates.map(({ isLaw }, i) => (isLaw ? '' : values[i])).join('|');
    const found = pieces.get(key) ?? [];
    pieces.set(key, found);
    return found;
  }

  /** Spoiled one at a time from the best piece: what turns it matters; where nothing does alone, all are kept. */
  *#whatMatters(): Steps<readonly number[]> {
    const middle = this.#coordinates.map(({ worse, better, isLaw }) =>
      isLaw ? (worse + better) / 2 : better,
    );
    const [best, worst] = (['better', 'worse'] as const).map((end) =>
      this.#with(middle, end, () => true),
    ) as [Values, Values];
    if (!(yield* this.#judged(best)) || (yield* this.#judged(worst))) return [];
    const found: number[] = [];
    for (const place of this.#lawful) {
      const turned = (from: Values, to: Values): Values =>
        from.map((value, i) => (i === place ? to[i]! : value));
      if (!(yield* this.#judged(turned(best, worst))) || (yield* this.#judged(turned(worst, best))))
        found.push(place);
    }
    return found.length > 0 ? found : yield* this.#inHalves(best, worst);
  }

  /** Those without which the rest at best does not turn the worst piece: what is left after leaving out what may be. */
  *#inHalves(best: Values, worst: Values): Steps<readonly number[]> {
    let kept = this.#lawful;
    for (const place of this.#lawful) {
      const without = kept.filter((each) => each !== place);
      const values = worst.map((value, i) =>
        without.includes(i) || !this.#lawful.includes(i) ? best[i]! : value,
      );
      if (yield* this.#judged(values)) kept = without;
    }
    return kept;
  }
}
