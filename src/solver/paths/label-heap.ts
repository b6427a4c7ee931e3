// The labels of one search and a binary heap over them: shortest first, then fewest picked up, then first made.
// A class, since it is a buffer; labels keep their number after they have left the heap.

const FIRST_SIZE = 4096;

export class LabelHeap {
  node = new Int32Array(FIRST_SIZE);
  length = new Float64Array(FIRST_SIZE);
  /** How deep it has come through compound. */
  depth = new Float64Array(FIRST_SIZE);
  /** As packed in code.ts. */
  code = new Int32Array(FIRST_SIZE);
  /** Label it came from, -1 at the source. */
  previous = new Int32Array(FIRST_SIZE);
  /** Edge it came along, -1 at the source. */
  edge = new Int32Array(FIRST_SIZE);
  /** The label made before it at the same node, -1 none. */
  madeBefore = new Int32Array(FIRST_SIZE);
  /** For every node the last label made there, which knows the one before; -1 none. */
  lastAt = new Int32Array(FIRST_SIZE);
  #count = 0;
  #heap = new Int32Array(FIRST_SIZE);
  /** Lengths and codes of the labels in the heap, place by place. */
  #lengths = new Float64Array(FIRST_SIZE);
  #codes = new Int32Array(FIRST_SIZE);
  #size = 0;

  /** `nodes`: as many may have labels. */
  clear(nodes: number): void {
    this.#count = 0;
    this.#size = 0;
    if (nodes > this.lastAt.length) this.lastAt = new Int32Array(2 * nodes);
    this.lastAt.fill(-1, 0, nodes);
  }

  /** Returns the label's number. */
  push(node: number, length: number, code: number, previous: number, edge: number, depth = 0): number {
    const label = this.#count++;
    if (label >= this.node.length) this.#grow();
    this.node[label] = node;
    this.length[label] = length;
    this.code[label] = code;
    this.depth[label] = depth;
    this.previous[label] = previous;
    this.edge[label] = edge;
    const heap = this.#heap;
    const lengths = this.#lengths;
    const codes = this.#codes;
    let at = this.#size++;
    while (at > 0) {
      const parent = (at - 1) >> 1;
      const over = lengths[parent]!;
      // labels are numbered as they are made: of equal ones the one above stays above
      if (over < length || (over === length && codes[parent]! <= code)) break;
      heap[at] = heap[parent]!;
      lengths[at] = over;
      codes[at] = codes[parent]!;
      at = parent;
    }
    heap[at] = label;
    lengths[at] = length;
    codes[at] = code;
    return label;
  }

  /** The next label, -1 when none is left. */
  pop(): number {
    if (this.#size === 0) return -1;
    const heap = this.#heap;
    const lengths = this.#lengths;
    const codes = this.#codes;
    const top = heap[0]!;
    const size = --this.#size;
    if (size === 0) return top;
    const label = heap[size]!;
    const length = lengths[size]!;
    const code = codes[size]!;
    let at = 0;
    for (;;) {
      let child = 2 * at + 1;
      if (child >= size) break;
      let least = lengths[child]!;
      const next = child + 1;
      if (next < size) {
        const other = lengths[next]!;
        if (
          other < least ||
          (other === least && isBefore(codes[next]!, heap[next]!, codes[child]!, heap[child]!))
        ) {
          child = next;
          least = other;
        }
      }
      if (length < least || (length === least && isBefore(code, label, codes[child]!, heap[child]!))) break;
      heap[at] = heap[child]!;
      lengths[at] = least;
      codes[at] = codes[child]!;
      at = child;
    }
    heap[at] = label;
    lengths[at] = length;
    codes[at] = code;
    return top;
  }

  #grow(): void {
    const size = 2 * this.node.length;
    const larger = <T extends Int32Array | Float64Array>(old: T, made: T): T => {
      made.set(old);
      return made;
    };
    this.node = larger(this.node, new Int32Array(size));
    this.length = larger(this.length, new Float64Array(size));
    this.depth = larger(this.depth, new Float64Array(size));
    this.code = larger(this.code, new Int32Array(size));
    this.previous = larger(this.previous, new Int32Array(size));
    this.edge = larger(this.edge, new Int32Array(size));
    this.madeBefore = larger(this.madeBefore, new Int32Array(size));
    this.#heap = larger(this.#heap, new Int32Array(size));
    this.#lengths = larger(this.#lengths, new Float64Array(size));
    this.#codes = larger(this.#codes, new Int32Array(size));
  }
}

/** Of two labels of one length: fewest picked up, then first made. */
const isBefore = (code: number, label: number, than: number, other: number): boolean =>
  code !== than ? code < than : label < other;
