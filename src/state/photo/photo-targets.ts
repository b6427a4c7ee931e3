// The fields of a build that a measured length can be sent to, in words; those that such a measure is usually taken for
// come first.

import type { Design } from '#model/design.ts';
import { fieldAt } from '#model/edit/edit-design.ts';
import type { Measure } from '#model/measure/measurement-note.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { fieldWords } from '#words/design/field-words.ts';
import type { Option } from '#state/fields/field-options.ts';

export function photoTargets(doc: DesignFile, design: Design | null, measure: Measure): readonly Option[] {
  const paths = [...formerPaths(doc), ...windingPaths(doc), ...layerPaths(doc), ...outsidePaths(doc)];
  const usual = USUAL[measure];
  const isUsual = (path: string): boolean => usual?.test(path) ?? false;
  return [...paths.filter(isUsual), ...paths.filter((path) => !isUsual(path))].map((value) => ({
    value,
    label: design === null ? value : fieldWords(design, value),
  }));
}

const USUAL: Readonly<Record<Measure, RegExp | null>> = {
  distance: null,
  'wire diameter': /^windings\[\d+\]\.wire\./,
  'tape width': /margins\.(?:left|right)\.width$|\.turnUp$/,
  angle: null,
};

const indexed = (list: readonly unknown[], path: string): readonly string[] =>
  list.map((_, i) => `${path}[${i}]`);

const formerPaths = (doc: DesignFile): readonly string[] => [
  ...indexed(doc.former.chambers, 'former.chambers').map((chamber) => `${chamber}.width`),
  'former.height',
  ...(isWound(doc.former.wall) ? [] : ['former.wall']),
  'former.flange',
  ...indexed(doc.former.dividers ?? [], 'former.dividers'),
  'core.outerGap',
];

const isWound = (wall: unknown): boolean => typeof wall === 'object' && wall !== null && 'plies' in wall;

const windingPaths = (doc: DesignFile): readonly string[] =>
  indexed(doc.windings, 'windings').flatMap((winding) => [
    `${winding}.wire.conductor`,
    `${winding}.wire.overallDiameter`,
    ...['start', 'finish'].flatMap((end) => leadPaths(doc, `${winding}.leads.${end}`)),
  ]);

/** A lead that nobody knows has no fields yet. */
const leadPaths = (doc: DesignFile, lead: string): readonly string[] =>
  isRecord(fieldAt(doc, lead))
    ? [`${lead}.bareFrom`, `${lead}.apart`, ...sleevePaths(doc, `${lead}.sleeve`)]
    : [];

const sleevePaths = (doc: DesignFile, sleeve: string): readonly string[] =>
  isRecord(fieldAt(doc, sleeve)) ? [`${sleeve}.wall`, `${sleeve}.into`] : [];

const layerPaths = (doc: DesignFile): readonly string[] =>
  doc.layers.flatMap(({ kind }, i) => {
    const both = (field: string): readonly string[] => [
      `layers[${i}].${field.replace('*', 'left')}`,
      `layers[${i}].${field.replace('*', 'right')}`,
    ];
    if (kind === 'winding') return both('margins.*.width');
    const own = kind === 'tape' ? ['plyThickness', 'turnUp'] : ['thickness'];
    return [...both('inset.*'), ...both('margins.*.width'), ...own.map((field) => `layers[${i}].${field}`)];
  });

const outsidePaths = (doc: DesignFile): readonly string[] => [
  ...indexed(doc.outside ?? [], 'outside').flatMap((each) => [`${each}.clearance`, `${each}.creepage`]),
  ...indexed(doc.bridges ?? [], 'bridges').flatMap((each) => [`${each}.clearance`, `${each}.creepage`]),
];

const isRecord = (value: unknown): boolean => typeof value === 'object' && value !== null;
