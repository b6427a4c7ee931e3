// A former with a higher or wider window, where the coil does not fit.

import type { DesignFile } from '#model/schema/schema.ts';
import type { Act } from './act.ts';
import { lengthAt, upToStep } from './file-lengths.ts';

/** Formers grow by about this much from one size to the next. */
const LARGER = 1.25;

export function windowActs(doc: DesignFile): readonly Act[] {
  const higher = larger(doc, 'former.height', 'height');
  const wider = doc.former.chambers.flatMap((_, i) => larger(doc, `former.chambers[${i}].width`, 'width'));
  return [...higher, ...wider];
}

function larger(doc: DesignFile, field: string, kind: 'height' | 'width'): readonly Act[] {
  const now = lengthAt(doc, field);
  if (now === null) return [];
  return [
    { kind, on: field, set: [{ field, to: `${upToStep(now * LARGER)} mm` }], amount: now * (LARGER - 1) },
  ];
}
