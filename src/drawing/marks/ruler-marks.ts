// The two rulers at the edges of a section, in the unit that lengths are told in: one millimetre filled, one hollow, finer
// ticks as the scale allows, and in the corner, where a radial stretch is on, one millimetre along and one outward side by side.

import { inUnit, lengthUnit, mmOfUnit } from '#words/text/length-unit.ts';
import type { Scene } from '#drawing/scene/scene.ts';
import { toDrawingX, toDrawingY, type Plate } from '#drawing/scene/view.ts';
import type { AreaMark, LineMark, Mark, Point, WordsMark } from '#drawing/paper/mark.ts';
import { crisp, place, scaleUp, type Paper } from '#drawing/paper/paper.ts';
import { multiples, rulerSteps } from './ruler-steps.ts';
import { line, rectangle } from '#drawing/paper/shapes.ts';

const ROLE = 'ruler';
const BAR = 5;
const SIZE = 11;
/** From the bar to the end of its ticks, and from there to the core. */
const BESIDE = 12;
const GAP = 2;
/** Pixels that a number takes. */
const ROOM = { across: 26, up: 18 } as const;
/** Space of the rulers at the edges of a drawing. */
export const RULER = { left: 36, top: 30 } as const;

/** Close to the core while it is in sight, at the edge of the room where it is not. */
export function rulerMarks(scene: Scene, paper: Paper): readonly Mark[] {
  const { room, bounds, theme } = paper;
  const { corner, left, top } = edges(scene, paper);
  // what is drawn beyond the room must not run under the figures
  const hidden = [
    ...(corner[1] < room.top ? [rectangle(bounds.left, room.top - RULER.top, bounds.right, room.top)] : []),
    ...(corner[0] < room.left
      ? [rectangle(bounds.left, room.top - RULER.top, room.left, bounds.bottom)]
      : []),
  ];
  return [
    ...hidden.map((loop): AreaMark => ({
      kind: 'area',
      role: ROLE,
      loops: [loop],
      fill: theme.sheet,
      stroke: null,
    })),
    ...along(scene, paper, top),
    ...unitMarks(paper, left, top),
    ...outward(scene, paper, left),
    ...(paper.view.stretch === 1 ? [] : bothScales(paper)),
  ];
}

/** What the rulers and their numbers cover. */
export function rulerPlates(scene: Scene, paper: Paper): readonly Plate[] {
  const { left, top } = edges(scene, paper);
  const from = place(paper, [scene.rulers.x[0], scene.rulers.y[0]]);
  const to = place(paper, [scene.rulers.x[1], scene.rulers.y[1]]);
  return [
    { left: from[0] - SIZE, right: to[0] + SIZE, top: top - 2 * SIZE, bottom: top + BESIDE },
    { left: left - 2 * SIZE, right: left + BESIDE, top: to[1] - SIZE, bottom: from[1] + SIZE },
  ];
}

/** Where the bars lie: outer edge of each, and the corner of the section that they stand beside. */
function edges(
  scene: Scene,
  paper: Paper,
): { readonly corner: Point; readonly left: number; readonly top: number } {
  const corner = crisp(paper, [scene.frame.x0, scene.frame.y1]);
  const [left, top] = [Math.max(paper.room.left, corner[0] - GAP), Math.max(paper.room.top, corner[1] - GAP)];
  return { corner, left: left - BESIDE, top: top - BESIDE };
}

interface Edge {
  readonly from: number;
  readonly to: number;
  readonly perMm: number;
  readonly room: number;
  /** A place on the ruler: millimetres along it, pixels from its outer edge toward the drawing. */
  readonly at: (mm: number, aside: number) => Point;
  readonly crispAt: (mm: number, aside: number) => Point;
  readonly words: (mm: number) => Pick<WordsMark, 'at' | 'align'>;
}

function along({ rulers: { x } }: Scene, paper: Paper, top: number): readonly Mark[] {
  const { view, bounds, room } = paper;
  return ruler(paper, {
    from: Math.max(x[0], toDrawingX(view, room.left)),
    to: Math.min(x[1], toDrawingX(view, bounds.right)),
    perMm: view.scale,
    room: ROOM.across,
    at: (mm, aside) => [place(paper, [mm, 0])[0], top + aside],
    crispAt: (mm, aside) => [crisp(paper, [mm, 0])[0], top + aside],
    words: (mm) => ({ at: [place(paper, [mm, 0])[0], top - 8], align: 'center' }),
  });
}

