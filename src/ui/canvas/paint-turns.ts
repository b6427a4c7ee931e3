// Paints the turns as true circles: overall diameter in the circuit's ring colour, the conductor on it, the mark on that.
// All circles of one look are one path, so that a thousand of them cost what ten do. Under a radial stretch they are
// ellipses; the marks keep their shape.

import type { TurnMark } from '#words/design/circuit-look.ts';
import type { Hue } from '#drawing/scene/palette.ts';
import type { TurnCircle } from '#drawing/scene/scene.ts';
import { unreachable } from '#units/unreachable.ts';
import { stroke, type Ink, type Pen } from './pen.ts';

/** Pixels across below which a circle says nothing, and below which its mark cannot be read. */
const LEAST_CIRCLE = 3;
const LEAST_MARK = 7;
/** A cover at least this thick (mm) is drawn as a shell; enamel is a coloured ring. */
const SHELL_MM = 0.06;

/** Layers whose turns are large enough to be drawn one by one. */
export const circledLayers = ({ picture }: Pen): ReadonlySet<number> =>
  new Set(
    picture.scene.turns
      .filter(({ overall }) => overall * picture.view.scale >= LEAST_CIRCLE)
      .map(({ layer }) => layer),
  );

export function paintTurns(pen: Pen, circled: ReadonlySet<number>): void {
  const kinds = new Map<string, TurnCircle[]>();
  for (const turn of pen.picture.scene.turns) {
    if (!circled.has(turn.layer) || !isInSight(pen, turn)) continue;
    const key = `${turn.circuit} ${turn.overall} ${turn.conductor}`;
    const kind = kinds.get(key);
    if (kind === undefined) kinds.set(key, [turn]);
    else kind.push(turn);
  }
  kinds.forEach((turns) => paintKind(pen, turns));
}

function paintKind(pen: Pen, turns: readonly TurnCircle[]): void {
  const [first] = turns;
  const { scene, theme, view } = pen.picture;
  const look = scene.looks.find(({ circuit }) => circuit === first?.circuit);
  if (first === undefined || look === undefined) return;
  const hue = theme.circuits[look.hue];
  const outer = (first.overall / 2) * view.scale;
  const metal = (first.conductor / 2) * view.scale;
  const ring = Math.max(1, Math.min(2.5, outer * 0.05));
  if ((first.overall - first.conductor) / 2 >= SHELL_MM) {
    discs(pen, turns, outer, 0.5, theme.materials.cover.fill);
    stroke(pen.ink, { color: hue.ring, width: 1 });
    discs(pen, turns, metal, 0, hue.ring);
    discs(pen, turns, metal, ring, hue.fill);
  } else {
    discs(pen, turns, outer, 0, hue.ring);
    discs(pen, turns, outer, Math.max(ring, outer - metal), hue.fill);
  }
  const inner = Math.min(metal, outer - 1);
  if (2 * inner >= LEAST_MARK) marks(pen, turns, look.mark, hue, inner);
}

/** `within`: pixels inside the radius, the same both ways, so that a ring keeps its width under a stretch. */
function discs(
  { ink, x, y, picture }: Pen,
  turns: readonly TurnCircle[],
  radius: number,
  within: number,
  fill: string,
): void {
  const across = Math.max(0.5, radius - within);
  const up = Math.max(0.5, radius * picture.view.stretch - within);
  ink.beginPath();
  for (const turn of turns) {
    ink.moveTo(x(turn.x) + across, y(turn.y));
    ink.ellipse(x(turn.x), y(turn.y), across, up, 0, 0, 2 * Math.PI);
  }
  ink.fillStyle = fill;
  ink.fill();
}

function marks(
  { ink, x, y }: Pen,
  turns: readonly TurnCircle[],
  mark: TurnMark,
  hue: Hue,
  radius: number,
): void {
  ink.beginPath();
  for (const turn of turns) markPath(ink, mark, x(turn.x), y(turn.y), radius);
  if (mark === 'dot') {
    ink.fillStyle = hue.ring;
    ink.fill();
  } else stroke(ink, { color: hue.ring, width: Math.max(1.1, Math.min(3, radius * 0.13)) });
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

function markPath(ink: Ink, mark: TurnMark, x: number, y: number, radius: number): void {
  switch (mark) {
    case 'dot':
    case 'ring': {
      const across = Math.max(1, radius * (mark === 'dot' ? 0.24 : 0.32));
      ink.moveTo(x + across, y);
      ink.arc(x, y, across, 0, 2 * Math.PI);
      return;
    }
    case 'slash':
    case 'two-bars':
    case 'cross':
    case 'falling-bars':
      for (const [x0, y0, x1, y1] of STROKES[mark]) {
        ink.moveTo(x + x0 * radius, y + y0 * radius);
        ink.lineTo(x + x1 * radius, y + y1 * radius);
      }
      return;
    default:
      unreachable(mark);
  }
}

function isInSight({ x, y, picture }: Pen, { x: atX, y: atY, overall }: TurnCircle): boolean {
  const { width, height, view } = picture;
  const [across, up] = [overall * view.scale, overall * view.scale * view.stretch];
  const [column, row] = [x(atX), y(atY)];
  return column > -across && column < width + across && row > -up && row < height + up;
}
