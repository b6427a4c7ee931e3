// Draws the turns as true circles: overall diameter, conductor, and the circuit's mark on it.
// Where a circle would be too small to see, its whole row stays a textured hull.

import type { CircuitLook, TurnMark } from '#words/design/circuit-look.ts';
import type { Hue } from '#drawing/scene/palette.ts';
import type { Area, Scene, TurnCircle } from '#drawing/scene/scene.ts';
import { element, px, type View } from './svg-view.ts';

/** Below this diameter in pixels a circle says nothing. */
const LEAST_CIRCLE = 3;
/** Below this a mark on it cannot be read. */
const LEAST_MARK = 7;
/** A drawing with more circles than this becomes too large to open; it keeps hulls. */
const MOST_CIRCLES = 8_000;
/** A cover at least this thick (mm) is drawn as a shell; enamel is a coloured ring. */
const SHELL_MM = 0.06;

/** Whether the turns of this area are drawn one by one. */
export function drawsCircles(scene: Scene, view: View): (area: Area) => boolean {
  if (scene.turns.length > MOST_CIRCLES) return () => false;
  const large = new Set(
    scene.turns.filter((turn) => turn.overall * view.kx >= LEAST_CIRCLE).map(({ layer }) => layer),
  );
  return (area) => area.kind === 'turns' && area.layer !== null && large.has(area.layer);
}

export function turns(scene: Scene, view: View, shown: (layer: number) => boolean): string {
  const kinds = new Map<string, string>();
  const uses = scene.turns.flatMap((turn) => {
    const look = scene.looks.find(({ circuit }) => circuit === turn.circuit);
    if (look === undefined || !shown(turn.layer)) return [];
    const key = `${turn.circuit} ${turn.overall} ${turn.conductor}`;
    const id = `${view.prefix}turn${[...kinds.keys(), key].indexOf(key)}`;
    if (!kinds.has(key)) kinds.set(key, element('g', { id }, oneTurn(turn, look, view)));
    return [`<use href="#${id}" x="${px(view.x(turn.x))}" y="${px(view.y(turn.y))}"/>`];
  });
  return element('defs', {}, [...kinds.values()].join('') || ' ') + uses.join('');
}

function oneTurn(turn: TurnCircle, look: CircuitLook, view: View): string {
  const hue = view.theme.circuits[look.hue];
  const stretch = view.ky / view.kx;
  const outer = (turn.overall / 2) * view.kx;
  const shell = (turn.overall - turn.conductor) / 2 >= SHELL_MM;
  const inner = shell ? (turn.conductor / 2) * view.kx : Math.min((turn.conductor / 2) * view.kx, outer - 1);
  const around = shell
    ? disc(outer, stretch, view.theme.materials.cover.fill, hue.ring) +
      disc(inner, stretch, hue.ring, null) +
      disc(inner - 1, stretch, hue.fill, null)
    : disc(outer, stretch, hue.ring, null) + disc(Math.max(0.5, inner), stretch, hue.fill, null);
  return around + (2 * inner >= LEAST_MARK ? markOn(look.mark, hue, inner) : '');
}

const disc = (r: number, stretch: number, fill: string, stroke: string | null): string =>
  element('ellipse', {
    rx: Math.max(0.5, stroke === null ? r : r - 0.5),
    ry: Math.max(0.5, (stroke === null ? r : r - 0.5) * stretch),
    fill,
    stroke,
  });

/** The mark stands upright in the turn and keeps its shape under a radial stretch. */
export function markOn(mark: TurnMark, hue: Hue, r: number): string {
  const thick = Math.max(1.1, Math.min(3, r * 0.13));
  const path = (d: string): string =>
    element('path', { d, stroke: hue.ring, 'stroke-width': thick, fill: 'none' });
  const s = (part: number): string => px(part * r);
  switch (mark) {
    case 'slash':
      return path(`M${s(-0.4)} ${s(0.4)}L${s(0.4)} ${s(-0.4)}`);
    case 'dot':
      return element('circle', { r: Math.max(1, r * 0.24), fill: hue.ring });
    case 'two-bars':
      return path(`M${s(-0.35)} ${s(-0.18)}H${s(0.35)}M${s(-0.35)} ${s(0.18)}H${s(0.35)}`);
    case 'cross':
      return path(
        `M${s(-0.35)} ${s(-0.35)}L${s(0.35)} ${s(0.35)}M${s(-0.35)} ${s(0.35)}L${s(0.35)} ${s(-0.35)}`,
      );
    case 'falling-bars':
      return path(
        `M${s(-0.42)} ${s(-0.3)}H${s(0.42)}M${s(-0.26)} ${s(0)}H${s(0.26)}M${s(-0.12)} ${s(0.3)}H${s(0.12)}`,
      );
    case 'ring':
      return element('circle', {
        r: Math.max(1, r * 0.32),
        fill: 'none',
        stroke: hue.ring,
        'stroke-width': thick,
      });
  }
}
