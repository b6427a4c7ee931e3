// The points and lines that the mesh has to keep: rings of points on wires and their covers, the edges of boxes, the
// frame, the shell. Fine where wires and plies are, coarser away from them. Millimetres.

import { inMm } from '#units/quantity.ts';

import type { Box, Disc, FieldSection } from '#field/field-section.ts';
import { BodyMap } from './body-map.ts';
import { addCorners, askCorners, drawEdge, edgesOf, thinOf } from './box-edges.ts';
import { addLine, countAround, direction, type Drawing, type Fineness, type Lines } from './drawing.ts';
import { fillIn } from './free-room.ts';
import { PointSet } from './point-set.ts';
import { SizeTree } from './size-tree.ts';
import { Stops } from './stops.ts';

export interface Outline {
  readonly points: PointSet;
  readonly lines: Lines;
  readonly map: BodyMap;
}

export function outlineOf(section: FieldSection, fineness: Fineness): Outline {
  const map = new BodyMap(section);
  const { frame } = section;
  const [x0, y0, x1, y1] = [frame.x0, frame.y0, frame.x1, frame.y1].map(inMm) as [
    number,
    number,
    number,
    number,
  ];
  const points = new PointSet(map, (x1 - x0 + y1 - y0) * 1e-5);
  const lines: Lines = { from: [], to: [], circle: [] };
  const tree = new SizeTree((x0 + x1) / 2, (y0 + y1) / 2, Math.max(x1 - x0, y1 - y0) * 0.505);
  const drawing: Drawing = { points, lines, tree, map, fineness };
  for (const body of section.bodies) if (body.shape === 'disc') drawDisc(drawing, body);
  if (section.shell) {
    const { x, y, radius } = section.shell;
    ring(drawing, inMm(x), inMm(y), inMm(radius), Math.ceil(fineness.around / 4) * 16);
  }
  const boxes = section.bodies.filter((body): body is Box => body.shape === 'box' && thinOf(body) > 0);
  boxes.forEach((box) => askCorners(tree, box, frame));
  tree.balance();
  const edges = [
    ...boxes.flatMap((box) => edgesOf(box, thinOf(box))),
    ...(section.shell ? [] : edgesOf(frame, Infinity)),
  ];
  const most = Math.max(x1 - x0, y1 - y0) / fineness.around;
  for (const box of boxes) addCorners(points, box);
  const stops = new Stops(points);
  edges.forEach((edge) => drawEdge(drawing, edge, most, stops));
  tree.balance();
  fillIn(drawing, section);
  return { points, lines, map };
}

function drawDisc(drawing: Drawing, disc: Disc): void {
  const [x, y] = [inMm(disc.x), inMm(disc.y)];
  const [metal, over] = [inMm(disc.metal) / 2, inMm(disc.overall) / 2];
  const count = countAround(drawing.fineness, disc);
  ring(drawing, x, y, metal, count, disc.electrode);
  const cover = over - metal;
  const rings = Math.ceil(cover / (1.4 * ((2 * Math.PI * metal) / count)));
  for (let i = 1; i <= rings; i++) ring(drawing, x, y, metal + (cover * i) / rings, count);
}

function ring(
  { points, lines, tree, fineness }: Drawing,
  x: number,
  y: number,
  radius: number,
  count: number,
  electrode = -1,
): void {
  const circle = points.addCircle(x, y, radius);
  const step = (2 * Math.PI * radius) / count;
  const ids = Array.from({ length: count }, (_, i) => {
    const [dx, dy] = direction(i, count);
    const [px, py] = [x + radius * dx, y + radius * dy];
    if (!points.inFrame(px, py)) return -1;
    tree.ask(px, py, fineness.spacing * step);
    return points.add(px, py, circle, electrode);
  });
  ids.forEach((from, i) => addLine(lines, from, ids[(i + 1) % count]!, circle));
}
