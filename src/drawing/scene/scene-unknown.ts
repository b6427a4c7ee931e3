// What nobody knew of the build and the section nevertheless draws: as it was counted, dashed, with a question mark. A former
// that is not known is counted as none: its faces are dashed where it would begin.

import type { Design, Lead, Winding } from '#model/design.ts';
import type { Unknown } from '#model/reading.ts';
import type { Section } from '#solver/section/section.ts';
import { inMm } from '#units/quantity.ts';
import type { Point } from './outline.ts';
import type { Area } from './scene.ts';

export interface UnknownPlace {
  readonly text: string;
  readonly at: Point;
  /** Where its edge would be; empty where the drawn figure itself is dashed. */
  readonly lines: readonly (readonly [Point, Point])[];
}

/** The same areas, those told as unknown that nobody measured or saw. */
export const withUnknowns = (areas: readonly Area[], design: Design): readonly Area[] =>
  areas.map((area) => (isUnknownArea(area, design) ? { ...area, isUnknown: true } : area));

function isUnknownArea({ kind, layer }: Area, design: Design): boolean {
  const of = layer === null ? undefined : design.layers[layer];
  switch (kind) {
    case 'former':
      return isUnknown(design.former.material);
    case 'ply':
      return of?.kind === 'tape' && isUnknown(of.plies);
    case 'lead':
    case 'counted': {
      if (of?.kind === 'screen') return isLeadUnknown(of.lead);
      const winding =
        of?.kind === 'winding' ? design.windings.find(({ id }) => id === of.winding) : undefined;
      return winding !== undefined && areLeadsUnknown(winding);
    }
    default:
      return false;
  }
}

function areLeadsUnknown({ leads }: Winding): boolean {
  if (leads === 'not-judged') return false;
  return isUnknown(leads) || (isLeadUnknown(leads.start) && isLeadUnknown(leads.finish));
}

/** Nobody saw where it leaves, or whether it is sleeved. */
const isLeadUnknown = (lead: Lead | 'not-judged' | Unknown | null): boolean =>
  lead !== null &&
  lead !== 'not-judged' &&
  (isUnknown(lead) || isUnknown(lead.exit) || isUnknown(lead.sleeve));

export function unknownPlaces(design: Design, section: Section): readonly UnknownPlace[] {
  const [first, last] = [section.chambers[0], section.chambers.at(-1)];
  if (first === undefined || last === undefined) return [];
  const [x0, x1] = [inMm(first.x0), inMm(last.x1)];
  const { wall, flange, material, height } = design.former;
  const rim = inMm(height.value);
  const tube: UnknownPlace = {
    text: 'wall of the tube unknown: counted as none',
    at: [x0 + (x1 - x0) * 0.3, 0],
    lines: [
      [
        [x0, 0],
        [x1, 0],
      ],
    ],
  };
  const flanges: UnknownPlace = {
    text: 'flanges unknown: counted as none',
    at: [x0, rim * 0.8],
    lines: [x0, x1].map((x) => [
      [x, 0],
      [x, rim],
    ]),
  };
  const known = wall.kind === 'moulded' ? inMm(wall.thickness.value) : 0;
  const stuff: UnknownPlace = { text: 'material unknown', at: [x0 + (x1 - x0) * 0.2, -known / 2], lines: [] };
  return [
    ...(wall.kind === 'unknown' ? [tube] : []),
    ...(flange.kind === 'unknown' ? [flanges] : []),
    ...(isUnknown(material) && known > 0 ? [stuff] : []),
  ];
}

const isUnknown = (value: unknown): value is Unknown =>
  typeof value === 'object' && value !== null && 'kind' in value && value.kind === 'unknown';
