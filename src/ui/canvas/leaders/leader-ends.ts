// From where on the drawing a line leads to a row of the list: a dot in each layer near its right end, one on the core and
// one on the tube, in pixels of the stage. What is out of sight has none.

import type { Area } from '#drawing/scene/scene.ts';
import type { Picture } from '#ui/canvas/nodes/picture.ts';
import { toScreenX, toScreenY } from '#drawing/scene/view.ts';

export interface LeaderEnd {
  readonly part: number | 'core' | 'former';
  readonly x: number;
  readonly y: number;
  /** Where the line may bend: just outside the core. */
  readonly bend: number;
}

const INSIDE_PX = 12;
const OUTSIDE_PX = 8;

export function leaderEnds({ scene, view, room, width }: Picture): readonly LeaderEnd[] {
  const bend = Math.min(width, toScreenX(view, scene.frame.x1) + OUTSIDE_PX);
  const last = Math.max(...scene.layers.map(({ chamber }) => chamber));
  const layers = scene.layers.map(({ layer, chamber, kind, x1, y0, y1 }) => {
    // beside a winding lies its margin; a line through another chamber would only confuse
    const end = kind === 'winding' && chamber === last ? scene.rulers.x[1] : x1;
    return { part: layer, x: toScreenX(view, end) - INSIDE_PX, y: toScreenY(view, (y0 + y1) / 2) };
  });
  const solids = (['core', 'former'] as const).flatMap((kind) => {
    const area = scene.areas.find((each) => each.kind === kind);
    // where leads leave there is core under the tube only, and its row is at the other end of the list
    const isAside = kind === 'core' && area !== undefined && area.bounds.y1 <= 0;
    return area === undefined || isAside ? [] : [{ part: kind, ...solidEnd(area, scene.rulers.x[1], view) }];
  });
  return [...layers, ...solids]
    .filter(({ x, y }) => x >= room.left && x <= room.right && y >= room.top && y <= room.bottom)
    .map((end) => ({ ...end, bend: Math.max(bend, end.x) }));
}

/** In the core's right limb; in the tube below the last layer's end. */
function solidEnd({ kind, bounds }: Area, right: number, view: Picture['view']): { x: number; y: number } {
  const { scale, stretch } = view;
  if (kind === 'former') return { x: toScreenX(view, right) + INSIDE_PX, y: toScreenY(view, bounds.y0 / 2) };
  const inside = OUTSIDE_PX / scale;
  return {
    x: toScreenX(view, bounds.x1 - inside),
    y: toScreenY(view, bounds.y1 - (3 * OUTSIDE_PX) / (scale * stretch)),
  };
}
