// What laying things into a section must know of it.

import type { Nm } from '#units/quantity.ts';
import type { BuildLayer } from '#solver/section/build.ts';
import type { Bodies, Draft } from '#solver/section/draft.ts';
import type { PlacedBuild } from '#solver/section/placement.ts';
import type { Riser } from '#solver/stack/risers.ts';
import type { Band, Rect, Region } from '#solver/section/section.ts';
import type { Slump } from '#solver/stack/displacement.ts';
import type { StackBand } from '#solver/stack/stack.ts';

export interface Laying {
  readonly draft: Draft;
  readonly placed: PlacedBuild;
  readonly risers: readonly Riser[];
  readonly slump: Slump;
  /** Handling may have moved this layer; one that may not lies as it was drawn. */
  readonly moves: (layer: BuildLayer) => boolean;
  readonly bands: Band[];
  /** Layers that were laid before with what handling has moved in this way, by where they lie. */
  readonly laidBands: Map<string, LaidBand>;
}

/** A layer without a lead in its band, as every section has it in which it lies there. */
export interface LaidBand {
  readonly regions: readonly Region[];
  readonly band: Band;
}

/** What the sections of one build share: laid once, for it is the same wherever no lead is in the way. Grows. */
export interface LaidParts {
  readonly bodies: Bodies;
  /** By the way in which handling has moved things. */
  readonly bands: Map<object, Map<string, LaidBand>>;
  /** By the height of the stack and whether leads leave: the former and the core round it. */
  readonly shells: Map<string, LaidShell>;
}

export interface LaidShell {
  readonly regions: readonly Region[];
  readonly frame: Rect;
  readonly coreAbove: Nm | null;
}

export interface Span {
  readonly x0: Nm;
  readonly x1: Nm;
}

export type LayerBand = Extract<StackBand, { kind: 'layer' }>;
