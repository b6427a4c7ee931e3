// What nobody knew of the build and the section nevertheless draws: as it was counted, dashed, with a question mark. A former
// that is not known is counted as none, but it is there: a dashed band without hatching, of no measured thickness, tells it.

import type { Design } from '#model/design.ts';
import type { Lead, Winding } from '#model/design/winding.ts';
import type { Unknown } from '#model/quantity/reading.ts';
import type { Section } from '#solver/section/section.ts';
import { inMm } from '#units/quantity.ts';
import { outlineOf, type Box } from '#drawing/scene/outline.ts';
import { boundsOf } from './scene-areas.ts';
import type { Area, UnknownPlace } from '#drawing/scene/scene.ts';

/** The same areas, those told as unknown that nobody measured or saw, and what is there but counted as none. */
export const withUnknowns = (areas: readonly Area[], design: Design, section: Section): readonly Area[] => [
  ...areas.map((area) => (isUnknownArea(area, design) ? { ...area, isUnknown: true } : area)),
  ...formerOfNoThickness(design, section, areas.find(({ kind }) => kind === 'core')?.bounds ?? null),
];

/** Part of what the core's frame takes: room to draw in that nothing is measured from. */
const BAND = 0.6;

function formerOfNoThickness({ former }: Design, { chambers }: Section, core: Box | null): readonly Area[] {
  const [first, last] = [chambers[0], chambers.at(-1)];
  if (first === undefined || last === undefined || core === null) return [];
  const [x0, x1, rim] = [inMm(first.x0), inMm(last.x1), inMm(former.height.value)];
  const [left, right, down] = [x0 - core.x0, core.x1 - x1, -core.y0].map((room) =>
    Math.max(0, room * BAND),
  ) as [number, number, number];
  const tube: Box = { x0, x1, y0: -down, y1: 0 };
  const flanges: readonly Box[] = [
    { x0: x0 - left, x1: x0, y0: 0, y1: rim },
    { x0: x1, x1: x1 + right, y0: 0, y1: rim },
  ];
  const [noTube, noFlanges] = [former.wall.kind === 'unknown', former.flange.kind === 'unknown'];
  const corners = noTube && noFlanges ? [{ ...tube, x0: x0 - left, x1: x1 + right }] : noTube ? [tube] : [];
  const boxes = [...corners, ...(noFlanges ? flanges : [])];
  if (boxes.length === 0) return [];
  const place = { kind: 'former', layer: null, circuit: null, isUnknown: true } as const;
  return [
    { id: 'former of no measured thickness', ...place, loops: outlineOf(boxes), bounds: boundsOf(boxes) },
  ];
}

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
    beside: true,
  };
  const flanges: UnknownPlace = {
    text: 'flanges unknown: counted as none',
    at: [x0, rim * 0.8],
    beside: true,
  };
  const known = wall.kind === 'moulded' ? inMm(wall.thickness.value) : 0;
  const stuff: UnknownPlace = {
    text: 'material unknown',
    at: [x0 + (x1 - x0) * 0.2, -known / 2],
    beside: false,
  };
  return [
    ...(wall.kind === 'unknown' ? [tube] : []),
    ...(flange.kind === 'unknown' ? [flanges] : []),
    ...(isUnknown(material) && known > 0 ? [stuff] : []),
  ];
}

const isUnknown = (value: unknown): value is Unknown =>
  typeof value === 'object' && value !== null && 'kind' in value && value.kind === 'unknown';
