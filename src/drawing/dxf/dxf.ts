// A scene as a DXF drawing (the oldest ASCII form, which everything reads), in millimetres, y outward.
// One layer a role; texts keep to the signs of ASCII.

import type { Point } from '#drawing/scene/outline.ts';
import type { Scene } from '#drawing/scene/scene.ts';

export function dxfOf(scene: Scene): string {
  const entities = [
    ...scene.areas.flatMap((area) =>
      area.loops.flatMap((loop) => outline(layerName(area.kind, area.circuit), loop, true)),
    ),
    ...scene.turns.flatMap((turn) => [
      ...circle(layerName('turns', turn.circuit), turn.x, turn.y, turn.overall / 2),
      ...circle(layerName('conductors', turn.circuit), turn.x, turn.y, turn.conductor / 2),
    ]),
    ...[scene.path, ...scene.otherPaths].flatMap((path) =>
      path === null ? [] : path.legs.flatMap(({ from, to }) => outline('PATH', [from, to], false)),
    ),
    ...scene.flags
      .filter(({ here }) => here)
      .flatMap(({ at, number }) => text('SPOTS', at, String(number), 0.25)),
    ...text('TEXT', [scene.frame.x0, scene.frame.y0 - 0.6], `${scene.title}, ${scene.says}`, 0.3),
  ];
  const { frame } = scene;
  const header = section('HEADER', [
    ...pair(9, '$ACADVER'),
    ...pair(1, 'AC1009'),
    ...pair(9, '$EXTMIN'),
    ...pair(10, frame.x0),
    ...pair(20, frame.y0),
    ...pair(9, '$EXTMAX'),
    ...pair(10, frame.x1),
    ...pair(20, frame.y1),
  ]);
  return [...header, ...section('ENTITIES', entities), ...pair(0, 'EOF')].join('\r\n') + '\r\n';
}

const pair = (code: number, value: string | number): readonly string[] => [
  String(code),
  typeof value === 'number' ? figure(value) : value,
];

/** Whole nanometres, never an exponent. */
const figure = (value: number): string => (Math.round(value * 1e6) / 1e6).toFixed(6);

const section = (name: string, content: readonly string[]): readonly string[] => [
  ...pair(0, 'SECTION'),
  ...pair(2, name),
  ...content,
  ...pair(0, 'ENDSEC'),
];

function outline(layer: string, points: readonly Point[], closed: boolean): readonly string[] {
  const corners = points.flatMap(([x, y]) => [
    ...pair(0, 'VERTEX'),
    ...pair(8, layer),
    ...pair(10, x),
    ...pair(20, y),
  ]);
  const start = [...pair(0, 'POLYLINE'), ...pair(8, layer), '66', '1', '70', closed ? '1' : '0'];
  return [...start, ...corners, ...pair(0, 'SEQEND'), ...pair(8, layer)];
}

const circle = (layer: string, x: number, y: number, r: number): readonly string[] =>
  r <= 0 ? [] : [...pair(0, 'CIRCLE'), ...pair(8, layer), ...pair(10, x), ...pair(20, y), ...pair(40, r)];

const text = (layer: string, [x, y]: Point, words: string, height: number): readonly string[] => [
  ...pair(0, 'TEXT'),
  ...pair(8, layer),
  ...pair(10, x),
  ...pair(20, y),
  ...pair(40, height),
  ...pair(1, plainText(words)),
];

/** Names of layers: capitals, digits and underscores only. */
const layerName = (role: string, circuit: string | null): string =>
  plainText(circuit === null ? role : `${role}_${circuit}`)
    .toUpperCase()
    .replace(/[^A-Z0-9_]/g, '_')
    .slice(0, 31);

const plainText = (words: string): string => words.replace(/[^\x20-\x7e]/g, '?');
