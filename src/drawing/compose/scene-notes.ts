// The few words and dimensions that a section carries of itself: tube, air to the core.

import type { Design } from '#model/design.ts';
import type { Section } from '#solver/section/section.ts';
import { inMm } from '#units/quantity.ts';
import { dimension, lengthDown } from '#words/text/number-words.ts';
import type { Box } from '#drawing/scene/outline.ts';
import type { Area, Note } from '#drawing/scene/scene.ts';

export function notesOf(design: Design, section: Section): readonly Note[] {
  return [...tubeNote(design, section), ...airNote(section)];
}

function tubeNote(design: Design, section: Section): readonly Note[] {
  const { wall } = design.former;
  const [first, last] = [section.chambers[0], section.chambers.at(-1)];
  if (first === undefined || last === undefined || wall.kind !== 'moulded') return [];
  const thickness = inMm(wall.thickness.value);
  const middle = (inMm(first.x0) + inMm(last.x1)) / 2;
  return [{ text: `tube ${dimension(thickness)}`, at: [middle, -thickness / 2], line: null, place: 'wall' }];
}

/** What a shaded lead is, on the widest part of it. */
export function countedNotes(areas: readonly Area[]): readonly Note[] {
  const shaded = areas.filter(({ kind }) => kind === 'counted');
  const [widest] = [...shaded].sort((a, b) => widthOf(b.bounds) - widthOf(a.bounds));
  const wire = areas.find(({ kind, layer }) => kind === 'lead' && layer === widest?.layer);
  if (widest === undefined || wire === undefined) return [];
  const { x0, x1, y1 } = widest.bounds;
  return [{ text: 'shaded: counted as bare wire', at: [(x0 + x1) / 2, y1], line: null, place: 'above' }];
}

const widthOf = ({ x0, x1 }: Box): number => x1 - x0;

/** Air between the outermost layer and the core, where the section has a core above. */
function airNote(section: Section): readonly Note[] {
  const last = section.chambers.length - 1;
  const [chamber, top] = [section.chambers[last], section.stackTops[last]];
  if (chamber === undefined || top === undefined || section.coreAbove === null) return [];
  const [y0, y1] = [inMm(top), inMm(section.coreAbove)];
  if (y1 <= y0) return [];
  const x = inMm(chamber.x0) + (inMm(chamber.x1) - inMm(chamber.x0)) * 0.87;
  return [
    {
      text: `${lengthDown(y1 - y0)} of air to the core`,
      at: [x, (y0 + y1) / 2],
      line: [
        [x, y0],
        [x, y1],
      ],
      place: 'beside',
    },
  ];
}
