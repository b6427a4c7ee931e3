// A smallest-first queue, for the oracle's searches.

export class Heap<T> {
  readonly #items: T[] = [];
  readonly #rank: (item: T) => number;

  constructor(rank: (item: T) => number) {
    this.#rank = rank;
  }

  push(item: T): void {
    let at = this.#items.push(item) - 1;
    while (at > 0) {
      const parent = (at - 1) >> 1;
      if (this.#of(parent) <= this.#of(at)) return;
      this.#swap(parent, at);
      at = parent;
    }
  }

  pop(): T | undefined {
    const first = this.#items[0];
    const last = this.#items.pop();
    if (this.#items.length === 0 || last === undefined) return first;
    this.#items[0] = last;
    for (let at = 0; ;) {
      let least = at;
      for (const child of [2 * at + 1, 2 * at + 2]) {
        if (child < this.#items.length && this.#of(child) < this.#of(least)) least = child;
      }
      if (least === at) return first;
      this.#swap(at, least);
      at = least;
    }
  }

  #of(at: number): number {
    return this.#rank(this.#items[at]!);
  }

  #swap(a: number, b: number): void {
    const kept = this.#items[a]!;
    this.#items[a] = this.#items[b]!;
    this.#items[b] = kept;
  }
}
