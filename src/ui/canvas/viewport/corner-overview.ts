// Where the overview of a close view stands: in the corner of the room that covers least of what is drawn, the free air at the
// upper right where there is some.

import { toScreenX, toScreenY, type Plate, type View } from '#drawing/scene/view.ts';
import type { Box } from '#drawing/scene/outline.ts';
import type { Scene } from '#drawing/scene/scene.ts';
import type { Overview } from './viewport.svelte.ts';
import { centred } from './view.ts';

/** Share of the room's width and height that it takes at most, its widest, and its distance from the edge. */
const SHARE = { width: 0.24, height: 0.3 } as const;
const WIDEST = 220;
const ASIDE = 10;
/** Hiding the path is as bad as hiding so many times the area of the build. */
const PATH_WEIGHT = 4;

/** Null where the room has no space for one. */
export function cornerOverview(scene: Scene, view: View, room: Plate): Overview | null {
  const { frame } = scene;
  const [wide, high] = [frame.x1 - frame.x0, frame.y1 - frame.y0];
  const scale = Math.min(
    Math.min(WIDEST, (room.right - room.left) * SHARE.width) / wide,
    ((room.bottom - room.top) * SHARE.height) / high,
  );
  const [width, height] = [Math.round(wide * scale), Math.round(high * scale)];
  if (width < 60 || height < 20) return null;
  const columns = [room.right - ASIDE - width, room.left + ASIDE];
  const rows = [room.top + ASIDE, room.bottom - ASIDE - height];
  const boxes = rows.flatMap((top) =>
    columns.map((left): Plate => ({ left, top, right: left + width, bottom: top + height })),
  );
  const plates = covered(scene, view);
  const cost = (box: Plate): number =>
    plates.reduce((sum, { plate, weight }) => sum + weight * shared(box, plate), 0);
  const box = boxes.reduce((best, each) => (cost(each) < cost(best) ? each : best));
  return { box, view: centred(frame, box, scale, 1) };
}

function covered(scene: Scene, view: View): readonly { readonly plate: Plate; readonly weight: number }[] {
  const plateOf = ({ x0, y0, x1, y1 }: Box): Plate => ({
    left: toScreenX(view, x0),
    right: toScreenX(view, x1),
    top: toScreenY(view, y1),
    bottom: toScreenY(view, y0),
  });
  const layers = scene.layers.map((box) => ({ plate: plateOf(box), weight: 1 }));
  const legs = (scene.path?.legs ?? []).map(({ from, to }) => ({
    plate: plateOf({
      x0: Math.min(from[0], to[0]) - 0.1,
      x1: Math.max(from[0], to[0]) + 0.1,
      y0: Math.min(from[1], to[1]) - 0.1,
      y1: Math.max(from[1], to[1]) + 0.1,
    }),
    weight: PATH_WEIGHT,
  }));
  return [...layers, ...legs];
}

const shared = (a: Plate, b: Plate): number =>
  Math.max(0, Math.min(a.right, b.right) - Math.max(a.left, b.left)) *
  Math.max(0, Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top));