function outward({ rulers: { y } }: Scene, paper: Paper, left: number): readonly Mark[] {
  const { view, bounds, room } = paper;
  return ruler(paper, {
    from: Math.max(y[0], toDrawingY(view, bounds.bottom)),
    to: Math.min(y[1], toDrawingY(view, room.top)),
    perMm: scaleUp(paper),
    room: ROOM.up,
    at: (mm, aside) => [left + aside, place(paper, [0, mm])[1]],
    crispAt: (mm, aside) => [left + aside, crisp(paper, [0, mm])[1]],
    words: (mm) => ({ at: [left - 4, place(paper, [0, mm])[1]], align: 'right' }),
  });
}

function ruler({ theme }: Paper, { from, to, perMm, room, at, crispAt, words }: Edge): readonly Mark[] {
  if (to <= from) return [];
  const unit = lengthUnit();
  const { piece, fine, number } = rulerSteps(mmOfUnit(perMm), room, unit);
  const stroke = { color: theme.second, width: 1 };
  const [first, last] = [inUnit(from), inUnit(to)];
  const parts = (isFilled: boolean): AreaMark => ({
    kind: 'area',
    role: ROLE,
    loops: pieces(piece, first, last)
      .filter(({ filled }) => filled === isFilled)
      .map(({ a, b }) => [mmOfUnit(a), mmOfUnit(b)] as const)
      .map(([a, b]) => [crispAt(a, 0), crispAt(b, 0), crispAt(b, BAR), crispAt(a, BAR)]),
    fill: isFilled ? theme.second : theme.sheet,
    stroke,
  });
  const ticks: LineMark = {
    kind: 'line',
    role: ROLE,
    runs: (fine === null ? [] : multiples(fine, first, last)).map((place) => [
      at(mmOfUnit(place), BAR),
      at(mmOfUnit(place), BAR + (Math.round(place / (fine ?? 1)) % 5 === 0 ? 6 : 4)),
    ]),
    stroke: { color: theme.second, width: 0.7 },
  };
  const numbers = multiples(number, first, last).map((place): WordsMark => ({
    kind: 'words',
    role: ROLE,
    words: `${place}`,
    size: SIZE,
    color: theme.ink,
    ...words(mmOfUnit(place)),
  }));
  return [parts(true), parts(false), ticks, ...numbers];
}

function pieces(
  step: number,
  from: number,
  to: number,
): readonly { a: number; b: number; filled: boolean }[] {
  const ends = [from, ...multiples(step, from, to).filter((mm) => mm > from && mm < to), to];
  return ends.slice(1).map((b, k) => {
    const a = ends[k] ?? from;
    return { a, b, filled: Math.floor((a + b) / 2 / step) % 2 === 0 };
  });
}

/** The unit where both rulers meet; millimetres go without saying. */
function unitMarks({ theme }: Paper, left: number, top: number): readonly Mark[] {
  const unit = lengthUnit();
  if (unit === 'mm') return [];
  const look = { kind: 'words', role: ROLE, size: SIZE, color: theme.ink, align: 'right' } as const;
  return [{ ...look, at: [left - 4, top - 8], words: unit }];
}

function bothScales(paper: Paper): readonly Mark[] {
  const { bounds, room, theme, view } = paper;
  const [right, bottom] = [bounds.right - 12, bounds.bottom - 12];
  const [across, up] = [view.scale, scaleUp(paper)];
  const unit = lengthUnit();
  const steps = unit === 'mil' ? [50, 10, 1] : unit === 'in' ? [0.05, 0.01, 0.001] : [1, 0.1, 0.01];
  const step = steps.find((one) => mmOfUnit(one) * up <= (bounds.bottom - room.top) * 0.7) ?? steps[2] ?? 1;
  const mm = mmOfUnit(step);
  const left = right - across * mm;
  const ground = rectangle(left - 92, bottom - up * mm - 6, right + 6, bottom + 6);
  const look = { color: theme.ink, width: 2 };
  const words = { kind: 'words', role: ROLE, size: SIZE, color: theme.ink, align: 'right' } as const;
  return [
    { kind: 'area', role: ROLE, loops: [ground], fill: theme.sheet, stroke: null, opacity: 0.85 },
    line(ROLE, [left, bottom], [right, bottom], look),
    line(ROLE, [left, bottom], [left, bottom - up * mm], look),
    { ...words, at: [left - 5, bottom - 4], words: `${step} ${unit} along` },
    { ...words, at: [left - 5, bottom - up * mm + 5], words: `${step} ${unit} outward` },
  ];
}
