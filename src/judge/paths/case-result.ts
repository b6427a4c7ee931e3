// What one judging found, unknowns counted one way: per pair the grade, the path that holds it there, and the
// shortest paths for every number of plies.

import type { Because } from '#standards/because.ts';
import type { Grade, Metric } from '#units/terms.ts';
import type { Design } from '#model/design.ts';
import type { Build } from '#solver/section/build.ts';
import type { Section } from '#solver/section/section.ts';
import type { BridgeGrade } from '#books/shared/parts/bridge-grade.ts';
import type { AskedAtPlaces } from '#judge/grade/path-requirement.ts';
import type { CountedStress } from '#judge/assume/counted-stress.ts';
import type { Required, Transients } from '#books/questions/required.ts';
import type { Asked, GradingTools } from '#judge/grade/path-grade.ts';
import type { Chain } from '#judge/grade/chain.ts';

/** A whole path found in a section, or over outside distances only (`section` null). */
export interface FoundPath {
  readonly kind: 'path';
  readonly metric: Metric;
  readonly section: Section | null;
  /** What the section is of, and how its unknowns were counted; empty where it is as it is drawn. */
  readonly build: Build;
  readonly counted: string;
  readonly chain: Chain;
  readonly grade: Grade;
  /** How the grade was found, worked out when it is asked for. */
  readonly reasons: { readonly because: Because };
  readonly length: number;
  readonly plies: number;
  readonly rank: number;
  /** The circuit that the core was tied to; null floating. */
  readonly coreTo: string | null;
  /** What was asked, and of which solids, when it was graded. */
  readonly asked: Asked;
  readonly tools: GradingTools;
}

export interface FoundBridge {
  readonly kind: 'bridge';
  readonly grade: Grade;
  readonly bridge: BridgeGrade;
}

export type Holding = FoundPath | FoundBridge;

export interface PairOutcome {
  readonly between: readonly [string, string];
  /** Null: nothing is asked. */
  readonly needed: Grade | null;
  readonly neededBecause: Because;
  readonly stress: CountedStress;
  readonly transients: Transients;
  readonly required: Required;
  readonly places: AskedAtPlaces;
  readonly achieved: Grade;
  /** The solids of the pair through which no way leads; none where there are none. */
  readonly strong: () => readonly Because[];
  /** What holds it there; null where no path is left. */
  readonly holding: Holding | null;
  readonly shortest: Readonly<Record<Metric, readonly (FoundPath | null)[]>>;
  /** The worst path of every section and core bond that does not reach what is needed. */
  readonly failing: readonly Holding[];
}

export interface Outcome {
  /** The design as judged: intervals settled. */
  readonly design: Design;
  readonly pairs: readonly PairOutcome[];
  /** Empty where nothing is printed. */
  readonly sections: readonly Section[];
  readonly build: Build;
  readonly coreBonds: readonly (string | null)[];
  readonly overfull: boolean;
}
