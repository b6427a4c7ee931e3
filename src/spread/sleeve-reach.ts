// How far sleeves reach to their windings. A sleeve is pushed in from the flange, so a wider margin leaves more of the lead
// bare: where one runs through it, a margin is better wider only as long as the sleeve still reaches as far.

import { fieldAt } from '#model/edit/edit-design.ts';
import { quantityField } from '#model/quantity/quantity-field.ts';
import type { DesignFile } from '#model/schema/schema.ts';

const SIDES = ['left', 'right'] as const;
type Side = (typeof SIDES)[number];

interface Sleeved {
  /** Field of how far it reaches in. */
  readonly into: string;
  readonly sides: readonly Side[];
}

/** Leads of a winding, and links between its layers, that lie in a sleeve. */
function sleevedLeads(doc: DesignFile, winding: number): readonly Sleeved[] {
  const at = `windings[${winding}]`;
  const found = doc.windings[winding]?.links;
  const links = Array.isArray(found) ? found : [];
  const ways = [
    ...['start', 'finish'].map((end) => [`${at}.leads.${end}`, ['at', 'exit']] as const),
    ...links.map((_, i) => [`${at}.links[${i}]`, ['side']] as const),
  ];
  return ways.flatMap(([way, ends]): readonly Sleeved[] => {
    if ((fieldAt(doc, `${way}.sleeve`) ?? null) === null) return [];
    const named = ends.map((end) => fieldAt(doc, `${way}.${end}`));
    const isClear = named.every((side) => side === 'left' || side === 'right');
    return [
      { into: `${way}.sleeve.into`, sides: isClear ? SIDES.filter((side) => named.includes(side)) : SIDES },
    ];
  });
}

/** Sleeves that run through the margin of a layer on this side; null where of one nobody knows how far. */
export function sleevesThrough(doc: DesignFile, layer: number, side: Side): readonly string[] | null {
  const entry = doc.layers[layer];
  if (entry?.kind !== 'winding') return [];
  const winding = doc.windings.findIndex(({ id }) => id === entry.winding);
  const through = sleevedLeads(doc, winding).filter(({ sides }) => sides.includes(side));
  return through.every(({ into }) => intervalAt(doc, into) !== null) ? through.map(({ into }) => into) : null;
}

export type Measure = (values: readonly number[]) => number;

/** Of every sleeve and tense margin how much of the lead stays bare, below 0; 0 where it reaches. More is never worse. */
export function reachesOf(
  doc: DesignFile,
  coordinates: readonly { readonly field: string; readonly isTense: boolean }[],
): readonly Measure[] {
  const placeOf = (field: string): number => coordinates.findIndex((one) => one.field === field);
  return doc.layers.flatMap((_, layer) =>
    SIDES.flatMap((side) => {
      const width = placeOf(`layers[${layer}].margins.${side}.width`);
      if (coordinates[width]?.isTense !== true) return [];
      return (sleevesThrough(doc, layer, side) ?? []).map((into): Measure => {
        const [reach, fixed] = [placeOf(into), intervalAt(doc, into)?.value ?? 0];
        return (values) => Math.min(0, (reach < 0 ? fixed : values[reach]!) - values[width]!);
      });
    }),
  );
}

export interface Interval {
  readonly value: number;
  readonly half: number;
}

/** In mm; null where the field holds no known length. */
export function intervalAt(doc: DesignFile, field: string): Interval | null {
  const value = fieldAt(doc, field);
  if (value === undefined) return null;
  const read = quantityField(value, { dimension: 'length', aboveZero: false, mayBeUnknown: true });
  return read.kind === 'known' ? { value: read.value / 1e6, half: read.plusMinus / 1e6 } : null;
}
