// The field over a whole section as marks, for the picture that stands still and for the stage on which edges are dragged.

import type { FieldPicture, FieldShot } from '#judge/field/field-picture.ts';
import type { FieldGap } from '#judge/field/field-report.ts';
import type { Mark } from '#drawing/paper/mark.ts';
import type { Paper } from '#drawing/paper/paper.ts';
import type { Scene } from '#drawing/scene/scene.ts';
import type { Plate } from '#drawing/scene/view.ts';
import { fieldMarks, strengthMarks } from './field-marks.ts';
import { gapFlag, gapPlate } from './gap-marks.ts';

export interface FieldShown {
  /** Lines of equal potential. */
  readonly lines: boolean;
  /** Number of the picked gap, from 0; null: none. */
  readonly picked: number | null;
}

/** So many gaps carry a flag at most. */
const FLAGGED = 9;

/** Empty where there is no field. */
export const wholeMarks = (
  scene: Scene,
  picture: FieldPicture,
  paper: Paper,
  shown: FieldShown,
): readonly Mark[] =>
  picture.whole === null
    ? []
    : [...strengthMarks(picture.whole, paper, scaleEnd(picture)), ...overMarks(scene, picture, paper, shown)];

/** All that lies over the colours. */
export function overMarks(
  scene: Scene,
  picture: FieldPicture,
  paper: Paper,
  shown: FieldShown,
): readonly Mark[] {
  const { whole, boxes, report } = picture;
  if (whole === null) return [];
  return [
    ...fieldMarks(scene, lined(whole, shown), boxes, paper),
    ...flagged(report.gaps, paper, shown.picked).flatMap((i) =>
      gapFlag(report.gaps[i]!, i, paper, shown.picked === i),
    ),
  ];
}

/** Numbers of the gaps that carry a flag: of those that would hide each other the picked one, else the first. */
export function flagged(
  gaps: readonly FieldGap[],
  paper: Pick<Paper, 'room' | 'view'>,
  picked: number | null,
): readonly number[] {
  const all = gaps.slice(0, FLAGGED).map((gap, i) => ({ i, plate: gapPlate(gap, paper) }));
  const inTurn = [...all.filter(({ i }) => i === picked), ...all.filter(({ i }) => i !== picked)];
  const kept: typeof all = [];
  for (const one of inTurn) if (kept.every(({ plate }) => !hides(plate, one.plate))) kept.push(one);
  return kept.map(({ i }) => i).sort((a, b) => a - b);
}

/** A third of one lies on the other. */
function hides(a: Plate, b: Plate): boolean {
  const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
  const up = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
  const whole = (a.right - a.left) * (a.bottom - a.top);
  return across > 0 && up > 0 && across * up > whole / 3;
}

export const lined = (shot: FieldShot, { lines }: Pick<FieldShown, 'lines'>): FieldShot =>
  lines ? shot : { ...shot, lines: [] };

/** The scale ends where the air is strongest: solids and sharp edges beyond it have its last colour. */
export function scaleEnd({ report }: FieldPicture): number {
  return Math.max(1, ...report.cases.slice(0, 1).map(({ strongest }) => 0.6 * strongest));
}
