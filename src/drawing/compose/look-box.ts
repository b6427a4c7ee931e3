// The part of a section that shows one thing close: a ply, a margin block, a sleeve, the corner at the flange, the weakest path.
// Millimetres. Null where the section has no such thing.

import type { Look } from '#words/glossary/drawn-as.ts';
import type { Box } from '#drawing/scene/outline.ts';
import type { Area, Scene } from '#drawing/scene/scene.ts';

/** Free space round what is looked at, and the least that is shown, mm. */
const ROUND = 0.5;
const LEAST = 2.2;

/** `ratio`: width over height of the picture. */
export function lookBox(scene: Scene, look: Look, ratio: number): Box | null {
  const thing = thingOf(scene, look);
  return thing === null ? null : fitted(thing, look === 'whole' ? 0.1 : ROUND, ratio);
}

function thingOf(scene: Scene, look: Look): Box | null {
  const [x0, x1] = scene.rulers.x;
  const top = Math.max(...scene.layers.map(({ y1 }) => y1), 0);
  switch (look) {
    case 'whole':
      return scene.frame;
    case 'corner':
      return { x0, x1: x0 + (x1 - x0) / 3, y0: 0, y1: top };
    case 'flange': {
      const tape = scene.layers.find(({ kind }) => kind === 'tape');
      const y = tape === undefined ? top / 2 : (tape.y0 + tape.y1) / 2;
      return { x0: x0 - 0.4, x1: x0 + 1.2, y0: y - 0.4, y1: y + 0.4 };
    }
    case 'wall':
      return { x0, x1: x0 + 3, y0: Math.min(0, scene.frame.y0), y1: 0.6 };
    case 'path':
    case 'air':
      return pathBox(scene);
    case 'turn': {
      const [turn] = scene.turns.toSorted((a, b) => b.overall - a.overall);
      return turn === undefined
        ? null
        : {
            x0: turn.x - turn.overall,
            x1: turn.x + turn.overall,
            y0: turn.y - turn.overall,
            y1: turn.y + turn.overall,
          };
    }
    case 'ply':
      return middleOf(scene.areas.find(({ kind }) => kind === 'ply'));
    case 'screen':
      return endOf(scene.areas.find(({ kind }) => kind === 'screen'));
    default:
      return scene.areas.find(({ kind }) => kind === look)?.bounds ?? null;
  }
}

function pathBox({ path }: Scene): Box | null {
  if (path === null) return null;
  const points = path.legs.flatMap(({ from, to }) => [from, to]);
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return { x0: Math.min(...xs), x1: Math.max(...xs), y0: Math.min(...ys), y1: Math.max(...ys) };
}

/** A level thing is too long to be seen whole: its middle. */
function middleOf(area: Area | undefined): Box | null {
  if (area === undefined) return null;
  const { bounds } = area;
  const x = (bounds.x0 + bounds.x1) / 2;
  return { ...bounds, x0: x - 0.8, x1: x + 0.8 };
}

const endOf = (area: Area | undefined): Box | null =>
  area === undefined ? null : { ...area.bounds, x1: Math.min(area.bounds.x1, area.bounds.x0 + 2.5) };

/** Of the picture's own shape, with the thing in its middle. */
function fitted(box: Box, round: number, ratio: number): Box {
  const least = round < ROUND ? 0 : LEAST;
  const [across, up] = [box.x1 - box.x0 + 2 * round, box.y1 - box.y0 + 2 * round];
  const width = Math.max(across, up * ratio, least);
  const [x, y] = [(box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2];
  return { x0: x - width / 2, x1: x + width / 2, y0: y - width / ratio / 2, y1: y + width / ratio / 2 };
}
