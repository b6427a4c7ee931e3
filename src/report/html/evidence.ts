// Photographs, measurements and documents behind the figures. A picture is shown only where the file itself holds it.

import type { Evidence } from '#model/design.ts';
import { block, tag, type Content, type Markup } from './markup.ts';
import type { ReportParts } from './report-parts.ts';

export function evidence({ design }: ReportParts): Markup | null {
  return block('Photographs and measurements', design.evidence.map(entry));
}

function entry({ id, kind, says, fields, file }: Evidence): Content {
  const text = [
    tag('b', {}, `${id}, ${kind}`),
    `: ${says}`,
    fields.length === 0 ? '' : ` (${fields.join(', ')})`,
  ];
  if (file === null) return tag('p', {}, text);
  if (!isPicture(file)) return tag('p', {}, text, file.startsWith('data:') ? '' : `; file ${file}`);
  return tag('figure', {}, tag('img', { src: file, alt: says, width: '320' }), tag('figcaption', {}, text));
}

/** Only plain bitmaps inside the file: nothing that fetches, nothing that runs. */
const isPicture = (file: string): boolean =>
  /^data:image\/(png|jpeg|webp);base64,[A-Za-z0-9+/=]+$/.test(file);
