// How fine the mesh has to be where: a tree of squares, split until none that holds a point is larger than that point
// asks for, and none has a neighbour more than twice its size. Also finds the points near a place.

const MOST_DEPTH = 22;

export class SizeTree {
  readonly #x: number[];
  readonly #y: number[];
  readonly #half: number[];
  /** First of four children; 0 for a leaf. */
  readonly #child: number[];
  readonly #depth: number[];
  /** First point of a leaf, and the next one of each point; -1 ends a list. */
  #first = new Int32Array(0);
  #next: number[] = [];

  constructor(x: number, y: number, half: number) {
    [this.#x, this.#y, this.#half, this.#child, this.#depth] = [[x], [y], [half], [0], [0]];
  }

  /** Splits until the square at the point is at most `size` wide. */
  ask(x: number, y: number, size: number): void {
    let leaf = this.#leaf(x, y);
    while (2 * this.#half[leaf]! > size && this.#depth[leaf]! < MOST_DEPTH) {
      this.#split(leaf);
      leaf = this.#leaf(x, y, leaf);
    }
  }

  sizeAt(x: number, y: number): number {
    return 2 * this.#half[this.#leaf(x, y)]!;
  }

  /** No leaf beside one more than twice as small. */
  balance(): void {
    const waiting: number[] = this.#leaves();
    for (let i = 0; i < waiting.length; i++) {
      const leaf = waiting[i]!;
      if (this.#child[leaf] !== 0) continue;
      const reach = this.#half[leaf]! * 1.01;
      for (const [dx, dy] of SIDES) {
        const [x, y] = [this.#x[leaf]! + dx * reach, this.#y[leaf]! + dy * reach];
        if (!this.#holds(x, y)) continue;
        const beside = this.#leaf(x, y);
        if (this.#half[beside]! <= 2.5 * this.#half[leaf]!) continue;
        const first = this.#split(beside);
        waiting.push(first, first + 1, first + 2, first + 3, leaf);
      }
    }
  }

  /** Sorts points into the leaves, for `isFree`; nothing may be split any more. */
  hold(x: readonly number[], y: readonly number[]): void {
    this.#first = new Int32Array(this.#x.length).fill(-1);
    this.#next = [];
    x.forEach((at, i) => this.put(i, at, y[i]!));
  }

  /** Points are put in the order of their numbers. */
  put(point: number, x: number, y: number): void {
    const leaf = this.#leaf(x, y);
    this.#next[point] = this.#first[leaf]!;
    this.#first[leaf] = point;
  }

  /** No point nearer than `distance`, as far as the leaves around tell: `distance` is at most about their size. */
  isFree(x: number, y: number, distance: number, xs: readonly number[], ys: readonly number[]): boolean {
    for (const [dx, dy] of AROUND) {
      const [px, py] = [x + distance * dx, y + distance * dy];
      if (!this.#holds(px, py)) continue;
      for (let i = this.#first[this.#leaf(px, py)]!; i !== -1; i = this.#next[i]!) {
        if (Math.hypot(xs[i]! - x, ys[i]! - y) < distance) return false;
      }
    }
    return true;
  }

  /** Centres and sizes of the leaves that hold no point. */
  emptyLeaves(): readonly (readonly [x: number, y: number, size: number])[] {
    return this.#leaves()
      .filter((leaf) => this.#first[leaf] === -1)
      .map((leaf) => [this.#x[leaf]!, this.#y[leaf]!, 2 * this.#half[leaf]!] as const);
  }

  #leaves(): number[] {
    return this.#child.flatMap((child, i) => (child === 0 ? [i] : []));
  }

  #holds(x: number, y: number): boolean {
    return Math.abs(x - this.#x[0]!) <= this.#half[0]! && Math.abs(y - this.#y[0]!) <= this.#half[0]!;
  }

  #leaf(x: number, y: number, from = 0): number {
    let at = from;
    while (this.#child[at] !== 0) {
      at = this.#child[at]! + (x >= this.#x[at]! ? 1 : 0) + (y >= this.#y[at]! ? 2 : 0);
    }
    return at;
  }

  #split(leaf: number): number {
    const first = this.#x.length;
    const half = this.#half[leaf]! / 2;
    for (let i = 0; i < 4; i++) {
      this.#x.push(this.#x[leaf]! + (i % 2 === 1 ? half : -half));
      this.#y.push(this.#y[leaf]! + (i > 1 ? half : -half));
      this.#half.push(half);
      this.#child.push(0);
      this.#depth.push(this.#depth[leaf]! + 1);
    }
    this.#child[leaf] = first;
    return first;
  }
}

const SIDES = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
] as const;
const AROUND = [[0, 0], ...SIDES, [1, 1], [1, -1], [-1, 1], [-1, -1]] as const;
