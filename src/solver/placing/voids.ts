// Voids in the bands of windings: into them the tape above may sag.

import { rect } from '#solver/section/draft.ts';
import type { Band, Rect, Region, Section } from '#solver/section/section.ts';
import type { Nm } from '#units/quantity.ts';

/** There is a void beside a winding that the tape above can sag into. */
export function hasVoid(section: Section): boolean {
  return voidsOf(section.bands, section.chambers).some((band) => {
    const inside = section.regions.filter(
      (r) => r.x0 < band.x1 && r.x1 > band.x0 && r.y0 < band.y1 && r.y1 > band.y0,
    );
    return (
      !isFilledAcross(inside, band) && coveredArea(inside, band) < (band.x1 - band.x0) * (band.y1 - band.y0)
    );
  });
}

/** Bands of windings over the whole width of their chamber. */
export const voidsOf = (bands: readonly Band[], faces: Section['chambers']): readonly Rect[] =>
  bands
    .filter((band) => band.kind === 'winding' || band.kind === 'crossing-lead')
    .map((band) => rect(faces[band.chamber]!.x0, band.y0, faces[band.chamber]!.x1, band.y1));

/** Regions as high as the band fill it from end to end: most bands, and quicker told than by their area. */
function isFilledAcross(regions: readonly Region[], { x0, x1, y0, y1 }: Section['frame']): boolean {
  let filled: number = x0;
  for (let before = -Infinity; filled < x1 && filled > before;) {
    before = filled;
    for (const r of regions) if (r.x0 <= filled && r.x1 > filled && r.y0 <= y0 && r.y1 >= y1) filled = r.x1;
  }
  return filled >= x1;
}

function coveredArea(regions: readonly Region[], band: Section['frame']): number {
  const within = (at: number, from: Nm, to: Nm) => Math.min(Math.max(at, from), to);
  const cuts = (values: number[]) => [...new Set(values)].sort((a, b) => a - b);
  const xs = cuts(regions.flatMap((r) => [within(r.x0, band.x0, band.x1), within(r.x1, band.x0, band.x1)]));
  const ys = cuts(regions.flatMap((r) => [within(r.y0, band.y0, band.y1), within(r.y1, band.y0, band.y1)]));
  let area = 0;
  for (let i = 1; i < xs.length; i++) {
    for (let j = 1; j < ys.length; j++) {
      const [x0, x1, y0, y1] = [xs[i - 1]!, xs[i]!, ys[j - 1]!, ys[j]!];
      const filled = regions.some((r) => r.x0 <= x0 && r.x1 >= x1 && r.y0 <= y0 && r.y1 >= y1);
      if (filled) area += (x1 - x0) * (y1 - y0);
    }
  }
  return area;
}
