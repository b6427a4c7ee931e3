// What an open field would have to be for the verdict to turn, as a phrase: `5.40 mm`, `certified`.

import { lengthNear, lengthPlain } from '#words/text/number-words.ts';
import { lengthUnit } from '#words/text/length-unit.ts';
import type { Assumption } from '#judge/verdict/verdict.ts';

/** Null where it decides nothing, or nothing can be said of such a field. */
export function turningWords({ field, figure }: Pick<Assumption, 'field' | 'figure'>): string | null {
  if (figure === null) return null;
  const at = atWords(field, figure.at);
  return at === null || !figure.together ? at : `${at}, together with the others`;
}

function atWords(field: string, at: NonNullable<Assumption['figure']>['at']): string | null {
  switch (at.as) {
    case 'width':
      return `${lengthNear(at.mm)} ${lengthUnit()}`;
    case 'thickness':
      return `${lengthPlain(at.mm)} ${lengthUnit()}`;
    case 'frequency':
      return `${at.hertz} Hz`;
    case 'voltage':
      return `${Math.round(at.volts)} V`;
    case 'best':
      return BEST.find(([pattern]) => pattern.test(field))?.[1] ?? null;
  }
}

const BEST: readonly (readonly [RegExp, string])[] = [
  [/^circuits\[\d+\]\.means$/, 'protecting an operator'],
  [/\.plies$/, '3 plies'],
  [/\.plyWithstand$/, 'each ply withstands the test'],
  [/\.withstand$/, 'it withstands the test'],
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
