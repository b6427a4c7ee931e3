// Lengths and angles picked on a photograph, in pixels or degrees, with the half-width that the picking leaves them.
// The truth lies within `plusMinus` wherever every point was picked within `half` pixels of its place: ends, not likelihoods.

export interface PicturePoint {
  readonly x: number;
  readonly y: number;
}

/** A value and the half-width of its interval. */
export interface Span {
  readonly value: number;
  readonly plusMinus: number;
}

/** Between two points. */
export const distanceSpan = (a: PicturePoint, b: PicturePoint, half: number): Span => ({
  value: lengthOf(between(a, b)),
  plusMinus: 2 * half,
});

/** Degrees at `corner` between the arms to `a` and `b`; null where an arm is too short to tell a direction. */
export function angleSpan(a: PicturePoint, corner: PicturePoint, b: PicturePoint, half: number): Span | null {
  const one = between(corner, a);
  const two = between(corner, b);
  const swing = swingOf(one, 2 * half) + swingOf(two, 2 * half);
  if (lengthOf(one) === 0 || lengthOf(two) === 0 || swing >= RIGHT) return null;
  return { value: degrees(angleBetween(one, two)), plusMinus: degrees(swing) };
}

/** Edges that lean towards each other by more than this are no edges of one wire or tape. */
const MOST_LEAN = Math.PI / 9;
const RIGHT = Math.PI / 2;

/**
 * Across two edges that run side by side, each told by two points; in the direction square to both.
 * Null where the edges are too short, cross the way, or lean towards each other.
 */
export function widthSpan(
  edge: readonly [PicturePoint, PicturePoint],
  other: readonly [PicturePoint, PicturePoint],
  half: number,
): Span | null {
  const one = between(...edge);
  const two = alongside(between(...other), one);
  const sum = { x: one.x + two.x, y: one.y + two.y };
  const lean = angleBetween(one, two);
  const swing = swingOf(sum, 4 * half);
  if (lengthOf(one) === 0 || lengthOf(two) === 0 || lean > MOST_LEAN || swing >= RIGHT) return null;
  const across = between(middle(...edge), middle(...other));
  const value = Math.abs(cross(sum, across)) / lengthOf(sum);
  const shift = Math.abs(dot(sum, across)) / lengthOf(sum);
  // what picking cannot explain of the lean is taper of the thing itself
  const taper = Math.max(0, lean - swingOf(one, 2 * half) - swingOf(two, 2 * half));
  const ends = (Math.sin(taper) * Math.max(lengthOf(one), lengthOf(two))) / 2;
  const turned = shift * Math.sin(swing) + value * (1 - Math.cos(swing));
  return { value, plusMinus: 2 * half + turned + ends };
}

/** Degrees by which a line must be turned to lie level, from -90 up to 90; null for no line. */
export function levelling(a: PicturePoint, b: PicturePoint): number | null {
  const line = between(a, b);
  if (lengthOf(line) === 0) return null;
  const slope = degrees(Math.atan2(line.y, line.x));
  const turn = slope > 90 ? slope - 180 : slope <= -90 ? slope + 180 : slope;
  return turn === 0 ? 0 : -turn;
}

/** The same turn as more than -180 and up to 180 degrees. */
export const withinHalfTurn = (turn: number): number => turn - 360 * Math.ceil((turn - 180) / 360);

const between = (a: PicturePoint, b: PicturePoint): PicturePoint => ({ x: b.x - a.x, y: b.y - a.y });
const middle = (a: PicturePoint, b: PicturePoint): PicturePoint => ({
  x: (a.x + b.x) / 2,
  y: (a.y + b.y) / 2,
});
const dot = (a: PicturePoint, b: PicturePoint): number => a.x * b.x + a.y * b.y;
const cross = (a: PicturePoint, b: PicturePoint): number => a.x * b.y - a.y * b.x;
const lengthOf = ({ x, y }: PicturePoint): number => Math.hypot(x, y);
const angleBetween = (a: PicturePoint, b: PicturePoint): number =>
  Math.abs(Math.atan2(cross(a, b), dot(a, b)));
const degrees = (radians: number): number => (radians * 180) / Math.PI;

/** An edge may be picked from either end. */
const alongside = (edge: PicturePoint, one: PicturePoint): PicturePoint =>
  dot(edge, one) < 0 ? { x: -edge.x, y: -edge.y } : edge;

/** How far a direction may turn when its arrow's tip is off by `error`. */
const swingOf = (arrow: PicturePoint, error: number): number =>
  error >= lengthOf(arrow) ? RIGHT : Math.asin(error / lengthOf(arrow));
