// What a field that nobody knows is at its best, in words: the figure that turns a verdict where the field decides it.

import type { Book } from '#books/book.ts';
import { BEST } from '#judge/assume/assumption.ts';
import { openFrequency } from '#judge/assume/counted-stress.ts';
import { fillBuild } from '#judge/fill/fill-build.ts';
import type { PairOutcome } from '#judge/paths/case-result.ts';
import type { Design } from '#model/design.ts';
import { inMm } from '#units/quantity.ts';

export type BestFigures = (field: string) => string | null;

export function bestFigures(book: Book, design: Design, pairs: readonly PairOutcome[]): BestFigures {
  const least = inMm(book.leastThickness().value);
  let widest: readonly { readonly left: number; readonly right: number }[] | null = null;
  const widths = () =>
    (widest ??= fillBuild(design, book, BEST).builds[0]![0]!.layers.map(({ margins }) => ({
      left: inMm(margins.left.width),
      right: inMm(margins.right.width),
    })));
  return (field) => {
    const margin = /^layers\[(\d+)\]\.margins\.(left|right)\.width$/.exec(field);
    if (margin) return `${widths()[Number(margin[1])]![margin[2] as 'left' | 'right'].toFixed(2)} mm`;
    const open = pairs.find(({ stress }) => openFrequency(stress) === field);
    if (open) return `${open.stress.frequency} Hz`;
    if (field === 'former.wall' || field === 'former.flange') return `${least} mm`;
    return WORDS.find(([pattern]) => pattern.test(field))?.[1] ?? null;
  };
}

const WORDS: readonly (readonly [RegExp, string])[] = [
  [/^circuits\[\d+\]\.means$/, 'protecting an operator'],
  [/\.plies$/, '3 plies'],
  [/\.plyWithstand$/, 'each ply stands the test'],
  [/\.withstand$/, 'it stands the test'],
  [/\.wire\.kind$/, 'three certified layers'],
  [/\.wire\.approval$/, 'certified'],
  [/\.insulationLayers$/, '3 layers'],
  [/^core\.outerGap$/, 'out of reach'],
  [/^core\.bond$/, 'the best of its ties'],
  [/\.(leads|links|start|finish|lead)(\[\d+\])?$/, 'clear of the other circuits'],
  [/\.(at|exit|side)$/, 'the better side'],
  [/\.way$/, 'a slot'],
  [/\.sleeve$/, 'a strong sleeve'],
  [/\.sleeve\.wall$/, 'a strong wall'],
  [/\.sleeve\.into$/, 'flush with the winding'],
  [/(materialGroup|former\.material)$/, 'tracking group IIIa'],
  [/\.(clearance|creepage)$/, 'as long as is asked'],
  [/\.safetyClass$/, 'Y1'],
  [/^bridges\[\d+\]\.approval$/, 'reinforced'],
  [/^converter\.mode$/, 'the better of both modes'],
  [/^(supply\.lowest|converter\.rail)$/, 'known, so that the estimate holds within 5 %'],
  [/(workingVoltages\[\d+\]|\.working)\.(rms|peak)$/, 'measured as it is stated'],
];
