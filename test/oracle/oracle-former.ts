// The oracle's surroundings: tube, flanges, dividers, core and the tape round it.

import type { Build } from '#solver/section/build.ts';
import type { Region } from '#solver/section/section.ts';
import type { Box } from './box.ts';
import { box, boxes } from './box.ts';
import { chambersOf } from './oracle-stack.ts';
import { conductor, solid } from './oracle-region.ts';

/** Thickness that the core is drawn with; nothing hangs on it. */
const CORE = 1_000_000;

export interface Surroundings {
  readonly regions: readonly Region[];
  readonly frame: Box;
}

/** `top` is the highest stack; leads leave where the core is open, so there it stands only inside the tube. */
export function surroundingsOf(
  build: Build,
  top: number,
  core: 'round' | 'inside-tube',
  body: () => number,
): Surroundings {
  const chambers = chambersOf(build);
  const x0 = -build.flange;
  const x1 = chambers[chambers.length - 1]!.x1 + build.flange;
  const wall =
    build.wall.kind === 'moulded' ? build.wall.thickness : build.wall.plies * build.wall.plyThickness;
  const wrap = build.wrap === null ? 0 : build.wrap.plies * build.wrap.plyThickness;
  const above = Math.max(build.height, top) + Math.max(build.outerGap, wrap);
  const regions = [...former(build, x0, x1, body)];
  const bottom = box(x0, -wall - wrap - CORE, x1, -wall - wrap)!;
  regions.push(...wrapStrips(build, x0, x1, -wall, 'below', body));
  if (core === 'inside-tube') {
    regions.push(conductor(bottom, 'core', 'core', null));
    return { regions, frame: { x0, y0: bottom.y0, x1, y1: above } };
  }
  const frame = { x0: x0 - wrap - CORE, y0: bottom.y0, x1: x1 + wrap + CORE, y1: above + CORE };
  regions.push(...wrapStrips(build, x0, x1, above, 'above', body));
  regions.push(...wrapSides(build, x0, x1, -wall - wrap, above, body));
  const limbs = boxes(
    box(x0 - wrap, frame.y0, x1 + wrap, bottom.y1),
    box(x0 - wrap, above, x1 + wrap, frame.y1),
    box(frame.x0, frame.y0, x0 - wrap, frame.y1),
    box(x1 + wrap, frame.y0, frame.x1, frame.y1),
  );
  regions.push(...limbs.map((limb) => conductor(limb, 'core', 'core', null)));
  return { regions, frame };
}

function former(build: Build, x0: number, x1: number, body: () => number): Region[] {
  const moulding = body();
  const part = (b: Box | null, of: number): Region[] =>
    boxes(b).map((r) => solid(r, 'moulding', build.moulding, of, build.potted));
  const own = (): number => (build.split || build.wall.kind === 'plies' ? body() : moulding);
  const found: Region[] = [];
  const { wall } = build;
  if (wall.kind === 'moulded') found.push(...part(box(x0, -wall.thickness, x1, 0), moulding));
  else {
    for (let ply = 0; ply < wall.plies; ply++) {
      const y1 = -ply * wall.plyThickness;
      const rect = box(x0, y1 - wall.plyThickness, x1, y1)!;
      found.push(solid(rect, 'moulding', wall.stuff, body(), build.potted));
    }
  }
  const chambers = chambersOf(build);
  found.push(
    ...part(box(x0, 0, 0, build.height), own()),
    ...part(box(x1 - build.flange, 0, x1, build.height), own()),
  );
  for (let i = 0; i + 1 < chambers.length; i++) {
    found.push(...part(box(chambers[i]!.x1, 0, chambers[i + 1]!.x0, build.height), own()));
  }
  return found;
}

/** Plies on the core's face inside the tube, or above the window; between the flanges' outer faces. */
function wrapStrips(
  build: Build,
  x0: number,
  x1: number,
  y: number,
  where: 'below' | 'above',
  body: () => number,
): Region[] {
  const { wrap } = build;
  if (wrap === null) return [];
  return Array.from({ length: wrap.plies }, (_, ply) => {
    const y1 = y - ply * wrap.plyThickness;
    const rect = box(x0, y1 - wrap.plyThickness, x1, y1)!;
    return solid(rect, 'wrap', wrap.stuff, body(), build.potted, {
      ply: where === 'below' ? ply : wrap.plies - 1 - ply,
    });
  });
}

function wrapSides(
  build: Build,
  x0: number,
  x1: number,
  y0: number,
  y1: number,
  body: () => number,
): Region[] {
  const { wrap } = build;
  if (wrap === null) return [];
  return Array.from({ length: wrap.plies }, (_, ply) => {
    const near = ply * wrap.plyThickness;
    const far = near + wrap.plyThickness;
    return [box(x0 - far, y0, x0 - near, y1)!, box(x1 + near, y0, x1 + far, y1)!].map((rect) =>
      solid(rect, 'wrap', wrap.stuff, body(), build.potted, { ply }),
    );
  }).flat();
}
