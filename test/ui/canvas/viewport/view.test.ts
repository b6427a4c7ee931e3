import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearestScale, nextScale, scaleAtMost } from '#ui/canvas/viewport/offered-scale.ts';
import { toDrawingX, toDrawingY, toScreenX, toScreenY } from '#drawing/scene/view.ts';
import { centred, fittingScale, keptInSight, SCALE_LIMITS, zoomed } from '#ui/canvas/viewport/view.ts';

const box = { x0: -1, y0: -2, x1: 13, y1: 5 };
const room = { left: 30, top: 30, right: 1000, bottom: 500 };
const millimetres = fc.double({ min: -50, max: 50, noNaN: true });
const views = fc.record({
  scale: fc.double({ min: 1, max: 2000, noNaN: true }),
  stretch: fc.constantFrom(1, 2, 4, 8),
  left: fc.double({ min: -3000, max: 3000, noNaN: true }),
  base: fc.double({ min: -3000, max: 3000, noNaN: true }),
});

describe('view', () => {
  it('should go to the screen and back', () => {
    fc.assert(
      fc.property(views, millimetres, millimetres, (view, x, y) => {
        expect(toDrawingX(view, toScreenX(view, x))).toBeCloseTo(x, 6);
        expect(toDrawingY(view, toScreenY(view, y))).toBeCloseTo(y, 6);
      }),
      { seed: 1 },
    );
  });

  it('should keep the spot under the pointer while it zooms', () => {
    fc.assert(
      fc.property(views, views, (view, { scale, stretch }) => {
        const after = zoomed(view, { scale, stretch }, 400, 300);
        expect(toDrawingX(after, 400)).toBeCloseTo(toDrawingX(view, 400), 6);
        expect(toDrawingY(after, 300)).toBeCloseTo(toDrawingY(view, 300), 6);
      }),
      { seed: 2 },
    );
  });

  it('should show the whole box when it fits, in the middle', () => {
    const view = centred(box, room, fittingScale(box, room, 1), 1);
    expect(toScreenX(view, box.x0)).toBeGreaterThanOrEqual(room.left);
    expect(toScreenX(view, box.x1)).toBeLessThanOrEqual(room.right);
    expect(toScreenY(view, box.y1)).toBeCloseTo(room.top, 6);
    expect(toScreenY(view, box.y0)).toBeCloseTo(room.bottom, 6);
  });

  it('should leave a strip of the drawing in sight however far it is pushed', () => {
    fc.assert(
      fc.property(views, (view) => {
        const kept = keptInSight(view, box, room);
        expect(toScreenX(kept, box.x1)).toBeGreaterThanOrEqual(room.left + 47.999);
        expect(toScreenX(kept, box.x0)).toBeLessThanOrEqual(room.right - 47.999);
        expect(toScreenY(kept, box.y0)).toBeGreaterThanOrEqual(room.top + 47.999);
        expect(toScreenY(kept, box.y1)).toBeLessThanOrEqual(room.bottom - 47.999);
      }),
      { seed: 3 },
    );
  });
});

describe('offered scales', () => {
  const grid = { ply: 0.06, stretch: 1, density: 1 };

  it('should make a ply a whole number of screen pixels', () => {
    for (const density of [1, 1.25, 2])
      for (const scale of [55, 66, 90, 300, 1000]) {
        const pixels = nearestScale(scale, { ...grid, density }) * 0.06 * density;
        expect(pixels).toBeCloseTo(Math.round(pixels), 6);
      }
  });

  it('should offer 66.7 pixels a millimetre for a ply of 0.06 mm', () => {
    expect(scaleAtMost(70, grid)).toBeCloseTo(66.667, 3);
  });

  it('should leave scales alone at which plies cannot be counted, and drawings without plies', () => {
    expect(nearestScale(20, grid)).toBe(20);
    expect(nearestScale(71, { ...grid, ply: null })).toBe(71);
  });

  it('should always get nearer or farther with a press', () => {
    for (let scale = 50; scale < SCALE_LIMITS.most; scale = nextScale(scale, grid, 1))
      expect(nextScale(scale, grid, 1)).toBeGreaterThan(scale);
    for (let scale: number = SCALE_LIMITS.most; scale > 5; scale = nextScale(scale, grid, -1))
      expect(nextScale(scale, grid, -1)).toBeLessThan(scale);
  });
});
