// What the pairs of one build ask, over the ways to count its unknowns: most of them change no voltage, so that it is worked
// out once.

import type { Book } from '#books/questions/book.ts';
import type { Choice } from '#judge/assume/assumption.ts';
import { ByChoice } from '#judge/assume/by-choice.ts';
import { voltagesAs } from '#judge/assume/counted-stress.ts';
import type { Design } from '#model/design.ts';
import type { PairStressResult } from '#stress/pair/pair-stress.ts';
import { type AskedPair, askPair } from './asked-pair.ts';

/** Of one book. Remembers by design, hence a class. */
export class AskedPairs {
  readonly #book: Book;
  readonly #asking = new WeakMap<Design, Map<string, Asking>>();

  constructor(book: Book) {
    this.#book = book;
  }

  /** Of these pairs, in their order; null: of all. A demoted circuit counts as mains. */
  of(
    design: Design,
    choice: Choice,
    demoted: ReadonlySet<string>,
    only: readonly number[] | null,
  ): readonly AskedPair[] {
    const asking = this.#askingOf(design, demoted);
    const pairs = only ?? asking.plain(choice).map((_, i) => i);
    return pairs.map((i) => asking.pair(this.#book, choice, i));
  }

  #askingOf(design: Design, demoted: ReadonlySet<string>): Asking {
    const known = this.#asking.get(design) ?? new Map<string, Asking>();
    this.#asking.set(design, known);
    const name = JSON.stringify([...demoted]);
    const asking = known.get(name) ?? new Asking(design, demoted);
    known.set(name, asking);
    return asking;
  }
}

class Asking {
  readonly #design: Design;
  readonly #asMains: Design;
  readonly #demoted: ReadonlySet<string>;
  readonly #plain = new ByChoice<readonly PairStressResult[]>();
  readonly #raised = new ByChoice<readonly PairStressResult[]>();
  readonly #pairs: ByChoice<AskedPair>[] = [];

  constructor(design: Design, demoted: ReadonlySet<string>) {
    this.#design = design;
    this.#demoted = demoted;
    this.#asMains = {
      ...design,
      circuits: design.circuits.map((circuit) =>
        demoted.has(circuit.id) ? { ...circuit, role: 'mains' } : circuit,
      ),
    };
  }

  plain(choice: Choice): readonly PairStressResult[] {
    return this.#plain.get(choice, (counted) => voltagesAs(this.#design, counted));
  }

  pair(book: Book, choice: Choice, i: number): AskedPair {
    const known = (this.#pairs[i] ??= new ByChoice());
    return known.get(choice, (counted) => {
      const own = this.plain(counted)[i]!;
      const raised = this.#demoted.size === 0 ? own : this.#raisedTo(counted)[i]!;
      return askPair(book, this.#design, this.#asMains, this.#demoted, counted, own, raised);
    });
  }

  #raisedTo(choice: Choice): readonly PairStressResult[] {
    return this.#raised.get(choice, (counted) => voltagesAs(this.#asMains, counted));
  }
}
