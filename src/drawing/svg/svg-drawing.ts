// The drawing of a section itself, without edge, staffs and caption: solids, turns, letters, paths and flags in order.

import { LINE } from '#drawing/scene/palette.ts';
import type { Point } from '#drawing/scene/outline.ts';
import type { Plate } from '#drawing/scene/path-figure.ts';
import type { Area, Scene } from '#drawing/scene/scene.ts';
import { flags } from './svg-flags.ts';
import { solids } from './svg-solids.ts';
import { staff, staffFigures, thinStaff } from './svg-staff.ts';
import { drawsCircles, turns } from './svg-turns.ts';
import { chip, element, line, px, text, type View } from './svg-view.ts';

/** `room`: bounds in pixels that the figures keep to. */
export function drawing(scene: Scene, view: View, room: Plate, flagged: boolean): readonly string[] {
  const circles = drawsCircles(scene, view);
  const layers = new Set(scene.areas.filter(circles).map(({ layer }) => layer));
  return [
    solids(scene, view, circles),
    turns(scene, view, (layer) => layers.has(layer)),
    ...scene.notes.map(({ text: words, at, line: span }) => note(words, at, span, view)),
    ...scene.letters.map(({ at, letter, circuit }) => {
      const hue = scene.looks.find((look) => look.circuit === circuit)?.hue ?? 'isolated';
      const ink = view.theme.circuits[hue].ring;
      const size = letterSize(scene.areas, at, view);
      return size === 0
        ? ''
        : chip([view.x(at[0]), view.y(at[1])], letter, { fill: view.theme.sheet, rim: ink, ink, size });
    }),
    ...scene.otherPaths.map((path) => thinStaff(path, view)),
    scene.path === null ? '' : staff(scene.path, view),
    flagged ? flags(scene, view) : '',
    scene.path === null ? '' : staffFigures(scene.path, scene, view, room),
  ];
}

/** A letter never stands higher than what it names, down to the smallest that can be read; 0 where none can. */
function letterSize(areas: readonly Area[], [x, y]: Point, view: View): number {
  const under = areas.find(({ bounds: b }) => b.x0 <= x && x <= b.x1 && b.y0 <= y && y <= b.y1);
  const high = under === undefined ? 0 : (under.bounds.y1 - under.bounds.y0) * view.ky;
  const size = Math.min(12.5, high * 0.6);
  return size < 5 ? 0 : size;
}

function note(words: string, at: Point, span: readonly [Point, Point] | null, view: View): string {
  const [x, y] = [view.x(at[0]), view.y(at[1])];
  const { second } = view.theme;
  if (span === null) return text([x, y + 4], words, { size: 11.5, fill: second, anchor: 'middle' });
  const [from, to]: readonly Point[] = span.map(([a, b]): Point => [view.x(a), view.y(b)]);
  if (from === undefined || to === undefined || Math.abs(from[1] - to[1]) < 14) return '';
  const head = (end: Point, way: number): string =>
    element('path', { d: `M${px(end[0])} ${px(end[1])}l-3 ${way * 7}h6Z`, fill: second });
  return (
    line(from, to, second, LINE.dimension) +
    head(from, -1) +
    head(to, 1) +
    text([x - 8, y + 4], words, { size: 11.5, fill: second, anchor: 'end' })
  );
}
