import { describe, expect, it } from 'vitest';
import { COARSE, FINE, otherEdges, snapped, stepped } from '#ui/canvas/handles/snap.ts';
import { mm, nm } from '#units/quantity.ts';
import { handleOf, judgedDemo, sectionOf } from '#test/ui/canvas/judged-demo.ts';

const judged = judgedDemo('greenhouse-timer');
const left = handleOf(judged, 'layers[2].margins.left.width');
const right = handleOf(judged, 'layers[2].margins.right.width');
const to = { step: COARSE, edges: [mm(3)], reach: mm(0.04) };

describe('snapped', () => {
  it('should settle on the grid of the value', () => {
    expect(snapped(left, mm(2.013), to).value).toBe(mm(2));
    expect(snapped(left, mm(2.03), to).value).toBe(mm(2.05));
    expect(snapped(left, mm(2.013), { ...to, step: FINE }).value).toBe(mm(2.01));
  });

  it('should count from the flange that the edge belongs to', () => {
    expect(snapped(right, mm(12 - 2.013), to).value).toBe(mm(2));
    expect(snapped(right, mm(12 - 2.013), to).position).toBe(mm(10));
  });

  it('should line up with another edge that is close, also off the grid', () => {
    const off = { ...to, edges: [mm(2.983)] };
    expect(snapped(left, mm(3.01), off)).toEqual({
      value: mm(2.983),
      position: mm(2.983),
      guides: [mm(2.983)],
    });
  });

  it('should not line up where nothing shall attract', () => {
    const off = { ...to, edges: [mm(2.983)], reach: 0 };
    expect(snapped(left, mm(3.01), off)).toEqual({ value: mm(3), position: mm(3), guides: [] });
  });

  it('should name the edges that it lines up with by chance', () => {
    expect(snapped(left, mm(3), { ...to, reach: 0 }).guides).toEqual([mm(3)]);
  });

  it('should stop at its limits', () => {
    expect(snapped(left, mm(-4), to).value).toBe(0);
    expect(snapped(left, mm(40), to).value).toBe(left.most);
    expect(left.most).toBe(mm(12 - 3 - 0.01));
  });
});

describe('stepped', () => {
  it('should go to the next multiple of the step', () => {
    expect(stepped(left, mm(1.65), COARSE, 1)).toBe(mm(1.7));
    expect(stepped(left, mm(1.67), COARSE, 1)).toBe(mm(1.7));
    expect(stepped(left, mm(1.67), COARSE, -1)).toBe(mm(1.65));
    expect(stepped(left, mm(1.65), FINE, -1)).toBe(mm(1.64));
  });

  it('should not go below nothing', () => {
    expect(stepped(left, mm(0.02), COARSE, -1)).toBe(0);
    expect(stepped(left, nm(0), COARSE, -1)).toBe(0);
  });
});

describe('otherEdges', () => {
  it('should be those of the other layers along the axis, each once', () => {
    expect(otherEdges(sectionOf(judged), left)).toEqual([3, 4, 8, 9, 11.6, 12].map(mm));
  });
});
