// A photograph laid under the section: shift, turn, scale and mirror take each of its pixels to a place in millimetres, and the
// drawing's view takes that to the screen. Its known length says how many millimetres a pixel is; that it was taken square on
// nothing here can know.

import { toScreenX, toScreenY, type View } from '#drawing/scene/view.ts';

/** A place on the picture, pixels, y downward. */
export interface PicturePlace {
  readonly x: number;
  readonly y: number;
}

export interface Laying {
  /** Where the picture's pixel 0, 0 lies on the section, mm. */
  readonly x: number;
  readonly y: number;
  /** Millimetres to a pixel. */
  readonly scale: number;
  /** Degrees, clockwise on the screen. */
  readonly turn: number;
  readonly mirrored: boolean;
}

export function placeOf(
  { x, y, scale, turn, mirrored }: Laying,
  at: PicturePlace,
): readonly [number, number] {
  const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  const u = mirrored ? -at.x : at.x;
  return [x + scale * (cos * u - sin * at.y), y - scale * (sin * u + cos * at.y)];
}

/** Both ends of a known length onto two places of the section that lie level: the flanges. */
export function laidOnTwo(
  ends: readonly [PicturePlace, PicturePlace],
  places: readonly [readonly [number, number], readonly [number, number]],
): Laying {
  const [[ax, ay], [bx, by]] = places;
  const [a, b] = ends;
  const mirrored = false;
  const pixels = Math.max(1e-9, Math.hypot(b.x - a.x, b.y - a.y));
  const scale = Math.hypot(bx - ax, by - ay) / pixels;
  // y grows downward on the picture and outward on the section
  const turn = ((Math.atan2(ay - by, bx - ax) - Math.atan2(b.y - a.y, b.x - a.x)) * 180) / Math.PI;
  const [x, y] = placeOf({ x: 0, y: 0, scale, turn, mirrored }, a);
  return { x: ax - x, y: ay - y, scale, turn, mirrored };
}

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
