// What every reading of a run is held against, so that those of two machines can be compared: a million operations of a
// binary heap, half of them putting in, half taking out.

/** Milliseconds, of five the middle one. Whole in itself, so that a page may run it too. */
export function yardstick(operations = 1_000_000): number {
  const heap = new Float64Array(operations / 2);
  const once = (): number => {
    const before = performance.now();
    let seed = 1;
    let size = 0;
    for (; size < heap.length; size++) {
      seed = (seed * 48_271) % 2_147_483_647;
      let at = size;
      for (let up = (at - 1) >> 1; at > 0 && heap[up]! > seed; up = (at - 1) >> 1) {
        heap[at] = heap[up]!;
        at = up;
      }
      heap[at] = seed;
    }
    while (size > 0) {
      const last = heap[--size]!;
      let at = 0;
      for (let down = 1; down < size; down = 2 * at + 1) {
        if (down + 1 < size && heap[down + 1]! < heap[down]!) down++;
        if (heap[down]! >= last) break;
        heap[at] = heap[down]!;
        at = down;
      }
      heap[at] = last;
    }
    return performance.now() - before;
  };
  return [once(), once(), once(), once(), once()].sort((a, b) => a - b)[2]!;
}

/** A reading with what it is of the yardstick. */
export const held = (ms: number, digits: number, stick: number): string =>
  `${ms.toFixed(digits)} ms, ${(ms / stick).toFixed(2)} yardsticks`;
