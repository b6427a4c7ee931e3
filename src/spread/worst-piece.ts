// The worst of all pieces at once: what a law holds for at its worse end, and the rest with its whole range as a tolerance of
// the file, whose worst end the judgement finds itself.

import { editDesign } from '#model/edit/edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { mmText, type Coordinate } from './coordinates.ts';

export const worstPiece = (doc: DesignFile, coordinates: readonly Coordinate[]): DesignFile =>
  coordinates.reduce((file, { field, worse, better, isLaw, isTense, isCount, apply }) => {
    if ((isLaw && !isTense) || isCount) return apply(file, worse);
    const [value, plusMinus] = [(worse + better) / 2, Math.abs(better - worse) / 2].map(mmText);
    return editDesign(file, field, { value, plusMinus });
  }, doc);
