// What the lists offer to choose from: materials, wire sizes and typical formers of the tables, each with how well it is known.

import { formers, roundWire, sleeves, tapes } from '#standards/materials/materials.ts';
import { coilFormers } from '#standards/materials/coil-formers.ts';
import type { Cite } from '#standards/because.ts';
import { confirmedWords } from '#words/text/confirmed-words.ts';
import { dimension, plain } from '#words/text/number-words.ts';
import { bookWords } from '#words/text/answer-words.ts';
import { marketNames } from '#books/shared/national.ts';
import { ruleBook, ruleBookIds } from '#books/shelf.ts';
import type { TemplateOf } from '#state/storage/templates.svelte.ts';
import { inMm, mm, type Nm } from '#units/quantity.ts';

export interface Option {
  readonly value: string;
  readonly label: string;
}

const known = (cite: Cite): string => confirmedWords(cite.confirmed);

export const tapeOptions: readonly Option[] = tapes.map((tape) => ({
  value: tape.id,
  // asked for anew, for the unit of lengths may change
  get label() {
    return `${tape.name}, ply ${lengthOf(tape.total.value)}, class ${tape.thermalClass.value} (${known(tape.total.cite)})`;
  },
}));

export const formerOptions: readonly Option[] = formers.map(withClass);
export const sleeveOptions: readonly Option[] = sleeves.map(withClass);

export const ruleBookOptions: readonly Option[] = ruleBookIds.flatMap((id) => {
  const book = ruleBook(id);
  return book === null ? [] : [{ value: id, label: bookWords(book) }];
});

/** Where a build may be sold; each with its mains. */
export const marketOptions: readonly Option[] = [...marketNames].map(([value, label]) => ({ value, label }));

export const roleOptions: readonly Option[] = [
  { value: 'mains', label: 'mains side' },
  { value: 'touchable', label: 'can be touched' },
  { value: 'earth', label: 'earth' },
  { value: 'isolated', label: 'isolated: neither touched nor on the mains' },
];

export const safetyClassOptions: readonly Option[] = ['Y1', 'Y2', 'Y4', 'X1', 'X2', 'none'].map((value) => ({
  value,
  label: value,
}));

/** Conductors commonly wound in small transformers, with the greatest overall diameter of their grade. */
export function wireOptions(grade: 1 | 2 | 3): readonly Option[] {
  return COMMON_WIRES.flatMap((size) => {
    const found = roundWire(mm(size), grade);
    if ('kind' in found) return [];
    const { overall } = found.value;
    const cite = found.because.cites[0];
    return [
      {
        value: `${size} mm`,
        label: `over all ${lengthOf(overall)} (grade ${grade}${cite === undefined ? '' : `, ${known(cite)}`})`,
      },
    ];
  });
}

const COMMON_WIRES = [
  0.05, 0.063, 0.071, 0.08, 0.09, 0.1, 0.112, 0.125, 0.14, 0.16, 0.18, 0.2, 0.224, 0.25, 0.28, 0.315, 0.355,
  0.4, 0.45, 0.5, 0.56, 0.63, 0.71, 0.8, 0.9, 1,
] as const;

export interface FormerStart {
  readonly id: string;
  readonly label: string;
  readonly width: string;
  readonly height: string;
  readonly wall: string;
  readonly flange: string;
}

export const formerStarts: readonly FormerStart[] = coilFormers.map(
  ({ id, width, height, wall, flange }) => ({
    id,
    get label() {
      return `${id}: ${lengthOf(width.value)} wide, ${lengthOf(height.value)} high (${known(width.cite)})`;
    },
    width: inFile(width.value),
    height: inFile(height.value),
    wall: inFile(wall.value),
    flange: inFile(flange.value),
  }),
);

/** A former that somebody kept, as one to begin with; of several chambers the first. */
export function formerStartOf({ name, former }: TemplateOf<'former'>): FormerStart {
  const sizeOf = (size: unknown): string =>
    typeof size === 'string' && size !== 'unknown' ? size : typeof size === 'number' ? `${size} mm` : '';
  const { height, wall, flange, chambers } = former;
  const width = sizeOf(chambers[0]?.width);
  return {
    id: `own:${name}`,
    label: `${name}: kept by you`,
    width,
    height: sizeOf(height),
    wall: sizeOf(wall),
    flange: sizeOf(flange),
  };
}

function withClass(material: (typeof formers)[number]): Option {
  const group = material.group === null ? '' : `, group ${material.group.value}`;
  const { value, cite } = material.thermalClass;
  return { value: material.id, label: `${material.name}, class ${plain(value)}${group} (${known(cite)})` };
}

function lengthOf(length: Nm): string {
  return dimension(inMm(length));
}

function inFile(length: Nm): string {
  return `${inMm(length)} mm`;
}
