// The few words on a section: the circuits' letters, the tube's thickness, the air to the core, the numbers of the layers.

import { LINE } from '#drawing/scene/palette.ts';
import type { Note, Letter, Scene } from '#drawing/scene/scene.ts';
import { toScreenX, toScreenY, type Plate } from '#drawing/scene/view.ts';
import type { Mark, Point, WordsMark } from '#drawing/paper/mark.ts';
import { place, scaleUp, type Paper } from '#drawing/paper/paper.ts';
import { arrowHead, chip, chipWidth, line } from '#drawing/paper/shapes.ts';

const LETTER = { most: 12.5, least: 9 } as const;
/** 8.25 pt, where a pixel of the drawing is one of the printed page. */
const LEAST_PRINTED = 11;
const NOTE_SIZE = 11.5;
const ROLE = 'words';
const SMALL = 11;
/** Pixels above the stack: what is missing stands between. */
const OVER_FIGURES = 48;
/** Pixels between the columns of layer numbers. */
const COLUMN = 14;
/** A dimension line shorter than this has no room for its arrows. */
const LEAST_LINE = 14;

export function letterMarks(scene: Scene, paper: Paper): readonly Mark[] {
  return scene.letters.flatMap((each) => {
    const size = letterSize(scene, paper, each);
    const hue = scene.looks.find(({ circuit }) => circuit === each.circuit)?.hue;
    if (size === null || hue === undefined) return [];
    const ink = paper.theme.circuits[hue].ring;
    const look = { fill: paper.theme.sheet, rim: ink, color: ink, size };
    return [chip(paper, ROLE, place(paper, each.at), each.letter, look)];
  });
}

/** A letter never stands higher than what it names; null where it could not be read. */
function letterSize({ areas }: Scene, paper: Paper, { at: [x, y], layer }: Letter): number | null {
  const under = areas.find(
    ({ bounds: b, layer: own }) => own === layer && b.x0 <= x && x <= b.x1 && b.y0 <= y && y <= b.y1,
  );
  const high = under === undefined ? 0 : (under.bounds.y1 - under.bounds.y0) * scaleUp(paper);
  const size = Math.min(LETTER.most, high * 0.6);
  if (size < LETTER.least) return null;
  return paper.printed === true ? Math.max(LEAST_PRINTED, size) : size;
}

export const noteMarks = (scene: Scene, paper: Paper): readonly Mark[] =>
  scene.notes.flatMap((note) => noteMark(note, scene, paper));

function noteMark(note: Note, scene: Scene, paper: Paper): readonly Mark[] {
  const at = place(paper, note.at);
  const words = note.text;
  const look = { size: NOTE_SIZE, color: paper.theme.second };
  if (note.place === 'above') return aboveStack(at, words, scene, paper);
  if (note.line === null) {
    const isHighEnough = tubeThickness(scene) * scaleUp(paper) >= 2 * NOTE_SIZE;
    return isHighEnough
      ? [{ kind: 'words', role: ROLE, at: inWall(at, words, scene, paper), words, ...look }]
      : [];
  }
  const [foot, head] = [place(paper, note.line[0]), place(paper, note.line[1])];
  if (foot[1] - head[1] < LEAST_LINE) return [];
  const beside: Point = [at[0] - 8, at[1]];
  return [
    line(ROLE, foot, head, { color: look.color, width: LINE.dimension }),
    arrowHead(ROLE, foot, [0, 1], look.color),
    arrowHead(ROLE, head, [0, -1], look.color),
    { kind: 'words', role: ROLE, at: beside, words, align: 'right', ...look },
  ];
}

/** What the notes cover: on a still drawing the figures of the path stand beside them. */
export const notePlates = (scene: Scene, paper: Paper): readonly Plate[] =>
  noteMarks(scene, paper).flatMap((mark) => {
    if (mark.kind !== 'words') return [];
    const width = paper.measure(mark.words, mark.size, false);
    const left = mark.at[0] - { left: 0, center: width / 2, right: width }[mark.align ?? 'center'];
    const [top, bottom] = [mark.at[1] - mark.size / 2, mark.at[1] + mark.size / 2];
    return [{ left, right: left + width, top, bottom }];
  });

