// The figures of a pair that can be opened, each with its name, what it reads and the derivation behind it.

import { lengthUnit } from '#words/text/length-unit.ts';
import { kilovoltsUp, lengthUp, volts } from '#words/text/number-words.ts';
import type { Because, PairVerdict } from '#state/judging/judged.ts';
import type { FigureName } from '#state/document/selection.svelte.ts';

export interface FigureChoice {
  readonly figure: FigureName;
  readonly name: string;
  readonly text: string;
  readonly why: Because;
}

type Asked = { readonly basic: number | null; readonly reinforced: number | null };

export const isReinforced = ({ needed }: PairVerdict): boolean =>
  needed === 'reinforced' || needed === 'double';

export function figureChoices(pair: PairVerdict): readonly FigureChoice[] {
  const { needed, because, stress, required } = pair;
  const always: readonly FigureChoice[] = [
    { figure: 'needed', name: 'grade', text: needed, why: because },
    { figure: 'stress', name: 'working voltage', text: volts(stress.rms), why: stress.because },
  ];
  if (required === null) return always;
  const of = ({ basic, reinforced }: Asked): string => {
    const length = isReinforced(pair) ? reinforced : basic;
    return length === null ? 'no figure' : `${lengthUp(length)} ${lengthUnit()}`;
  };
  const { creepage, clearance, throughInsulation, test } = required;
  const least = `${lengthUp(throughInsulation.leastThickness)} ${lengthUnit()}`;
  return [
    { figure: 'creepage', name: 'creepage', text: of(creepage), why: creepage.because },
    { figure: 'clearance', name: 'clearance', text: of(clearance), why: clearance.because },
    { figure: 'through', name: 'through insulation', text: least, why: throughInsulation.because },
    { figure: 'test', name: 'test', text: kilovoltsUp(test.peak), why: test.because },
    ...always,
  ];
}
