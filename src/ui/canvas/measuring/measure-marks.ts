// What is being measured on the section, as a dimension line between two small crosses with its words beside the middle.

import type { Mark, Point } from '#drawing/paper/mark.ts';
import { place, type Paper } from '#drawing/paper/paper.ts';
import { chip, chipWidth, line } from '#drawing/paper/shapes.ts';
import { measureWords } from './measure-words.ts';
import type { Measure } from './measuring.svelte.ts';

const ROLE = 'measure';
const CROSS = 5;

export function measureMarks({ from, to, way }: Measure, paper: Paper): readonly Mark[] {
  const { theme, room } = paper;
  const [a, b] = [place(paper, from), place(paper, to)];
  const cross = ([x, y]: Point): Mark => ({
    kind: 'line',
    role: ROLE,
    runs: [
      [
        [x - CROSS, y],
        [x + CROSS, y],
      ],
      [
        [x, y - CROSS],
        [x, y + CROSS],
      ],
    ],
    stroke: { color: theme.ink, width: 1.3 },
  });
  const words = measureWords(Math.hypot(to[0] - from[0], to[1] - from[1]), way);
  const half = chipWidth(paper, words) / 2 + 4;
  const x = Math.max(room.left + half, Math.min(room.right - half, (a[0] + b[0]) / 2));
  const top = Math.min(a[1], b[1]) - 20;
  const y = top > room.top + 12 ? top : Math.max(a[1], b[1]) + 20;
  return [
    line(ROLE, a, b, { color: theme.sheet, width: 4 }),
    line(ROLE, a, b, { color: theme.ink, width: 1.3 }),
    cross(a),
    cross(b),
    chip(paper, ROLE, [x, y], words, { fill: theme.sheet, rim: theme.ink, color: theme.ink }),
  ];
}
