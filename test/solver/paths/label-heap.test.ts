// The order in which labels leave the heap, against sorting them.

import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LabelHeap } from '#solver/paths/label-heap.ts';

const labels = fc.array(fc.tuple(fc.integer({ min: 0, max: 9 }), fc.integer({ min: 0, max: 3 })), {
  maxLength: 60,
});

function popped(heap: LabelHeap): readonly number[] {
  const out: number[] = [];
  for (let label = heap.pop(); label >= 0; label = heap.pop()) out.push(label);
  return out;
}

describe('label heap', () => {
  it('should give the shortest first, then the one that picked up least, then the first made', () => {
    const heap = new LabelHeap();
    fc.assert(
      fc.property(labels, (made) => {
        heap.clear(16);
        made.forEach(([length, code], node) => heap.push(node, length, code, -1, -1));
        const sorted = made
          .map(([length, code], label) => ({ length, code, label }))
          .sort((a, b) => a.length - b.length || a.code - b.code || a.label - b.label);
        expect(popped(heap)).toEqual(sorted.map(({ label }) => label));
      }),
    );
  });

  it('should keep every label when it grows', () => {
    const heap = new LabelHeap();
    const count = 10_000;
    for (let i = 0; i < count; i++) heap.push(i, count - i, 0, i - 1, i);
    expect(popped(heap).length).toBe(count);
    expect([heap.node[9_999], heap.length[9_999], heap.previous[9_999], heap.edge[9_999]]).toEqual([
      9_999, 1, 9_998, 9_999,
    ]);
  });

  it('should give a label its number again after it was cleared', () => {
    const heap = new LabelHeap();
    heap.push(7, 1, 0, -1, -1);
    heap.clear(16);
    expect(heap.pop()).toBe(-1);
    expect(heap.push(8, 1, 0, -1, -1)).toBe(0);
  });
});
