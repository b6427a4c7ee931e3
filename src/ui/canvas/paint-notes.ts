// Paints the few words on a section: the circuits' letters, the tube's thickness, the air to the core.

import { LETTERING, LINE } from '#drawing/scene/palette.ts';
import type { Letter, Scene } from '#drawing/scene/scene.ts';
import { chip, letter, line, stroke, type Pen } from './pen.ts';

const LETTER = { most: 12.5, least: 9 } as const;
const NOTE_SIZE = 11.5;
/** A dimension line shorter than this has no room for its arrows. */
const LEAST_LINE = 14;

export function paintLetters(pen: Pen): void {
  const { scene, theme } = pen.picture;
  for (const each of scene.letters) {
    const size = letterSize(pen, each);
    const hue = scene.looks.find(({ circuit }) => circuit === each.circuit)?.hue;
    if (size === null || hue === undefined) continue;
    const ink = theme.circuits[hue].ring;
    const look = { fill: theme.sheet, rim: ink, color: ink, size, family: LETTERING };
    chip(pen.ink, pen.x(each.at[0]), pen.y(each.at[1]), each.letter, look);
  }
}

/** A letter never stands higher than what it names; null where it could not be read. */
function letterSize({ picture }: Pen, { at: [x, y], layer }: Letter): number | null {
  const { scene, view } = picture;
  const under = scene.areas.find(
    ({ bounds, layer: own }) =>
      own === layer && bounds.x0 <= x && x <= bounds.x1 && bounds.y0 <= y && y <= bounds.y1,
  );
  const high = under === undefined ? 0 : (under.bounds.y1 - under.bounds.y0) * view.scale * view.stretch;
  const size = Math.min(LETTER.most, high * 0.6);
  return size < LETTER.least ? null : size;
}

export function paintNotes(pen: Pen): void {
  const { theme, scene } = pen.picture;
  const look = { size: NOTE_SIZE, color: theme.second, family: LETTERING };
  for (const note of scene.notes) {
    const [x, y] = [pen.x(note.at[0]), pen.y(note.at[1])];
    if (note.line === null) {
      if (roomUnder(scene, pen) >= 2 * NOTE_SIZE) letter(pen.ink, x, y, note.text, look);
      continue;
    }
    const [[column, y0], [, y1]] = note.line;
    const [foot, head] = [pen.y(y0), pen.y(y1)];
    if (foot - head < LEAST_LINE) continue;
    dimensionLine(pen, pen.x(column), foot, head);
    letter(pen.ink, pen.x(column) - 8, y, note.text, { ...look, align: 'right' });
  }
}

/** Pixels that the tube is thick. */
const roomUnder = ({ areas }: Scene, { picture: { view } }: Pen): number => {
  const former = areas.find(({ kind }) => kind === 'former');
  return former === undefined ? 0 : -former.bounds.y0 * view.scale * view.stretch;
};

function dimensionLine({ ink, picture: { theme } }: Pen, x: number, foot: number, head: number): void {
  line(ink, x, foot, x, head, { color: theme.second, width: LINE.dimension });
  ink.beginPath();
  for (const [end, way] of [
    [foot, -1],
    [head, 1],
  ] as const) {
    ink.moveTo(x, end);
    ink.lineTo(x - 3, end + way * 7);
    ink.lineTo(x + 3, end + way * 7);
    ink.closePath();
  }
  ink.fillStyle = theme.second;
  ink.fill();
  stroke(ink, { color: theme.second, width: 0.5 });
}

/** The number that a layer has in the list, in the flange beside it. */
export function paintNumbers(pen: Pen): void {
  const { scene, theme, view } = pen.picture;
  const ends = scene.rulers.x;
  for (const { layer, y0, y1 } of scene.layers) {
    const size = Math.min(NOTE_SIZE, (y1 - y0) * view.scale * view.stretch);
    if (size < LETTER.least) continue;
    const look = { size, color: theme.second, align: 'left', family: LETTERING } as const;
    letter(pen.ink, pen.x(ends[1]) + 5, pen.y((y0 + y1) / 2), `${layer + 1}`, look);
  }
}
