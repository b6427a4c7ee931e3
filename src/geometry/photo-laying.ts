// A photograph laid under the section: shift, turn, scale and mirror take each of its pixels to a place in millimetres, and back.
// Its known length says how many millimetres a pixel is; that it was taken square on nothing here can know.

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

/** The pixel that lies at a place of the section. */
export function pictureAt(
  { x, y, scale, turn, mirrored }: Laying,
  [right, up]: readonly [number, number],
): PicturePlace {
  const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  const [dx, dy] = [(right - x) / scale, (y - up) / scale];
  const [u, v] = [cos * dx + sin * dy, cos * dy - sin * dx];
  return { x: mirrored ? -u : u, y: v };
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
