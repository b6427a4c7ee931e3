// What laying things into a section must know of it.

import type { Nm } from '#units/quantity.ts';
import type { BuildLayer } from '#solver/section/build.ts';
import type { Draft } from '#solver/section/draft.ts';
import type { PlacedBuild } from '#solver/section/placement.ts';
import type { Riser } from '#solver/stack/risers.ts';
import type { Band } from '#solver/section/section.ts';
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
}

export interface Span {
  readonly x0: Nm;
  readonly x1: Nm;
}

export type LayerBand = Extract<StackBand, { kind: 'layer' }>;
