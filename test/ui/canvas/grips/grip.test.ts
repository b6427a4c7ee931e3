import { describe, expect, it } from 'vitest';
import { dragged, isMoved, taken } from '#ui/canvas/handles/drag.ts';
import { gripsOf, REACH, reachOf } from '#ui/canvas/grips/grip.ts';
import { keyedTo } from '#ui/canvas/grips/grip-keys.ts';
import { handlesOf } from '#ui/canvas/handles/handles.ts';
import { layerAt, layerDrop } from '#ui/canvas/grips/layer-drop.ts';
import { otherEdges } from '#ui/canvas/handles/snap.ts';
import { sceneOf } from '#drawing/compose/scene-of.ts';
import { mm } from '#units/quantity.ts';
import { handleOf, judgedDemo, sectionOf } from '#test/ui/canvas/judged-demo.ts';

const judged = judgedDemo('greenhouse-timer');
const section = sectionOf(judged);
const handles = handlesOf(judged.design, section);
const view = { scale: 100, stretch: 1, left: 200, base: 500 };
const room = { left: 0, top: 0, right: 1600, bottom: 700 };
const grips = gripsOf(handles, view, room);
const left = handleOf(judged, 'layers[2].margins.left.width');
const places = sceneOf(judged.design, judged.judgement, 'plain')?.layers ?? [];

describe('gripsOf', () => {
  it('should stand in the middle of the edge, on the edge', () => {
    const grip = grips.find(({ handle }) => handle.id === left.id);
    expect(grip?.x).toBeCloseTo(200 + 165, 6);
    // layer 3 lies from 1.10 to 2.40 mm
    expect(grip?.y).toBeCloseTo(500 - 175, 6);
  });

  it('should leave out what is out of sight', () => {
    expect(gripsOf(handles, { ...view, left: -5000 }, room)).toEqual([]);
  });
});

describe('reachOf', () => {
  it('should be as far as the pointer is exact where a grip stands alone', () => {
    const [alone] = grips;
    expect(reachOf(alone!, [alone!], REACH.mouse)).toBe(REACH.mouse);
    expect(reachOf(alone!, [alone!], REACH.touch)).toBe(REACH.touch);
  });

  it('should never reach over to a neighbour', () => {
    for (const a of grips)
      for (const b of grips) {
        const apart = Math.hypot(a.x - b.x, a.y - b.y);
        if (a === b || apart < 6) continue;
        expect(reachOf(a, grips, REACH.touch) + reachOf(b, grips, REACH.touch)).toBeLessThanOrEqual(
          apart + 1e-9,
        );
      }
  });
});

describe('drag', () => {
  const start = { x: 363, y: 300, fine: false };
  const drag = taken(left, otherEdges(section, left), start, view);

  it('should not move before the pointer does', () => {
    expect(isMoved(dragged(drag, start, view))).toBe(false);
  });

  it('should follow the pointer by the distance from where it was taken', () => {
    expect(dragged(drag, { ...start, x: 363 + 50 }, view).value).toBe(mm(2.15));
  });

  it('should move finer with a modifier and past edges that attract', () => {
    expect(dragged(drag, { ...start, x: 363 + 133 }, view)).toMatchObject({ value: mm(3), guides: [mm(3)] });
    expect(dragged(drag, { ...start, x: 363 + 133, fine: true }, view).value).toBe(mm(2.98));
  });

  it('should come back to where it began', () => {
    const away = dragged(drag, { ...start, x: 500 }, view);
    expect(isMoved(dragged(away, start, view))).toBe(false);
  });

  it('should read heights through the radial stretch', () => {
    const height = handleOf(judged, 'former.height');
    const stretched = { ...view, stretch: 4 };
    const held = taken(height, [], { x: 150, y: -1180, fine: false }, stretched);
    expect(dragged(held, { x: 150, y: -1180 - 400, fine: false }, stretched).value).toBe(mm(5.2));
  });
});

describe('keyedTo', () => {
  const key = (name: string, shiftKey = false) => ({ key: name, shiftKey, altKey: false });
  const right = handleOf(judged, 'layers[2].margins.right.width');

  it('should move the edge the way the arrow points', () => {
    expect(keyedTo(key('ArrowRight'), left, left.value)?.value).toBe(mm(1.7));
    expect(keyedTo(key('ArrowRight'), right, right.value)?.value).toBe(mm(2.95));
    expect(keyedTo(key('ArrowLeft'), right, right.value)?.position).toBe(mm(12 - 3.05));
  });

  it('should move finer with Shift', () => {
    expect(keyedTo(key('ArrowLeft', true), left, left.value)?.value).toBe(mm(1.64));
  });

  it('should change the value up and down across the axis', () => {
    expect(keyedTo(key('ArrowUp'), right, right.value)?.value).toBe(mm(3.05));
  });

  it('should go to the limits, but not to a metre', () => {
    expect(keyedTo(key('Home'), left, left.value)?.value).toBe(0);
    expect(keyedTo(key('End'), left, left.value)?.value).toBe(mm(8.99));
    expect(keyedTo(key('End'), handleOf(judged, 'former.height'), mm(4.2))).toBeNull();
  });

  it('should leave other keys alone', () => {
    expect(keyedTo(key('Tab'), left, left.value)).toBeNull();
  });
});

describe('layerDrop', () => {
  it('should put a layer between those that the pointer stands between', () => {
    expect(layerDrop(places, 4, 0.2)).toEqual({ layer: 4, index: 0, to: 0 });
    expect(layerDrop(places, 0, 9)).toMatchObject({ layer: 0, index: 5 });
    expect(layerDrop(places, 0, 1.02)).toMatchObject({ index: 1 });
  });

  it('should leave it where it is', () => {
    expect(layerDrop(places, 2, 1.7)?.index).toBe(2);
  });

  it('should have nowhere to go alone', () => {
    expect(layerDrop(places.slice(0, 1), 0, 5)).toBeNull();
  });
});

describe('layerAt', () => {
  it('should find the layer whose band is under the point, margins included', () => {
    expect(layerAt(places, [{ x0: 0, x1: 12 }], 0.5, 1.5)).toBe(2);
    expect(layerAt(places, [{ x0: 0, x1: 12 }], -0.5, 1.5)).toBeNull();
    expect(layerAt(places, [{ x0: 0, x1: 12 }], 6, 3.5)).toBeNull();
  });
});
