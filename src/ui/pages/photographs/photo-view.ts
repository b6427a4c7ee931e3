// What part of a photograph is in view, and where its points come to lie when it is shown turned about its middle.

import type { PicturePoint } from '#geometry/photo-span.ts';

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface ShownPicture {
  readonly width: number;
  readonly height: number;
  /** Degrees clockwise. */
  readonly turned: number;
}

/** A point of the picture as it lies when shown. */
export const shownPoint = (point: PicturePoint, picture: ShownPicture): PicturePoint =>
  rotated(point, picture, picture.turned);

export const pictureDirection = (by: PicturePoint, { turned }: ShownPicture): PicturePoint =>
  rotated(by, { width: 0, height: 0 }, -turned);

function rotated(
  { x, y }: PicturePoint,
  { width, height }: { readonly width: number; readonly height: number },
  degrees: number,
): PicturePoint {
  const angle = (degrees * Math.PI) / 180;
  const [dx, dy] = [x - width / 2, y - height / 2];
  return {
    x: width / 2 + dx * Math.cos(angle) - dy * Math.sin(angle),
    y: height / 2 + dx * Math.sin(angle) + dy * Math.cos(angle),
  };
}

/** All of the turned picture. */
export function wholeBox(picture: ShownPicture): Box {
  const { width, height } = picture;
  const corners = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: 0, y: height },
    { x: width, y: height },
  ].map((corner) => shownPoint(corner, picture));
  const xs = corners.map(({ x }) => x);
  const ys = corners.map(({ y }) => y);
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}

/** At the nearest a pixel of the picture is some 24 of the screen, at the farthest all of it is in view. */
const LEAST_WIDTH = 24;

/** `factor` below 1 is nearer; the place `at` stays where it is. */
export function nearer(box: Box, whole: Box, factor: number, at: PicturePoint): Box {
  const width = Math.min(whole.width, Math.max(LEAST_WIDTH, box.width * factor));
  const by = width / box.width;
  return within(
    { x: at.x - (at.x - box.x) * by, y: at.y - (at.y - box.y) * by, width, height: box.height * by },
    whole,
  );
}

export const moved = (box: Box, whole: Box, dx: number, dy: number): Box =>
  within({ ...box, x: box.x + dx, y: box.y + dy }, whole);

/** Moves the view no farther than needed to have the point in it. */
export function having(box: Box, whole: Box, { x, y }: PicturePoint): Box {
  const dx = Math.min(0, x - box.x) + Math.max(0, x - box.x - box.width);
  const dy = Math.min(0, y - box.y) + Math.max(0, y - box.y - box.height);
  return dx === 0 && dy === 0 ? box : moved(box, whole, dx, dy);
}

const within = (box: Box, whole: Box): Box => ({
  ...box,
  x: Math.min(Math.max(box.x, whole.x), whole.x + whole.width - box.width),
  y: Math.min(Math.max(box.y, whole.y), whole.y + whole.height - box.height),
});
