// The former round the layers, and the core round the former.

import { nm, type Nm } from '#units/quantity.ts';
import { chamberFaces } from '#solver/section/fit.ts';
import { type Draft, rect } from '#solver/section/draft.ts';
import type { Rect, SolidRegion } from '#solver/section/section.ts';

/** How thick the core is drawn; no length depends on it. */
export const CORE_DRAWN = nm(500_000);

/** Tube, flanges, dividers: one moulding, unless the former is split; a wound tube is plies with open ends. */
export function layFormer(draft: Draft): void {
  const { build } = draft;
  const faces = chamberFaces(build);
  const [x0, x1] = [-build.flange, faces.at(-1)!.x1 + build.flange];
  const moulded: Omit<SolidRegion, keyof Rect | 'body' | 'closed'> = {
    kind: 'moulding',
    stuff: build.moulding,
    layer: null,
    ply: null,
    crossX: 'measured',
    crossY: 'measured',
    turnUp: nm(0),
    drifted: false,
  };
  const body = () => (build.split ? draft.body() : draft.bodyOf('moulding'));
  const walls = [x0, ...faces.slice(1).map((_, i) => faces[i]!.x1), faces.at(-1)!.x1];
  const ends = [0, ...faces.slice(1).map((face) => face.x0), x1];
  walls.forEach((from, i) =>
    draft.solid(rect(from, 0, ends[i]!, build.height), { ...moulded, body: body() }),
  );
  if (build.wall.kind === 'moulded') {
    draft.solid(rect(x0, -build.wall.thickness, x1, 0), { ...moulded, body: body() });
    return;
  }
  const wall = build.wall;
  draft.plies(nm(x0), nm(x1), nm(-wall.plies * wall.plyThickness), wall, { kind: 'ply' });
}

/**
 * The core on all four sides, or under the tube only where leads leave (they leave on its open sides).
 * `top` is that of the highest stack: a stack higher than the flanges lifts the core.
 */
export function layCore(
  draft: Draft,
  top: Nm,
  openSides: boolean,
): { readonly frame: Rect; readonly coreAbove: Nm | null } {
  const { build } = draft;
  const wall = build.wall;
  const tube = wall.kind === 'moulded' ? wall.thickness : wall.plies * wall.plyThickness;
  const wrap = build.wrap ? build.wrap.plies * build.wrap.plyThickness : 0;
  const [left, right] = [-build.flange, chamberFaces(build).at(-1)!.x1 + build.flange];
  const floor = -tube - wrap;
  const core = {
    conductor: 'core',
    of: 'core',
    layer: null,
    bare: true,
    crossing: false,
    strippedLead: false,
    stretched: false,
  } as const;
  const over = Math.max(build.height, top);
  if (openSides) {
    if (build.wrap) draft.plies(nm(left), nm(right), nm(floor), build.wrap, { kind: 'wrap' });
    draft.conductor(rect(left, floor - CORE_DRAWN, right, floor), core);
    return { frame: rect(left, floor, right, over), coreAbove: null };
  }
  // wound tape lies inside the gap above, and moves the core away elsewhere
  const above = over + Math.max(build.outerGap, wrap);
  if (build.wrap) layWrap(draft, left, floor + wrap, right, above - wrap);
  const [outerLeft, outerRight] = [left - wrap, right + wrap];
  const [x0, x1] = [outerLeft - CORE_DRAWN, outerRight + CORE_DRAWN];
  draft.conductor(rect(x0, floor - CORE_DRAWN, x1, floor), core);
  draft.conductor(rect(x0, above, x1, above + CORE_DRAWN), core);
  draft.conductor(rect(x0, floor, outerLeft, above), core);
  draft.conductor(rect(outerRight, floor, x1, above), core);
  return { frame: rect(outerLeft, floor, outerRight, above), coreAbove: nm(above) };
}

/** Tape on the core's faces: where the wraps of two limbs meet in a corner, their joint is open. */
function layWrap(draft: Draft, left: number, bottom: number, right: number, top: number): void {
  const wrap = draft.build.wrap!;
  const whole = wrap.plies * wrap.plyThickness;
  for (let ply = 0; ply < wrap.plies; ply++) {
    const near = ply * wrap.plyThickness;
    const far = near + wrap.plyThickness;
    const faces = [
      rect(left, bottom - far, right, bottom - near),
      rect(left, top + near, right, top + far),
      rect(left - far, bottom - whole, left - near, top + whole),
      rect(right + near, bottom - whole, right + far, top + whole),
    ];
    for (const face of faces) {
      draft.solid(face, {
        kind: 'wrap',
        body: draft.body(),
        stuff: wrap.stuff,
        layer: null,
        ply,
        crossX: 'measured',
        crossY: 'measured',
        turnUp: nm(0),
        drifted: false,
      });
    }
  }
}
