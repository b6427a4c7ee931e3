// The turns of a section as circles, for drawing only: no length is measured from them.

import { nm, type Nm } from '#units/quantity.ts';
import type { Build } from '#solver/section/build.ts';
import { fitOf } from '#solver/section/fit.ts';
import type { Span } from './placing.ts';
import type { Section } from '#solver/section/section.ts';

export interface Turn {
  /** Centre. */
  readonly x: Nm;
  readonly y: Nm;
  /** Diameters over all and of the metal within cover or enamel. */
  readonly overall: Nm;
  readonly conductor: Nm;
  readonly circuit: string;
  /** Index in the file's `layers`. */
  readonly layer: number;
}

/** Row by row from the tube outward, each spread over the width that the winding occupies. */
export function turnsOf(build: Build, section: Section): readonly Turn[] {
  return section.bands.flatMap((band): readonly Turn[] => {
    const layer = build.layers.find(({ index }) => index === band.layer);
    if (band.kind !== 'winding' || layer?.kind !== 'winding') return [];
    const { turnsPerRow, rows } = fitOf(build, layer);
    const { overall, metal, cover } = layer.wire;
    const conductor = cover ? nm(overall - 2 * cover.thickness) : (metal ?? overall);
    const turns: Turn[] = [];
    for (let row = 0; row < rows; row++) {
      const wires = Math.min(turnsPerRow, layer.turns - row * turnsPerRow) * layer.strands;
      const y = band.y0 + (row + 0.5) * overall;
      const { x0, x1 } = spanAt(section, layer.index, y, cover?.thickness ?? 0) ?? band;
      const free = x1 - x0 - overall;
      for (let i = 0; i < wires; i++) {
        // one wire alone stands at the start of the row
        const share = wires === 1 ? 0 : i / (wires - 1);
        turns.push({
          x: nm(Math.round(x0 + overall / 2 + Math.max(0, free) * share)),
          y: nm(Math.round(y)),
          overall,
          conductor,
          circuit: layer.circuit,
          layer: layer.index,
        });
      }
    }
    return turns;
  });
}

/** How far a winding reaches at a height: rows that nothing holds may have gone further than those below. */
function spanAt(section: Section, layer: number, y: number, cover: number): Span | null {
  const here = section.regions.filter(
    (r) => r.kind === 'conductor' && r.of === 'winding' && r.layer === layer && r.y0 <= y && r.y1 >= y,
  );
  if (here.length === 0) return null;
  return {
    x0: nm(Math.min(...here.map(({ x0 }) => x0)) - cover),
    x1: nm(Math.max(...here.map(({ x1 }) => x1)) + cover),
  };
}
