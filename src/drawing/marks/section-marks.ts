// A section as marks, in the order of painting: the ground that changes with the build, and what lies over it.

import { flagBody, type FlagPlace } from '#drawing/scene/flag-places.ts';
import type { Scene } from '#drawing/scene/scene.ts';
import type { Plate } from '#drawing/scene/view.ts';
import { figureMarks } from './figure-marks.ts';
import { flagMarks } from './flag-marks.ts';
import type { Mark } from '#drawing/paper/mark.ts';
import { letterMarks, noteMarks, numberMarks, unknownMarks } from './note-marks.ts';
import type { Paper } from '#drawing/paper/paper.ts';
import { pathMarks, thinPathMarks, type Told } from './path-marks.ts';
import { solidMarks } from './solid-marks.ts';
import { circledLayers, turnMarks } from './turn-marks.ts';

/** Solids, turns, words; `isNumbered`: layers carry the numbers that they have in the list. */
export function groundMarks(scene: Scene, paper: Paper, isNumbered: boolean): readonly Mark[] {
  const circled = circledLayers(scene, paper);
  return [
    ...solidMarks(scene, paper, circled),
    ...turnMarks(scene, paper, circled),
    ...unknownMarks(scene, paper),
    ...noteMarks(scene, paper),
    ...(isNumbered ? numberMarks(scene, paper) : []),
    ...letterMarks(scene, paper),
  ];
}

/** The limiting paths of the other pairs. */
export const otherPathMarks = ({ otherPaths }: Scene, paper: Paper): readonly Mark[] =>
  otherPaths.flatMap((other) => thinPathMarks(other, paper));

/** The path with its figure, and the flags. */
export function pathAndFlagMarks(
  scene: Scene,
  paper: Paper,
  flags: readonly FlagPlace[],
  shown: {
    readonly told: Told;
    readonly picked: number | null;
    /** What no figure covers, besides the flags. */
    readonly kept?: readonly Plate[];
  },
): readonly Mark[] {
  const { path } = scene;
  return [
    ...(path === null ? [] : pathMarks(path, paper, shown.told)),
    ...flagMarks(flags, paper.theme, shown.picked),
    ...(path === null
      ? []
      : figureMarks(path, scene, paper, [...flags.map(flagBody), ...(shown.kept ?? [])])),
  ];
}
