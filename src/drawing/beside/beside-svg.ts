// A section drawn to stand beside others: all at one scale in one frame, without rulers, so that heights are compared by eye.
// What lay elsewhere in the build before is drawn as thin broken edges, the edge as it lies now as a grip.

import { palette, type ThemeName } from '#drawing/scene/palette.ts';
import type { Box } from '#drawing/scene/outline.ts';
import type { LayerPlace, Scene } from '#drawing/scene/scene.ts';
import { guessedWidth, place, type Paper } from '#drawing/paper/paper.ts';
import { ALL_STRONG } from '#drawing/marks/path-marks.ts';
import type { LineMark, Mark, Point } from '#drawing/paper/mark.ts';
import { notePlates } from '#drawing/marks/note-marks.ts';
import { groundMarks, pathAndFlagMarks } from '#drawing/marks/section-marks.ts';
import { targetMarks, targetPlates, type Target } from './target-marks.ts';
import { svgMarks } from '#drawing/svg/svg-marks.ts';
import { element } from '#drawing/svg/svg-element.ts';
import { svgPage } from '#drawing/svg/svg.ts';
import { escapeText } from '#words/text/escape-text.ts';

export interface BesideOptions {
  readonly theme: ThemeName;
  /** Pixels across. */
  readonly width: number;
  /** What all drawings that stand beside each other show, mm. */
  readonly frame: Box;
  readonly prefix: string;
  /** For a page of paper on which a pixel of the drawing is a pixel of the page. */
  readonly printed?: boolean;
  /** Name for those who cannot see it. */
  readonly says: string;
  /** The build before, and which of its layers each layer was; left out: nothing is compared. */
  /** What layers of this build are brought to. */
  readonly targets?: readonly Target[];
  readonly before?: { readonly scene: Scene; readonly layerOf: (layer: number) => number | null };
}

const EDGE = 3;

/** The frame that holds all of these. */
export const frameOf = (scenes: readonly Scene[]): Box => ({
  x0: Math.min(...scenes.map(({ frame }) => frame.x0)),
  y0: Math.min(...scenes.map(({ frame }) => frame.y0)),
  x1: Math.max(...scenes.map(({ frame }) => frame.x1)),
  y1: Math.max(...scenes.map(({ frame }) => frame.y1)),
});

export function besideSvg(
  scene: Scene,
  { theme, width, frame, prefix, says, before, targets = [], printed = false }: BesideOptions,
): string {
  const scale = (width - 2 * EDGE) / (frame.x1 - frame.x0);
  const height = Math.ceil((frame.y1 - frame.y0) * scale + 2 * EDGE);
  const bounds = { left: 0, top: 0, right: width, bottom: height };
  const paper: Paper = {
    theme: palette[theme],
    view: { scale, stretch: 1, left: EDGE - frame.x0 * scale, base: EDGE + frame.y1 * scale },
    bounds,
    room: bounds,
    density: null,
    printed,
    measure: guessedWidth,
  };
  const told = targetMarks(targets, scene, paper);
  const marks: readonly Mark[] = [
    ...groundMarks(scene, paper, false),
    ...(before === undefined ? [] : movedEdges(scene, before, paper)),
    ...pathAndFlagMarks(scene, paper, [], {
      told: ALL_STRONG,
      picked: null,
      kept: [...notePlates(scene, paper), ...targetPlates(told)],
    }),
    ...told,
  ];
  return svgPage(
    { width, height, viewBox: `0 0 ${width} ${height}` },
    element('title', {}, escapeText(says)) +
      element('rect', { width, height, fill: paper.theme.sheet }) +
      svgMarks(marks, prefix),
  );
}

/** A length that the eye does not see, mm. */
const SAME = 1e-4;

function movedEdges(
  scene: Scene,
  { scene: was, layerOf }: NonNullable<BesideOptions['before']>,
  paper: Paper,
): readonly LineMark[] {
  const moved = scene.layers.flatMap((now) => {
    const index = layerOf(now.layer);
    const then = was.layers.find(({ layer, chamber }) => layer === index && chamber === now.chamber);
    return then === undefined ? [] : sidesMoved(now, then);
  });
  const run = (x: number, { y0, y1 }: LayerPlace): readonly Point[] => [
    place(paper, [x, y0]),
    place(paper, [x, y1]),
  ];
  const stood = moved.map(({ then, now }) => run(then, now.place));
  const stands = moved.map(({ x, now }) => run(x, now.place));
  const { ink } = paper.theme;
  return [
    { kind: 'line', role: 'stood', runs: stood, stroke: { color: ink, width: 1.2, dash: [3, 3] } },
    { kind: 'line', role: 'stands', runs: stands, stroke: { color: ink, width: 4 } },
  ];
}

const sidesMoved = (now: LayerPlace, then: LayerPlace) =>
  (['x0', 'x1'] as const).flatMap((side) =>
    Math.abs(now[side] - then[side]) < SAME ? [] : [{ x: now[side], then: then[side], now: { place: now } }],
  );
