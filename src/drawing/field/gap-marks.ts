// A gap on its picture: its field line, and a pennant with its number. Ink, not pencil: nothing falls short here.

import type { FieldGap } from '#judge/field/field-report.ts';
import type { Mark, Point } from '#drawing/paper/mark.ts';
import { place, type Paper } from '#drawing/paper/paper.ts';
import { toScreenX, toScreenY, type Plate } from '#drawing/scene/view.ts';

const FLAG = { nose: 7, width: 24, half: 8.5 } as const;

/** Which way a gap's flag stands: off the middle. */
const sideOf = (x: number, { room }: Pick<Paper, 'room'>): 1 | -1 =>
  x < (room.left + room.right) / 2 ? -1 : 1;

/** What the flag of a gap covers. */
export function gapPlate(gap: FieldGap, paper: Pick<Paper, 'room' | 'view'>): Plate {
  const [x, y] = [toScreenX(paper.view, gap.at[0]), toScreenY(paper.view, gap.at[1])];
  const back = x + sideOf(x, paper) * FLAG.width;
  return { left: Math.min(x, back), right: Math.max(x, back), top: y - FLAG.half, bottom: y + FLAG.half };
}

export function gapFlag(gap: FieldGap, i: number, paper: Paper, isPicked: boolean): readonly Mark[] {
  const { theme } = paper;
  const [x, y] = place(paper, gap.at);
  const side = sideOf(x, paper);
  const [neck, back] = [x + side * FLAG.nose, x + side * FLAG.width];
  const loops: readonly (readonly Point[])[] = [
    [
      [x, y],
      [neck, y - FLAG.half],
      [back, y - FLAG.half],
      [back, y + FLAG.half],
      [neck, y + FLAG.half],
    ],
  ];
  const rim = { color: isPicked ? theme.ink : theme.sheet, width: isPicked ? 3 : 1.2 };
  return [
    { kind: 'area', role: 'gaps', loops, fill: theme.ink, stroke: rim },
    {
      kind: 'words',
      role: 'gaps',
      at: [(neck + back) / 2, y],
      words: `${i + 1}`,
      size: 11,
      color: theme.sheet,
      bold: true,
    },
  ];
}

/** Close by: the line itself with a bar at either end. */
export function gapMarks(gap: FieldGap, i: number, paper: Paper): readonly Mark[] {
  const points = gap.points.map((point) => place(paper, point));
  const stroke = { color: paper.theme.ink, width: 2 };
  return [
    { kind: 'line', role: 'gaps', runs: [points, bar(points, 0), bar(points, -1)], stroke },
    ...gapFlag(gap, i, paper, true),
  ];
}

const BAR = 6;

/** Across the line at its first point, or its last. */
function bar(points: readonly Point[], at: 0 | -1): readonly Point[] {
  const [end, next] = [points.at(at), points.at(at === 0 ? 1 : -2)];
  if (end === undefined || next === undefined) return [];
  const [dx, dy] = [next[0] - end[0], next[1] - end[1]];
  const size = Math.hypot(dx, dy) || 1;
  const [nx, ny] = [(-dy / size) * BAR, (dx / size) * BAR];
  return [
    [end[0] - nx, end[1] - ny],
    [end[0] + nx, end[1] + ny],
  ];
}
