// A scene as a DXF drawing (the oldest ASCII form, which everything reads), in millimetres, y outward. Written from the same
// marks as the other drawings; one layer a role; texts keep to the signs of ASCII.
// The header names the unit: 4 is millimetres, so that no reader has to guess whether they are inches.

import type { CircleMark, Mark, Point, WordsMark } from '#drawing/paper/mark.ts';
import { guessedWidth, place, type Paper } from '#drawing/paper/paper.ts';
import { ALL_STRONG } from '#drawing/marks/path-marks.ts';
import { groundMarks, otherPathMarks, pathAndFlagMarks } from '#drawing/marks/section-marks.ts';
import { flagPlaces } from '#drawing/scene/flag-places.ts';
import { palette } from '#drawing/scene/palette.ts';
import type { Scene } from '#drawing/scene/scene.ts';

/** Pixels a millimetre: letters of 12.5 pixels become 0.21 mm high, plies of 0.06 mm are drawn one by one. */
const SCALE = 60;
const MILLIMETRES = 4;
const METRIC = 1;

export function dxfOf(scene: Scene): string {
  const paper = paperOf(scene);
  const here = scene.flags.filter((flag) => flag.here);
  const flags = flagPlaces(here, (at) => place(paper, at));
  const marks = [
    ...groundMarks(scene, paper, true),
    ...otherPathMarks(scene, paper),
    ...pathAndFlagMarks(scene, paper, flags, { told: ALL_STRONG, picked: null }),
    titleOf(scene, paper),
  ];
  const entities = section('ENTITIES', marks.flatMap(entitiesOf));
  return [...headerOf(scene), ...entities, ...pair(0, 'EOF')].join('\r\n') + '\r\n';
}

const paperOf = (scene: Scene): Paper => ({
  theme: palette.print,
  view: { scale: SCALE, stretch: 1, left: 0, base: 0 },
  bounds: edges(scene, 10),
  room: edges(scene, 1),
  density: null,
  measure: guessedWidth,
});

const titleOf = ({ frame, title, says }: Scene, paper: Paper): WordsMark => ({
  kind: 'words',
  role: 'text',
  at: place(paper, [frame.x0, frame.y0 - 0.6]),
  words: `${title}, ${says}`,
  size: 12,
  color: '',
  align: 'left',
});

const headerOf = ({ frame }: Scene): readonly string[] =>
  section('HEADER', [
    ...pair(9, '$ACADVER'),
    ...pair(1, 'AC1009'),
    ...pair(9, '$INSUNITS'),
    ...whole(70, MILLIMETRES),
    ...pair(9, '$MEASUREMENT'),
    ...whole(70, METRIC),
    ...pair(9, '$EXTMIN'),
    ...pair(10, frame.x0),
    ...pair(20, frame.y0),
    ...pair(9, '$EXTMAX'),
    ...pair(10, frame.x1),
    ...pair(20, frame.y1),
  ]);

/** The frame with so many millimetres round it, in pixels. */
const edges = ({ frame: { x0, y0, x1, y1 } }: Scene, round: number): Paper['bounds'] => ({
  left: (x0 - round) * SCALE,
  right: (x1 + round) * SCALE,
  top: -(y1 + round) * SCALE,
  bottom: -(y0 - round) * SCALE,
});

function entitiesOf(mark: Mark): readonly string[] {
  const layer = layerName(mark.role);
  switch (mark.kind) {
    case 'area':
      return mark.loops.flatMap((loop) => polyline(layer, loop, true));
    case 'line':
      return mark.runs.flatMap((run) => polyline(layer, run, false));
    case 'circle':
      return circle(layer, mark);
    case 'words':
      return text(layer, mark);
    case 'chip':
      return text(layer, { ...mark, kind: 'words' });
    case 'stamp': {
      const figures = mark.marks.filter((each, k) => !repeats(each, mark.marks.slice(0, k)));
      return mark.at.flatMap((at) => figures.flatMap((figure) => entitiesOf(moved(figure, at))));
    }
  }
}

/** A disc within a rim of the same radius is the same circle. */
const repeats = (mark: Mark, earlier: readonly Mark[]): boolean =>
  mark.kind === 'circle' &&
  mark.radius !== undefined &&
  earlier.some((other) => other.kind === 'circle' && other.radius === mark.radius);

function moved(mark: Mark, [dx, dy]: Point): Mark {
  const by = ([x, y]: Point): Point => [x + dx, y + dy];
  if (mark.kind === 'area') return { ...mark, loops: mark.loops.map((loop) => loop.map(by)) };
  if (mark.kind === 'line') return { ...mark, runs: mark.runs.map((run) => run.map(by)) };
  return mark.kind === 'stamp' ? mark : { ...mark, at: by(mark.at) };
}

const pair = (code: number, value: string | number): readonly string[] => [
  String(code),
  typeof value === 'number' ? figure(value) : value,
];

const whole = (code: number, value: number): readonly string[] => [String(code), String(value)];

/** Whole nanometres, never an exponent. */
const figure = (value: number): string => (Math.round(value * 1e6) / 1e6 + 0).toFixed(6);

const spot = ([x, y]: Point, codes: readonly [number, number] = [10, 20]): readonly string[] => [
  ...pair(codes[0], x / SCALE),
  ...pair(codes[1], -y / SCALE),
];

const section = (name: string, content: readonly string[]): readonly string[] => [
  ...pair(0, 'SECTION'),
  ...pair(2, name),
  ...content,
  ...pair(0, 'ENDSEC'),
];

function polyline(layer: string, points: readonly Point[], closed: boolean): readonly string[] {
  const corners = points.flatMap((point) => [...pair(0, 'VERTEX'), ...pair(8, layer), ...spot(point)]);
  const start = [...pair(0, 'POLYLINE'), ...pair(8, layer), ...whole(66, 1), ...whole(70, closed ? 1 : 0)];
  return [...start, ...corners, ...pair(0, 'SEQEND'), ...pair(8, layer)];
}

const circle = (layer: string, { at, rx, radius = rx }: CircleMark): readonly string[] => [
  ...pair(0, 'CIRCLE'),
  ...pair(8, layer),
  ...spot(at),
  ...pair(40, radius / SCALE),
];

/** Code 72 is where along the line the place lies, 73 that it is the middle of its height. */
function text(layer: string, { at, words, size, align }: WordsMark): readonly string[] {
  const along = { left: 0, center: 1, right: 2 }[align ?? 'center'];
  return [
    ...pair(0, 'TEXT'),
    ...pair(8, layer),
    ...spot(at),
    ...pair(40, size / SCALE),
    ...pair(1, plainText(words)),
    ...whole(72, along),
    ...spot(at, [11, 21]),
    ...whole(73, 2),
  ];
}

/** Names of layers: capitals, digits and underscores only. */
const layerName = (role: string): string =>
  plainText(role)
    .toUpperCase()
    .replace(/[^A-Z0-9_]/g, '_')
    .slice(0, 31);

const plainText = (words: string): string => words.replace(/[^\x20-\x7e]/g, '?');
