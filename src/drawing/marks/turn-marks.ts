// The turns as true circles: overall diameter in the circuit's ring colour, the conductor on it, the mark on that. All
// turns of one look are one stamp. Under a radial stretch they are ellipses; the marks keep their shape.

import type { TurnMark } from '#words/design/circuit-look.ts';
import type { Hue } from '#drawing/scene/palette.ts';
import type { Scene, TurnCircle } from '#drawing/scene/scene.ts';
import type { CircleMark, LineMark, Point, StampMark } from '#drawing/paper/mark.ts';
import { place, type Paper } from '#drawing/paper/paper.ts';

/** Pixels across below which a circle says nothing, and below which its mark cannot be read. */
const LEAST_CIRCLE = 3;
const LEAST_MARK = 7;
/** More circles than this make a drawing that no one can open; it keeps hulls. */
const MOST_CIRCLES = 8_000;
/** A cover at least this thick (mm) is drawn as a shell; enamel is a coloured ring. */
const SHELL_MM = 0.06;

/** Layers whose turns are large enough to be drawn one by one. */
export function circledLayers({ turns }: Scene, { view }: Paper): ReadonlySet<number> {
  if (turns.length > MOST_CIRCLES) return new Set();
  const large = turns.filter(({ overall }) => overall * view.scale >= LEAST_CIRCLE);
  return new Set(large.map(({ layer }) => layer));
}

export function turnMarks(scene: Scene, paper: Paper, circled: ReadonlySet<number>): readonly StampMark[] {
  const kinds = new Map<string, { readonly turn: TurnCircle; readonly at: Point[] }>();
  for (const turn of scene.turns) {
    if (!circled.has(turn.layer)) continue;
    const at = place(paper, [turn.x, turn.y]);
    if (!isInSight(at, turn, paper)) continue;
    const key = `${turn.circuit} ${turn.overall} ${turn.conductor}`;
    const kind = kinds.get(key);
    if (kind === undefined) kinds.set(key, { turn, at: [at] });
    else kind.at.push(at);
  }
  return [...kinds.values()].flatMap(({ turn, at }): readonly StampMark[] => {
    const look = scene.looks.find(({ circuit }) => circuit === turn.circuit);
    if (look === undefined) return [];
    const hue = paper.theme.circuits[look.hue];
    return [
      { kind: 'stamp', role: `turns ${turn.circuit}`, marks: oneTurn(turn, look.mark, hue, paper), at },
    ];
  });
}

function oneTurn(turn: TurnCircle, mark: TurnMark, hue: Hue, paper: Paper): StampMark['marks'] {
  const { scale } = paper.view;
  const [outer, metal] = [(turn.overall / 2) * scale, (turn.conductor / 2) * scale];
  const ring = Math.max(1, Math.min(2.5, outer * 0.05));
  const { cover } = paper.theme.materials;
  const disc = (r: number, within: number, fill: string, rim: string | null = null): CircleMark => ({
    kind: 'circle',
    role: `${r === outer ? 'turns' : 'conductors'} ${turn.circuit}`,
    at: [0, 0],
    rx: Math.max(0.5, r - within),
    ry: Math.max(0.5, r * paper.view.stretch - within),
    radius: r,
    fill,
    stroke: rim === null ? null : { color: rim, width: 1 },
  });
  const isShell = (turn.overall - turn.conductor) / 2 >= SHELL_MM;
  const discs = isShell
    ? [disc(outer, 0.5, cover.fill, hue.ring), disc(metal, 0, hue.ring), disc(metal, ring, hue.fill)]
    : [disc(outer, 0, hue.ring), disc(metal, Math.max(0, ring - (outer - metal)), hue.fill)];
  const inner = Math.min(metal, outer - 1);
  return 2 * inner >= LEAST_MARK ? [...discs, signMark(mark, hue, inner, `signs ${turn.circuit}`)] : discs;
}

/** A circuit's sign round 0, 0, for a turn of this radius. */
export function signMark(sign: TurnMark, { ring }: Hue, radius: number, role: string): CircleMark | LineMark {
  const stroke = { color: ring, width: Math.max(1.1, Math.min(3, radius * 0.13)) };
  if (sign === 'dot' || sign === 'ring') {
    const r = Math.max(1, radius * (sign === 'dot' ? 0.24 : 0.32));
    const look = sign === 'dot' ? { fill: ring, stroke: null } : { fill: null, stroke };
    return { kind: 'circle', role, at: [0, 0], rx: r, ry: r, ...look };
  }
  const runs = STROKES[sign].map(([x0, y0, x1, y1]): readonly Point[] => [
    [x0 * radius, y0 * radius],
    [x1 * radius, y1 * radius],
  ]);
  return { kind: 'line', role, runs, stroke };
}

/** Ends of straight strokes as parts of the radius. */
const STROKES = {
  slash: [[-0.4, 0.4, 0.4, -0.4]],
  'two-bars': [
    [-0.35, -0.18, 0.35, -0.18],
    [-0.35, 0.18, 0.35, 0.18],
  ],
  cross: [
    [-0.35, -0.35, 0.35, 0.35],
    [-0.35, 0.35, 0.35, -0.35],
  ],
  'falling-bars': [
    [-0.42, -0.3, 0.42, -0.3],
    [-0.26, 0, 0.26, 0],
    [-0.12, 0.3, 0.12, 0.3],
  ],
} as const;

function isInSight([x, y]: Point, { overall }: TurnCircle, { bounds, view }: Paper): boolean {
  const [across, up] = [overall * view.scale, overall * view.scale * view.stretch];
  return (
    x > bounds.left - across && x < bounds.right + across && y > bounds.top - up && y < bounds.bottom + up
  );
}
