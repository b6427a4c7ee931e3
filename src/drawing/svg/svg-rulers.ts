// Draws the two staffs at the edge of a section: one millimetre filled, one hollow, tenths where there is room.

import type { Scene } from '#drawing/scene/scene.ts';
import { element, line, text, type View } from './svg-view.ts';

const BAR = 5;

/** Along the axis above `top`, and outward to the left of `left`, in pixels. */
export function rulers(
  scene: Scene,
  view: View,
  at: { readonly top: number; readonly left: number },
): string {
  const { x, y } = scene.rulers;
  return along(x, view, at.top) + outward(y, view, at.left);
}

function along([from, to]: readonly [number, number], view: View, top: number): string {
  const { ink, second, sheet } = view.theme;
  const bars = millimetres(from, to).map(([a, b, filled]) =>
    element('rect', {
      x: view.x(a),
      y: top - BAR,
      width: view.x(b) - view.x(a),
      height: BAR,
      fill: filled ? second : sheet,
      stroke: second,
    }),
  );
  const tenths = tenthsOf(from, to, view.kx).map((mm) => {
    const long = Math.round(mm * 10) % 5 === 0 ? 6 : 4;
    return line([view.x(mm), top], [view.x(mm), top + long], second, 0.7);
  });
  const numbers = numbered(from, to, view.kx).map((mm) =>
    text([view.x(mm), top - BAR - 5], `${mm}`, { size: 10.5, fill: ink, anchor: 'middle' }),
  );
  return [...bars, ...tenths, ...numbers].join('');
}

function outward([from, to]: readonly [number, number], view: View, left: number): string {
  const { ink, second, sheet } = view.theme;
  const bars = millimetres(from, to).map(([a, b, filled]) =>
    element('rect', {
      x: left - BAR,
      y: view.y(b),
      width: BAR,
      height: view.y(a) - view.y(b),
      fill: filled ? second : sheet,
      stroke: second,
    }),
  );
  const tenths = tenthsOf(from, to, view.ky).map((mm) => {
    const long = Math.round(mm * 10) % 5 === 0 ? 6 : 4;
    return line([left, view.y(mm)], [left + long, view.y(mm)], second, 0.7);
  });
  const numbers = numbered(from, to, view.ky).map((mm) =>
    text([left - BAR - 5, view.y(mm) + 4], `${mm}`, { size: 10.5, fill: ink, anchor: 'end' }),
  );
  return [...bars, ...tenths, ...numbers].join('');
}

function millimetres(from: number, to: number): readonly (readonly [number, number, boolean])[] {
  const count = Math.max(0, Math.ceil(to - from));
  return Array.from(
    { length: count },
    (_, k) => [from + k, Math.min(to, from + k + 1), k % 2 === 0] as const,
  );
}

/** Only where a tenth is wide enough to be told from the next. */
function tenthsOf(from: number, to: number, scale: number): readonly number[] {
  if (scale < 30) return [];
  return Array.from({ length: Math.floor((to - from) * 10 + 1e-6) + 1 }, (_, k) => from + k / 10);
}

function numbered(from: number, to: number, scale: number): readonly number[] {
  const step = [1, 2, 5, 10, 20, 50, 100].find((each) => each * scale >= 22) ?? 200;
  return Array.from({ length: Math.floor((to - from) / step + 1e-6) + 1 }, (_, k) => from + k * step);
}
