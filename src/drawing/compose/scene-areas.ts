// Which filled figures a section is drawn with, and in which order they are painted.
// Rectangles of one body become one figure, because a joint that does not exist must not be drawn.

import type { Region, Section } from '#solver/section/section.ts';
import { inMm } from '#units/quantity.ts';
import { countedLead, drawnToFlange } from './counted-leads.ts';
import { outlineOf, type Box, type Point } from '#drawing/scene/outline.ts';
import type { Area } from '#drawing/scene/scene.ts';

/** Painted from the first to the last. */
const ORDER: readonly Area['kind'][] = [
  'core',
  'former',
  'block',
  'cover',
  'turns',
  'screen',
  'counted',
  'ply',
  'wrap',
  'sleeve',
  'lead',
];

/** `wireOf`: overall diameter of the wire that a layer is wound of, mm; null where the drawing has none. */
export function areasOf(section: Section, wireOf: (layer: number) => number | null): readonly Area[] {
  const groups = new Map<string, { readonly area: Omit<Area, 'loops' | 'bounds'>; readonly boxes: Box[] }>();
  const put = (area: Omit<Area, 'loops' | 'bounds'>, box: Box): void => {
    const group = groups.get(area.id) ?? { area, boxes: [] };
    group.boxes.push(box);
    groups.set(area.id, group);
  };
  section.regions.forEach((region, place) => {
    const area = roleOf(region, place);
    if (region.kind !== 'conductor' || area.kind !== 'lead') return put(area, boxOf(region));
    const lead = countedLead(region, section, region.layer === null ? null : wireOf(region.layer));
    if (lead !== null) put({ ...area, id: `counted ${area.id}`, kind: 'counted' }, lead.counted);
    put(area, lead?.wire ?? drawnToFlange(region, section));
  });
  return [...groups.values()]
    .map(({ area, boxes }) => ({ ...area, loops: loopsOf(boxes), bounds: boundsOf(boxes) }))
    .sort((a, b) => ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind));
}

/** Regions that share an id are drawn as one figure. */
function roleOf(region: Region, place: number): Omit<Area, 'loops' | 'bounds'> {
  if (region.kind !== 'conductor') {
    const kind = region.kind === 'moulding' ? 'former' : region.kind === 'wireCover' ? 'cover' : region.kind;
    const alone = kind === 'ply' || kind === 'block';
    return { id: `${kind} ${alone ? place : region.body}`, kind, layer: region.layer, circuit: null };
  }
  const { conductor, layer } = region;
  switch (region.of) {
    case 'core':
      return { id: 'core', kind: 'core', layer: null, circuit: null };
    case 'winding':
      return { id: `turns ${place}`, kind: 'turns', layer, circuit: conductor };
    case 'screen':
      return { id: `screen ${place}`, kind: 'screen', layer, circuit: conductor };
    case 'lead':
    case 'link':
    case 'screen-lead':
      return { id: `${region.of} ${layer} ${conductor}`, kind: 'lead', layer, circuit: conductor };
  }
}

const boxOf = (region: Region): Box => ({
  x0: inMm(region.x0),
  y0: inMm(region.y0),
  x1: inMm(region.x1),
  y1: inMm(region.y1),
});

/** Most figures are one rectangle, which needs no search. */
function loopsOf(boxes: readonly Box[]): readonly (readonly Point[])[] {
  const [only] = boxes;
  if (boxes.length > 1 || only === undefined) return outlineOf(boxes);
  return [
    [
      [only.x0, only.y0],
      [only.x1, only.y0],
      [only.x1, only.y1],
      [only.x0, only.y1],
    ],
  ];
}

/** The smallest box round all of them. */
export const boundsOf = (boxes: readonly Box[]): Box => ({
  x0: Math.min(...boxes.map(({ x0 }) => x0)),
  y0: Math.min(...boxes.map(({ y0 }) => y0)),
  x1: Math.max(...boxes.map(({ x1 }) => x1)),
  y1: Math.max(...boxes.map(({ y1 }) => y1)),
});
