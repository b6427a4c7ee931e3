// What a section is called: its kind as a title, and in one clause what is laid in and what has moved.

import { lengthUnit } from '#words/text/length-unit.ts';
import type { Design } from '#model/design.ts';
import type { Section } from '#solver/section/section.ts';
import { inMm } from '#units/quantity.ts';
import { dimension } from '#words/text/number-words.ts';

export interface SectionWords {
  readonly title: string;
  readonly says: string;
}

export function sectionWords(section: Pick<Section, 'kind' | 'slumped' | 'lays' | 'moved'>): SectionWords {
  const laid = section.lays.join(' and ');
  const title =
    section.kind === 'plain'
      ? section.slumped === null
        ? 'Plain section'
        : 'Slumped section'
      : section.lays.length > 1
        ? 'Section with two lead-outs'
        : 'Section with a lead-out';
  const lead = section.kind === 'plain' ? 'no lead in it' : laid;
  const still = section.moved ? `, nothing of other circuits than ${section.moved.join(' and ')}` : '';
  return { title, says: `${lead}, ${SLUMPED[section.slumped ?? 'not']}${still}` };
}

/** `An empty former, 12.00 × 4.20 mm.` */
export function emptyWords({ former }: Design): string {
  const widths = former.chambers.map(({ width }) => dimension(inMm(width.value))).join(' and ');
  return `An empty former, ${widths} × ${dimension(inMm(former.height.value))} ${lengthUnit()}.`;
}

const SLUMPED = {
  not: 'nothing slumped',
  'as-is': 'loose ends and tapes slumped',
  left: 'loose ends slumped, loose tapes pushed left',
  right: 'loose ends slumped, loose tapes pushed right',
} as const;
