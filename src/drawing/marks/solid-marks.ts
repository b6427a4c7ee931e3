// The filled figures of a section: core, former, blocks, plies one by one, sleeves, covers, leads, screens, and the rows of
// turns as hulls. Plies too thin to tell apart become one band under one rim.

import { LINE, type Hue, type Theme } from '#drawing/scene/palette.ts';
import type { Area, Scene } from '#drawing/scene/scene.ts';
import { countedFill, materialFill, textureFill } from '#drawing/paper/hatches.ts';
import type { AreaMark, Fill, Stroke } from '#drawing/paper/mark.ts';
import { crisp, scaleUp, touches, type Paper } from '#drawing/paper/paper.ts';

/** Screen pixels of a ply from which its own joints are drawn. */
const COUNTABLE = 3;
/** The same where ink draws finer than a screen. */
const COUNTABLE_PRINTED = 2;
const UNKNOWN_DASH = [5, 4] as const;
const HULL_DASH = [3, 2.5] as const;

/** `circled`: layers whose turns are drawn one by one; their hulls stay bare. */
export function solidMarks(scene: Scene, paper: Paper, circled: ReadonlySet<number>): readonly AreaMark[] {
  const seen = scene.areas.filter((area) => isInSight(area, paper));
  return [...seen.map((area) => solidMark(area, scene, paper, circled)), ...bands(scene, paper)];
}

function isInSight({ bounds }: Area, paper: Paper): boolean {
  const [left, bottom] = crisp(paper, [bounds.x0, bounds.y0]);
  const [right, top] = crisp(paper, [bounds.x1, bounds.y1]);
  return touches({ left, top, right, bottom }, paper.bounds);
}

function solidMark(area: Area, scene: Scene, paper: Paper, circled: ReadonlySet<number>): AreaMark {
  const drawn = look(area, scene, paper, circled);
  const { fill, stroke } = area.isUnknown === true ? unknownLook(area, drawn, paper) : drawn;
  return {
    kind: 'area',
    role: area.circuit === null ? area.kind : `${area.kind} ${area.circuit}`,
    loops: area.loops.map((loop) => loop.map((corner) => crisp(paper, corner))),
    fill,
    stroke,
  };
}

/** Dashed, and without what would tell a material; metal keeps its circuit's colour. */
function unknownLook({ kind }: Area, { fill, stroke }: Look, { theme }: Paper): Look {
  const plain = kind === 'former' ? theme.materials.former.fill : fill;
  return { fill: plain, stroke: stroke === null ? null : { ...stroke, dash: UNKNOWN_DASH } };
}

interface Look {
  readonly fill: Fill;
  readonly stroke: Stroke | null;
}

function look(area: Area, scene: Scene, paper: Paper, circled: ReadonlySet<number>): Look {
  const { theme } = paper;
  const circuit = scene.looks.find((each) => each.circuit === area.circuit);
  const hue = circuit === undefined ? floating(theme) : theme.circuits[circuit.hue];
  switch (area.kind) {
    case 'turns': {
      const stroke = { color: hue.ring, width: LINE.joint };
      if (area.layer !== null && circled.has(area.layer))
        return { fill: null, stroke: { ...stroke, dash: HULL_DASH } };
      return { fill: circuit === undefined ? hue.fill : textureFill(theme, circuit.hue), stroke };
    }
    case 'counted': {
      const fill = circuit === undefined ? null : countedFill(theme, circuit.hue);
      return { fill, stroke: { color: hue.ring, width: LINE.hatch, dash: HULL_DASH } };
    }
    case 'lead':
      return { fill: hue.fill, stroke: { color: hue.ring, width: LINE.solid } };
    case 'screen':
      return { fill: hue.ring, stroke: { color: hue.ring, width: LINE.hatch } };
    case 'ply':
      return { fill: materialFill(theme, 'ply'), stroke: isCountable(area, paper) ? joint(theme) : null };
    default:
      return {
        fill: materialFill(theme, area.kind),
        stroke: { color: theme.materials[area.kind].rim, width: RIM[area.kind] },
      };
  }
}

/** One rim for the tape layers whose plies have none of their own. */
function bands(scene: Scene, paper: Paper): readonly AreaMark[] {
  return scene.layers.flatMap(({ kind, layer, x0, y0, x1, y1 }): readonly AreaMark[] => {
    if (kind !== 'tape') return [];
    const ply = scene.areas.find((area) => area.kind === 'ply' && area.layer === layer);
    if (ply !== undefined && isCountable(ply, paper)) return [];
    const corners = [
      [x0, y0],
      [x1, y0],
      [x1, y1],
      [x0, y1],
    ] as const;
    const stroke = { ...joint(paper.theme), width: LINE.hatch };
    return [
      {
        kind: 'area',
        role: 'ply',
        loops: [corners.map((corner) => crisp(paper, corner))],
        fill: null,
        stroke,
      },
    ];
  });
}

const isCountable = ({ bounds }: Area, paper: Paper): boolean =>
  (bounds.y1 - bounds.y0) * scaleUp(paper) * (paper.density ?? 1) >=
  (paper.printed === true ? COUNTABLE_PRINTED : COUNTABLE);

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
