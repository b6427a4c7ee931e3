// One picture of a field as marks: field strength in steps of colour; over it outlines of solids, lines of equal potential with
// their numbers, turns and metal.

import type { FieldShot, PictureBox } from '#judge/field/field-picture.ts';
import type { LineMark, Mark, Point } from '#drawing/paper/mark.ts';
import { place, type Paper } from '#drawing/paper/paper.ts';
import { circledLayers, turnMarks } from '#drawing/marks/turn-marks.ts';
import type { Scene } from '#drawing/scene/scene.ts';
import { rampColor, stepOf, STEPS } from './ramp.ts';

export function fieldMarks(
  scene: Scene,
  shot: FieldShot,
  boxes: readonly PictureBox[],
  paper: Paper,
): readonly Mark[] {
  return [
    ...boxMarks(boxes, paper, false),
    ...lineMarks(shot, paper),
    ...boxMarks(boxes, paper, true),
    ...turnMarks(scene, paper, circledLayers(scene, paper)),
    ...numberMarks(shot, paper),
  ];
}

/** Rows of cells of one step are one thick line; steps that the ground shows by itself are left out. */
export function strengthMarks({ raster }: FieldShot, paper: Paper, strongest: number): readonly LineMark[] {
  const { x0, y0, step, columns, rows, strength } = raster;
  const runs: (readonly Point[])[][] = Array.from({ length: STEPS }, () => []);
  for (let row = 0; row < rows; row++) {
    let from = 0;
    let of = -1;
    for (let column = 0; column <= columns; column++) {
      const here = column < columns ? strength[row * columns + column]! : -1;
      const next = here < 0 ? -1 : stepOf(here, strongest);
      if (next === of) continue;
      if (of > 0) {
        const y = y0 + (row + 0.5) * step;
        runs[of]!.push([place(paper, [x0 + from * step, y]), place(paper, [x0 + column * step, y])]);
      }
      [from, of] = [column, next];
    }
  }
  // a hair more than its height, so that no ground shows between two rows
  const width = step * paper.view.scale * paper.view.stretch + 0.25;
  return runs.flatMap((run, at): readonly LineMark[] => {
    if (run.length === 0) return [];
    const stroke = { color: rampColor(paper.theme.name, at), width };
    return [{ kind: 'line', role: 'field', runs: run, stroke }];
  });
}

function boxMarks(boxes: readonly PictureBox[], paper: Paper, metal: boolean): readonly Mark[] {
  const { theme } = paper;
  return boxes.flatMap((box): readonly Mark[] => {
    if ((box.volts !== null) !== metal) return [];
    const corners: readonly Point[] = [
      place(paper, [box.x0, box.y0]),
      place(paper, [box.x1, box.y0]),
      place(paper, [box.x1, box.y1]),
      place(paper, [box.x0, box.y1]),
    ];
    const isCore = box.kind === 'core';
    const color = metal ? theme.ink : theme.line;
    return [
      {
        kind: 'area',
        role: box.kind,
        loops: [corners],
        fill: metal ? (isCore ? theme.materials.core.fill : theme.raised) : null,
        stroke: isCore ? null : { color, width: metal ? 1 : 0.6 },
        opacity: metal ? 1 : 0.7,
      },
    ];
  });
}

/** Every fourth line is heavy. */
const HEAVY = 4;
const isHeavy = (volts: number, every: number): boolean => Math.round(volts / every) % HEAVY === 0;

function lineMarks({ lines, every }: FieldShot, paper: Paper): readonly LineMark[] {
  return [false, true].flatMap((heavy): readonly LineMark[] => {
    const runs = lines
      .filter(({ volts }) => isHeavy(volts, every) === heavy)
      .flatMap((line) => line.runs.map((run) => thinned(run, paper)));
    if (runs.length === 0) return [];
    const stroke = { color: paper.theme.ink, width: heavy ? 1.2 : 0.6 };
    return [{ kind: 'line', role: 'equipotentials', runs, stroke, opacity: heavy ? 0.95 : 0.6 }];
  });
}

/** Points nearer than this on paper are one, px. */
const NEAR = 1.5;

function thinned(run: readonly number[], paper: Paper): readonly Point[] {
  const kept: Point[] = [];
  for (let i = 0; i < run.length; i += 2) {
    const at = place(paper, [run[i]!, run[i + 1]!]);
    const last = kept.at(-1);
    const near = last !== undefined && Math.hypot(at[0] - last[0], at[1] - last[1]) < NEAR;
    if (!near || i + 2 === run.length) kept.push(at);
  }
  return kept;
}

const NUMBER = { size: 10.5, height: 14, most: 9 } as const;

/** A number on the longest run of each heavy line, where that is long enough to carry it. */
function numberMarks({ lines, every }: FieldShot, paper: Paper): readonly Mark[] {
  const { room, theme } = paper;
  return lines
    .filter(({ volts }) => isHeavy(volts, every))
    .slice(0, NUMBER.most)
    .flatMap(({ volts, runs }, i): readonly Mark[] => {
      const longest = runs.reduce<readonly number[]>((a, b) => (b.length > a.length ? b : a), []);
      if (longest.length < 80) return [];
      // not all at one place
      const k = 2 * Math.floor((longest.length / 2) * (0.25 + 0.17 * (i % 4)));
      const at = place(paper, [longest[k]!, longest[k + 1]!]);
      const words = `${Math.round(volts)} V`;
      const width = paper.measure(words, NUMBER.size, true) + 6;
      const inside =
        at[0] > room.left + width &&
        at[0] < room.right - width &&
        at[1] > room.top + 10 &&
        at[1] < room.bottom - 10;
      if (!inside) return [];
      const look = { fill: theme.sheet, rim: theme.sheet, color: theme.ink };
      return [
        { kind: 'chip', role: 'volts', at, words, size: NUMBER.size, width, height: NUMBER.height, ...look },
      ];
    });
}
