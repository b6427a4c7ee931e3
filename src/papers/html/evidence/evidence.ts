// Photographs, measurements and documents behind the figures. A picture is shown only where the file itself holds it.

import type { Design } from '#model/design.ts';
import type { Evidence } from '#model/design/evidence.ts';
import { block, tag, type Content, type Markup } from '#papers/html/page/markup.ts';
import { foundWords, measuredOn, photoFigure } from './photo-figure.ts';
import { readMeasurement } from '#model/measure/measurement-note.ts';
import type { ReportParts } from '#papers/html/page/report-parts.ts';

export function evidence({ design }: ReportParts): Markup | null {
  const shown = new Set(design.evidence.flatMap((each) => measuresShown(design, each)));
  const left = design.evidence.filter(({ id }) => !shown.has(id));
  return block(
    'Photographs and measurements',
    left.map((each) => (isShownPhoto(each) ? photoFigure(design, each) : null) ?? entry(each)),
  );
}

/** Told below their photograph already. */
const measuresShown = (design: Design, each: Evidence): readonly string[] =>
  isShownPhoto(each) && photoFigure(design, each) !== null
    ? measuredOn(design, each.id).map(({ id }) => id)
    : [];

const isShownPhoto = ({ kind, file }: Evidence): boolean =>
  kind === 'photo' && file !== null && isPicture(file);

function entry(each: Evidence): Content {
  const { id, kind, says, fields, file } = each;
  const note = readMeasurement(each);
  const text = [
    tag('b', {}, `${id}, ${kind}`),
    `: ${says}`,
    note === null ? '' : `; ${foundWords(note)} on ${note.photo}`,
    fields.length === 0 ? '' : ` (${fields.join(', ')})`,
  ];
  if (file === null) return tag('p', {}, text);
  if (!isPicture(file)) return tag('p', {}, text, file.startsWith('data:') ? '' : `; file ${file}`);
  return tag('figure', {}, tag('img', { src: file, alt: says, width: '320' }), tag('figcaption', {}, text));
}

/** Only plain bitmaps inside the file: nothing that fetches, nothing that runs. */
const isPicture = (file: string): boolean =>
  /^data:image\/(png|jpeg|webp);base64,[A-Za-z0-9+/=]+$/.test(file);
