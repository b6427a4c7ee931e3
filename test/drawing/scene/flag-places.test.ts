import { describe, expect, it } from 'vitest';
import { FLAG, flagPlaces } from '#drawing/scene/flag-places.ts';
import type { Flag } from '#drawing/scene/scene.ts';

const flag = (number: number, stands: Flag['stands'] = 'left'): Flag => ({
  number,
  at: [0, 0],
  stands,
  here: true,
  section: 'plain',
  short: true,
});

describe('flagPlaces', () => {
  it('should leave a flag alone that nothing crowds', () => {
    expect(flagPlaces([flag(1)], () => [5, 5])[0]).toMatchObject({ tip: [5, 5], nose: [5, 5] });
  });

  it('should let none of ten flags at one spot lie over another, the worst keeping its place', () => {
    const places = flagPlaces(
      Array.from({ length: 10 }, (_, k) => flag(k + 1, k % 2 === 0 ? 'left' : 'right')),
      () => [100, 100],
    );
    expect(places[0]?.nose).toEqual([100, 100]);
    places.forEach((a, i) =>
      places.slice(i + 1).forEach((b) => {
        const left = (place: typeof a) =>
          place.flag.stands === 'left' ? place.nose[0] - FLAG.width : place.nose[0];
        const apart =
          Math.abs(left(a) - left(b)) >= FLAG.width || Math.abs(a.nose[1] - b.nose[1]) >= FLAG.height;
        expect(apart).toBe(true);
      }),
    );
  });

  it('should keep a flag near its spot', () => {
    const places = flagPlaces(
      Array.from({ length: 6 }, (_, k) => flag(k + 1)),
      () => [0, 0],
    );
    for (const { nose } of places) expect(Math.hypot(...nose)).toBeLessThan(3 * FLAG.width);
  });

  it('should stand on nothing that is kept free, but near its spot', () => {
    const grip = { left: 60, right: 75, top: 95, bottom: 105 };
    const [place] = flagPlaces([flag(1)], () => [100, 100], [grip]);
    const [x, y] = place!.nose;
    const isOn = x - FLAG.width < grip.right && x > grip.left && Math.abs(y - 100) < FLAG.height / 2 + 5;
    expect(isOn).toBe(false);
    expect(Math.hypot(x - 100, y - 100)).toBeLessThan(2 * FLAG.width);
  });
});
