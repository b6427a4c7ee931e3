// The whole section small, for a close view: what it shows, without words. The frame of what is in view is a node of its own.

import type { Mark } from '#drawing/paper/mark.ts';
import { place, type Paper } from '#drawing/paper/paper.ts';
import { pathColor } from '#drawing/marks/path-marks.ts';
import { rectangle } from '#drawing/paper/shapes.ts';
import { solidMarks } from '#drawing/marks/solid-marks.ts';
import { circledLayers, turnMarks } from '#drawing/marks/turn-marks.ts';
import type { Scene } from '#drawing/scene/scene.ts';

export function overviewMarks(scene: Scene, paper: Paper): readonly Mark[] {
  const { left, top, right, bottom } = paper.bounds;
  const ground = { kind: 'area', role: 'overview', loops: [rectangle(left, top, right, bottom)] } as const;
  const circled = circledLayers(scene, paper);
  const runs = (scene.path?.legs ?? []).map(({ from, to }) => [place(paper, from), place(paper, to)]);
  const color = scene.path === null ? paper.theme.ink : pathColor(scene.path, paper.theme);
  return [
    { ...ground, fill: paper.theme.sheet, stroke: null },
    ...solidMarks(scene, paper, circled),
    ...turnMarks(scene, paper, circled),
    { kind: 'line', role: 'overview', runs, stroke: { color, width: 2.5 } },
  ];
}
