// The field over a whole section as marks, for the picture that stands still and for the stage on which edges are dragged.

import type { FieldPicture, FieldShot } from '#judge/field/field-picture.ts';
import type { Mark } from '#drawing/paper/mark.ts';
import type { Paper } from '#drawing/paper/paper.ts';
import type { Scene } from '#drawing/scene/scene.ts';
import { fieldMarks } from './field-marks.ts';
import { gapFlag } from './gap-marks.ts';

export interface FieldShown {
  /** Lines of equal potential. */
  readonly lines: boolean;
  /** Number of the picked gap, from 0; null: none. */
  readonly picked: number | null;
}

/** So many gaps carry a flag. */
export const FLAGGED = 9;

/** Empty where there is no field. */
export function wholeMarks(
  scene: Scene,
  picture: FieldPicture,
  paper: Paper,
  shown: FieldShown,
): readonly Mark[] {
  const { whole, boxes, report } = picture;
  if (whole === null) return [];
  return [
    ...fieldMarks(scene, lined(whole, shown), boxes, paper, scaleEnd(picture)),
    ...report.gaps.slice(0, FLAGGED).flatMap((gap, i) => gapFlag(gap, i, paper, shown.picked === i)),
  ];
}

export const lined = (shot: FieldShot, { lines }: Pick<FieldShown, 'lines'>): FieldShot =>
  lines ? shot : { ...shot, lines: [] };

/** The scale ends where the air is strongest: solids and sharp edges beyond it have its last colour. */
export function scaleEnd({ report }: FieldPicture): number {
  return Math.max(1, ...report.cases.slice(0, 1).map(({ strongest }) => 0.6 * strongest));
}
