// What a field that nobody knows is at its best: the figure that turns a verdict where the field decides it.

import type { TurningFigure } from '#judge/verdict/assumed.ts';
import type { Book } from '#books/questions/book.ts';
import { BEST } from '#judge/assume/assumption.ts';
import { openFrequency } from '#judge/assume/counted-stress.ts';
import { fillBuild } from '#judge/fill/fill-build.ts';
import type { PairOutcome } from '#judge/paths/case-result.ts';
import type { Design } from '#model/design.ts';
import { inMm } from '#units/quantity.ts';

export type BestFigures = (field: string) => TurningFigure['at'];

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
    if (margin) return { as: 'width', mm: widths()[Number(margin[1])]![margin[2] as 'left' | 'right'] };
    const open = pairs.find(({ stress }) => openFrequency(stress) === field);
    if (open) return { as: 'frequency', hertz: open.stress.frequency };
    if (field === 'former.wall' || field === 'former.flange') return { as: 'thickness', mm: least };
    return { as: 'best' };
  };
}
