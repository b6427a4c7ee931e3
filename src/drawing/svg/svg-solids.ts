// Draws the areas of a scene: frame of the core, former, blocks, plies, sleeves, and conductors that are no turns.

import type { CircuitLook } from '#words/design/circuit-look.ts';
import { LINE, type Hue, type Theme } from '#drawing/scene/palette.ts';
import type { Area, Scene } from '#drawing/scene/scene.ts';
import { materialFill, textureFill } from './svg-patterns.ts';
import { element, px, type View } from './svg-view.ts';

/** `bare`: areas of turns whose circles are drawn; they keep only a dashed hull. */
export function solids(scene: Scene, view: View, bare: (area: Area) => boolean): string {
  return scene.areas.map((area) => solid(area, scene.looks, view, bare(area))).join('');
}

function solid(area: Area, looks: readonly CircuitLook[], view: View, bare: boolean): string {
  const { fill, stroke, width, dash } = paint(area, looks, view, bare);
  return element('path', {
    d: area.loops
      .map((loop) => `M${loop.map(([x, y]) => `${px(view.x(x))} ${px(view.y(y))}`).join('L')}Z`)
      .join(''),
    fill,
    stroke,
    'stroke-width': width,
    'stroke-dasharray': dash,
  });
}

interface Paint {
  readonly fill: string;
  readonly stroke: string;
  readonly width: number;
  readonly dash: string | null;
}

function paint(area: Area, looks: readonly CircuitLook[], view: View, bare: boolean): Paint {
  const look = looks.find(({ circuit }) => circuit === area.circuit);
  const hue = look === undefined ? floating(view.theme) : view.theme.circuits[look.hue];
  switch (area.kind) {
    case 'turns': {
      const fill = bare ? 'none' : look === undefined ? hue.fill : textureFill(view, look.hue);
      return { fill, stroke: hue.ring, width: LINE.joint, dash: bare ? '3 2.5' : null };
    }
    case 'lead':
      return { fill: hue.fill, stroke: hue.ring, width: LINE.solid, dash: null };
    case 'screen':
      return { fill: hue.ring, stroke: hue.ring, width: LINE.hatch, dash: null };
    default:
      return {
        fill: materialFill(view, area.kind),
        stroke: view.theme.materials[area.kind].rim,
        width: RIM[area.kind],
        dash: null,
      };
  }
}

const RIM = {
  core: LINE.frame,
  former: LINE.solid,
  block: LINE.block,
  ply: LINE.joint,
  wrap: LINE.joint,
  sleeve: LINE.dimension,
  cover: LINE.block,
} as const;

/** What no circuit owns: a floating screen is drawn as bare metal. */
const floating = (theme: Theme): Hue => ({ ring: theme.ink, fill: theme.hair });
