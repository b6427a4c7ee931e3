// Paints the filled figures of a section: core, former, blocks, plies one by one, sleeves, covers, leads, screens,
// and the rows of turns as hulls. Plies too thin to tell apart become one band under one rim.

import { LINE, type Hue, type Theme } from '#drawing/scene/palette.ts';
import type { Area } from '#drawing/scene/scene.ts';
import { hatch } from './hatch-tiles.ts';
import { stroke, type Pen, type Stroke } from './pen.ts';

/** Screen pixels of a ply from which its own joints are drawn. */
const COUNTABLE = 3;

/** `circled`: layers whose turns are drawn one by one; their hulls stay bare. */
export function paintSolids(pen: Pen, circled: ReadonlySet<number>): void {
  for (const area of pen.picture.scene.areas) {
    outline(pen, area);
    const { fill, rim } = look(pen, area, circled);
    if (fill !== null) {
      pen.ink.fillStyle = fill;
      pen.ink.fill();
    }
    if (rim !== null) stroke(pen.ink, rim);
  }
  bands(pen);
}

function outline({ ink, crispX, crispY }: Pen, area: Area): void {
  ink.beginPath();
  for (const loop of area.loops) {
    loop.forEach(([x, y], place) => {
      if (place === 0) ink.moveTo(crispX(x), crispY(y));
      else ink.lineTo(crispX(x), crispY(y));
    });
    ink.closePath();
  }
}

interface Look {
  readonly fill: CanvasPattern | string | null;
  readonly rim: Stroke | null;
}

function look(pen: Pen, area: Area, circled: ReadonlySet<number>): Look {
  const { theme, scene } = pen.picture;
  const circuit = scene.looks.find((each) => each.circuit === area.circuit);
  const hue = circuit === undefined ? floating(theme) : theme.circuits[circuit.hue];
  switch (area.kind) {
    case 'turns': {
      const rim = { color: hue.ring, width: LINE.joint };
      if (area.layer !== null && circled.has(area.layer))
        return { fill: null, rim: { ...rim, dash: [3, 2.5] } };
      return { fill: circuit === undefined ? hue.fill : hatch(pen, circuit.hue), rim };
    }
    case 'lead':
      return { fill: hue.fill, rim: { color: hue.ring, width: LINE.solid } };
    case 'screen':
      return { fill: hue.ring, rim: { color: hue.ring, width: LINE.hatch } };
    case 'ply':
      return { fill: hatch(pen, 'ply'), rim: isCountable(pen, area) ? joint(theme) : null };
    case 'core':
    case 'former':
    case 'block':
    case 'wrap':
    case 'sleeve':
    case 'cover':
      return {
        fill: hatch(pen, area.kind),
        rim: { color: theme.materials[area.kind].rim, width: RIM[area.kind] },
      };
  }
}

/** One rim for the tape layers whose plies have none of their own. */
function bands({ ink, crispX, crispY, picture }: Pen): void {
  const { scene, theme, view, density } = picture;
  for (const layer of scene.layers) {
    if (layer.kind !== 'tape') continue;
    const ply = scene.areas.find((area) => area.kind === 'ply' && area.layer === layer.layer);
    const thick = ply === undefined ? 0 : ply.bounds.y1 - ply.bounds.y0;
    if (thick * view.scale * view.stretch * density >= COUNTABLE) continue;
    ink.beginPath();
    ink.rect(
      crispX(layer.x0),
      crispY(layer.y1),
      crispX(layer.x1) - crispX(layer.x0),
      crispY(layer.y0) - crispY(layer.y1),
    );
    stroke(ink, { ...joint(theme), width: LINE.hatch });
  }
}

const isCountable = ({ picture }: Pen, { bounds }: Area): boolean =>
  (bounds.y1 - bounds.y0) * picture.view.scale * picture.view.stretch * picture.density >= COUNTABLE;

const joint = (theme: Theme): Stroke => ({ color: theme.materials.ply.rim, width: LINE.joint });

const RIM = {
  core: LINE.frame,
  former: LINE.solid,
  block: LINE.block,
  wrap: LINE.joint,
  sleeve: LINE.dimension,
  cover: LINE.block,
} as const;

/** What no circuit owns: a floating screen is drawn as bare metal. */
const floating = (theme: Theme): Hue => ({ ring: theme.ink, fill: theme.hair });
