// Paints the two staffs at the edges of the stage: one millimetre filled, one hollow, finer ticks as the scale allows,
// and in the corner, where a radial stretch is on, one millimetre along and one outward side by side.

import { LETTERING } from '#drawing/scene/palette.ts';
import { letter, line, type Pen } from './pen.ts';
import { RULER } from './picture.ts';
import { multiples, rulerMarks } from './ruler-marks.ts';
import { toDrawingX, toDrawingY } from './view.ts';

const BAR = 5;
const SIZE = 10.5;
/** From the bar to the end of its ticks, and from there to the core. */
const BESIDE = 12;
const GAP = 2;
const ROOM = { across: 26, up: 18 } as const;

/** Close to the core while it is in sight, at the edge of the stage where it is not. */
export function paintRulers(pen: Pen): void {
  const { ink, picture } = pen;
  const { theme, width, height, scene, room } = picture;
  const top = Math.max(room.top, pen.crispY(scene.frame.y1) - GAP) - BESIDE;
  const left = Math.max(room.left, pen.crispX(scene.frame.x0) - GAP) - BESIDE;
  ink.fillStyle = theme.sheet;
  ink.fillRect(0, room.top - RULER.top, width, Math.min(RULER.top, top + BESIDE - room.top + RULER.top));
  ink.fillRect(0, room.top - RULER.top, Math.min(room.left, left + BESIDE), height);
  along(pen, top);
  outward(pen, left);
  if (picture.view.stretch !== 1) bothScales(pen);
}

function along({ ink, x, crispX, picture }: Pen, top: number): void {
  const { view, theme, scene, width } = picture;
  const [first, last] = scene.rulers.x;
  const from = Math.max(first, toDrawingX(view, picture.room.left));
  const to = Math.min(last, toDrawingX(view, width));
  if (to <= from) return;
  const marks = rulerMarks(from, to, view.scale, ROOM.across);
  for (const [a, b, filled] of pieces(marks.step, from, to)) {
    ink.fillStyle = filled ? theme.second : theme.sheet;
    ink.fillRect(crispX(a), top, crispX(b) - crispX(a), BAR);
    ink.strokeStyle = theme.second;
    ink.lineWidth = 1;
    ink.setLineDash([]);
    ink.strokeRect(crispX(a), top, crispX(b) - crispX(a), BAR);
  }
  for (const mm of marks.fine === null ? [] : multiples(marks.fine, from, to))
    line(ink, x(mm), top + BAR, x(mm), top + BAR + tickLength(mm, marks.fine), {
      color: theme.second,
      width: 0.7,
    });
  for (const mm of multiples(marks.numbers, from, to))
    letter(ink, x(mm), top - 8, `${mm}`, { size: SIZE, color: theme.ink, family: LETTERING });
}

function outward({ ink, y, crispY, picture }: Pen, left: number): void {
  const { view, theme, scene, height } = picture;
  const [first, last] = scene.rulers.y;
  const from = Math.max(first, toDrawingY(view, height));
  const to = Math.min(last, toDrawingY(view, picture.room.top));
  if (to <= from) return;
  const marks = rulerMarks(from, to, view.scale * view.stretch, ROOM.up);
  for (const [a, b, filled] of pieces(marks.step, from, to)) {
    ink.fillStyle = filled ? theme.second : theme.sheet;
    ink.fillRect(left, crispY(b), BAR, crispY(a) - crispY(b));
    ink.strokeStyle = theme.second;
    ink.lineWidth = 1;
    ink.setLineDash([]);
    ink.strokeRect(left, crispY(b), BAR, crispY(a) - crispY(b));
  }
  for (const mm of marks.fine === null ? [] : multiples(marks.fine, from, to))
    line(ink, left + BAR, y(mm), left + BAR + tickLength(mm, marks.fine), y(mm), {
      color: theme.second,
      width: 0.7,
    });
  for (const mm of multiples(marks.numbers, from, to))
    letter(ink, left - 4, y(mm), `${mm}`, {
      size: SIZE,
      color: theme.ink,
      align: 'right',
      family: LETTERING,
    });
}

function pieces(step: number, from: number, to: number): readonly (readonly [number, number, boolean])[] {
  const first = Math.floor(from / step + 1e-9);
  const count = Math.ceil(to / step - 1e-9) - first;
  return Array.from({ length: Math.max(0, count) }, (_, k) => {
    const place = first + k;
    return [Math.max(from, place * step), Math.min(to, (place + 1) * step), place % 2 === 0] as const;
  });
}

/** Every fifth tick is longer. */
const tickLength = (mm: number, fine: number | null): number =>
  fine !== null && Math.round(mm / fine) % 5 === 0 ? 6 : 4;

function bothScales({ ink, picture }: Pen): void {
  const { view, theme, width, height } = picture;
  const [right, bottom] = [width - 12, height - 12];
  const [across, up] = [view.scale, view.scale * view.stretch];
  const step = [1, 0.1, 0.01].find((mm) => mm * up <= (height - picture.room.top) * 0.7) ?? 0.01;
  const look = { color: theme.ink, width: 2 };
  const left = right - across * step;
  ink.fillStyle = theme.sheet;
  ink.globalAlpha = 0.85;
  ink.fillRect(left - 92, bottom - up * step - 6, right - left + 98, up * step + 12);
  ink.globalAlpha = 1;
  line(ink, left, bottom, right, bottom, look);
  line(ink, left, bottom, left, bottom - up * step, look);
  const words = { size: SIZE, color: theme.ink, align: 'right', family: LETTERING } as const;
  letter(ink, left - 5, bottom - 4, `${step} mm along`, words);
  letter(ink, left - 5, bottom - up * step + 5, `${step} mm outward`, words);
}