/** The tube's thickness stands in its middle, or beside what is said of an unknown tube there. */
function inWall([x, y]: Point, words: string, scene: Scene, paper: Paper): Point {
  const half = paper.measure(words, NOTE_SIZE, false) / 2 + 8;
  const ends = scene.unknowns
    .filter(({ beside }) => !beside)
    .map(({ at, text }) => place(paper, at)[0] + 16 + paper.measure(text, NOTE_SIZE, false));
  return [Math.max(x, ...ends.map((end) => end + half)), y];
}

/** In the air above the stack, over the figures of the path, with a line to what it speaks of. */
function aboveStack(at: Point, words: string, scene: Scene, paper: Paper): readonly Mark[] {
  const { theme, room } = paper;
  const top = place(paper, [0, Math.max(0, ...scene.layers.map(({ y1 }) => y1))])[1] - OVER_FIGURES;
  const half = chipWidth(paper, words, SMALL) / 2 + 4;
  const x = Math.max(room.left + half, Math.min(room.right - half, at[0]));
  const up: Point = [x, top > room.top + SMALL ? top : at[1] - SMALL];
  const look = { fill: theme.sheet, rim: theme.line, color: theme.second, size: SMALL };
  return [
    line(ROLE, at, [at[0], up[1]], { color: theme.line, width: LINE.joint }),
    chip(paper, ROLE, up, words, look),
  ];
}

/** What nobody knew: a question mark on it, and how it was counted. */
export const unknownMarks = (scene: Scene, paper: Paper): readonly Mark[] =>
  scene.unknowns.flatMap(({ text, at, beside }): readonly Mark[] => {
    const { theme } = paper;
    const [x, y] = place(paper, at);
    const sign = { fill: theme.sheet, rim: theme.second, color: theme.second, size: NOTE_SIZE, dash: [3, 2] };
    const words = { size: NOTE_SIZE, color: theme.second, align: 'left' } as const;
    const drawn = [chip(paper, ROLE, [x, y], '?', sign)];
    // in a tube too thin for words the sign alone stands
    if (!beside && tubeThickness(scene) * scaleUp(paper) < 2 * NOTE_SIZE) return drawn;
    return [
      ...drawn,
      { kind: 'words', role: ROLE, at: [x + 16, y + (beside ? 12 : 0)], words: text, ...words },
    ];
  });

const tubeThickness = ({ areas }: Scene): number =>
  -(areas.find(({ kind }) => kind === 'former')?.bounds.y0 ?? 0);

/** The number that a layer has in the list, in the flange beside it. */
export const numberMarks = (scene: Scene, paper: Paper): readonly WordsMark[] =>
  numbersOf(scene, paper).map(({ at, words, size }) => {
    const look = { size, color: paper.theme.second, align: 'left' } as const;
    return { kind: 'words', role: ROLE, at, words, ...look };
  });

/** What the numbers cover: flags stand beside them. */
export const numberPlates = (scene: Scene, paper: NumbersPaper): readonly Plate[] =>
  numbersOf(scene, paper).map(({ at: [x, y], words, size }) => ({
    left: x,
    right: x + words.length * size * 0.6,
    top: y - size / 2,
    bottom: y + size / 2,
  }));

interface LayerNumber {
  readonly at: Point;
  readonly words: string;
  readonly size: number;
}

type NumbersPaper = Pick<Paper, 'view' | 'printed'>;

/** On paper thin layers carry theirs too: where they would lie over one another, side by side. */
function numbersOf({ layers, rulers }: Scene, { view, printed }: NumbersPaper): readonly LayerNumber[] {
  const columns: number[] = printed === true ? [Infinity, Infinity, Infinity] : [Infinity];
  const byHeight = [...layers].sort((a, b) => a.y0 + a.y1 - b.y0 - b.y1);
  return byHeight.flatMap(({ layer, y0, y1 }) => {
    const natural = Math.min(NOTE_SIZE, (y1 - y0) * view.scale * view.stretch);
    const size = printed === true ? Math.max(LEAST_PRINTED, natural) : natural;
    const y = toScreenY(view, (y0 + y1) / 2);
    const column = columns.findIndex((under) => under - y >= size * 0.85);
    if (size < LETTER.least || column < 0) return [];
    columns[column] = y;
    const x = toScreenX(view, rulers.x[1]) + 5 + column * COLUMN;
    return [{ at: [x, y], words: `${layer + 1}`, size }];
  });
}
