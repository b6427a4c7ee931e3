// Everything one frame of the canvas is painted from: the scene, where it stands on the screen, and what is in the hand.
// Painters read it and nothing else.

import type { FieldPicture } from '#state/searches/field-search.svelte.ts';
import type { FieldShown } from '#drawing/field/whole-marks.ts';
import type { Theme } from '#drawing/scene/palette.ts';
import type { Scene } from '#drawing/scene/scene.ts';
import type { Paper } from '#drawing/paper/paper.ts';
import type { Drag } from '#ui/canvas/handles/drag.ts';
import type { Grip } from '#ui/canvas/grips/grip.ts';
import type { PlacedFlag } from '#ui/canvas/flags/flags-in-sight.ts';
import type { Measure } from '#ui/canvas/measuring/measuring.svelte.ts';
import type { Overview } from '#ui/canvas/viewport/viewport.svelte.ts';
import type { Surface } from '#ui/canvas/grips/stroke.ts';
import type { Plate, View } from '#drawing/scene/view.ts';

/** The field in place of solids and their hatches; null until there is one. */
export interface FieldGround extends FieldShown {
  readonly picture: FieldPicture | null;
}

export interface Picture {
  readonly scene: Scene;
  readonly theme: Theme;
  /** Null: the drawing of the build itself. */
  readonly field: FieldGround | null;
  readonly view: View;
  readonly width: number;
  readonly height: number;
  /** The part of the stage that the drawing has for itself, inside the rulers. */
  readonly room: Plate;
  /** Screen pixels per CSS pixel. */
  readonly density: number;
  /** Indices of the picked layers. */
  readonly layers: readonly number[];
  /** The legs of the path that light up; null: none is picked out, all are as strong. */
  readonly lit: readonly number[] | null;
  /** Legs already told, while the path is read piece by piece. */
  readonly told: readonly number[];
  /** Number of the flag that is picked. */
  readonly flag: number | null;
  /** Layers carry their numbers on the drawing, where no line leads to the list. */
  readonly isNumbered: boolean;
  /** The whole section small above the close view; null where there is no need. */
  readonly overview: Overview | null;
  readonly flags: readonly PlacedFlag[];
  readonly grips: readonly Grip[];
  /** Pixels from which a grip is taken: a finger is less exact than a pointer. */
  readonly reach: number;
  /** Path of the handle under the pointer or the keyboard. */
  readonly hot: string | null;
  readonly drag: Drag | null;
  /** Two points between which someone measures. */
  readonly measure: Measure | null;
  /** The surface that a layer can be drawn on, or is being drawn on. */
  readonly surface: Surface | null;
  /** A layer in the hand, and where it would go: the row of the line in millimetres. */
  readonly carried: { readonly layer: number; readonly to: number } | null;
}

/** The paper that this picture is drawn on; `measure` is the canvas's own. */
export const paperOf = (
  { theme, view, width, height, room, density }: Picture,
  measure: Paper['measure'],
): Paper => ({
  theme,
  view,
  bounds: { left: 0, top: 0, right: width, bottom: height },
  room,
  density,
  measure,
});
