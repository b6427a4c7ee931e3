// More plies on a tape that is there, a tape where there is none, wire that brings its own insulation.

import type { WeakSpot } from '#judge/verdict/spot.ts';
import { fieldAt } from '#model/edit/edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Act } from './act.ts';
import { lengthAt } from './file-lengths.ts';

/** Film tape of the tables that three plies of make reinforced insulation at ordinary mains voltages. */
const TAPE = { kind: 'tape', material: 'polyester-tape-25' } as const;
const ENOUGH = 3;
/** Of the thinnest film tapes with their adhesive, mm. */
const THIN_PLY = 0.05;
/** A tape of more plies than these, near a millimetre, is another build. */
const MOST_PLIES = 16;
/** What three extruded layers add to a wire's diameter at least; certified wire of the trade is no thinner. */
const COVER = 0.2;

export function tapeActs(doc: DesignFile, spot: WeakSpot): readonly Act[] {
  const tapes = spot.layers.filter((index) => doc.layers[index]?.kind === 'tape');
  const more = tapes.flatMap((index) => {
    const now = fieldAt(doc, `layers[${index}].plies`);
    const from = typeof now === 'number' ? now : 0;
    return [ENOUGH, from + pliesFor(spot)]
      .filter((plies, i, all) => plies > from && plies <= MOST_PLIES && all.indexOf(plies) === i)
      .map((plies): Act => ({
        kind: 'plies',
        on: `layers[${index}].plies`,
        set: [{ field: `layers[${index}].plies`, to: plies }],
        amount: plies - from,
      }));
  });
  return tapes.length > 0 ? more : [...more, ...between(doc, spot)];
}

/** The way round the edges of a tape grows by its thickness; at least one. */
function pliesFor({ length, required }: WeakSpot): number {
  const missing = length === null || required === null ? 0 : required - length;
  return Math.max(1, Math.ceil(missing / THIN_PLY));
}

/** Three plies over the inner of the two windings. */
function between(doc: DesignFile, spot: WeakSpot): readonly Act[] {
  const windings = spot.layers.filter((index) => doc.layers[index]?.kind === 'winding');
  if (windings.length < 2) return [];
  const outer = Math.max(...windings);
  const chamber = fieldAt(doc, `layers[${outer}].chamber`);
  const entry = { ...TAPE, plies: ENOUGH, ...(chamber === undefined ? {} : { chamber }) };
  return [
    {
      kind: 'tape-between',
      on: `layers+${outer}`,
      insert: { list: 'layers', index: outer, entry },
      amount: null,
    },
  ];
}

/** Certified wire with three layers for either of the windings. */
export function wireActs(doc: DesignFile, spot: WeakSpot): readonly Act[] {
  const ids = spot.layers.flatMap((index) => {
    const layer = doc.layers[index];
    return layer?.kind === 'winding' ? [layer.winding] : [];
  });
  return [...new Set(ids)].flatMap((id): readonly Act[] => {
    const index = doc.windings.findIndex((winding) => winding.id === id);
    const wire = `windings[${index}].wire`;
    const conductor = lengthAt(doc, `${wire}.conductor`);
    if (index < 0 || conductor === null || fieldAt(doc, `${wire}.kind`) === 'layer-insulated') return [];
    const to = {
      kind: 'layer-insulated',
      conductor: `${Number(conductor.toFixed(4))} mm`,
      insulationLayers: 3,
      overallDiameter: `${Number((conductor + COVER).toFixed(4))} mm`,
      approval: 'wire-annex',
    };
    return [{ kind: 'wire', on: wire, set: [{ field: wire, to }], amount: null }];
  });
}
