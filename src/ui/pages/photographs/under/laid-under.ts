// Where a photograph that is laid under the section comes to lie on the screen: the drawing's view takes millimetres there.

import { placeOf, type Laying } from '#geometry/photo-laying.ts';
import { toScreenX, toScreenY, type View } from '#drawing/scene/view.ts';

/** The CSS matrix of an element whose corner is the picture's first pixel. */
export function matrixOf(laying: Laying, view: View): string {
  const [origin, right, down] = [
    { x: 0, y: 0 },
    { x: 1, y: 0 },
    { x: 0, y: 1 },
  ].map((at) => {
    const [x, y] = placeOf(laying, at);
    return [toScreenX(view, x), toScreenY(view, y)] as const;
  }) as [readonly [number, number], readonly [number, number], readonly [number, number]];
  const parts = [
    ...[right[0] - origin[0], right[1] - origin[1]],
    ...[down[0] - origin[0], down[1] - origin[1]],
    ...origin,
  ];
  return `matrix(${parts.map((part) => part.toFixed(6)).join(', ')})`;
}
