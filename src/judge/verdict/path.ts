// A way between two circuits as it is printed, leg by leg. Millimetres.

import type { Grade, Metric } from '#units/terms.ts';

/** Where a leg runs: along what, up or down which edge, through which solid. `back`: as it went out, the other way. */
export type LegCourse =
  | { readonly by: 'air' | 'closed-joint' | 'contact' }
  | { readonly by: 'over'; readonly conductor: string }
  | {
      readonly by: 'through';
      readonly what: 'plies' | 'wrap' | 'block' | 'sleeve' | 'cover' | 'wall';
    }
  | {
      readonly by: 'along';
      readonly what: 'margin' | 'tape' | 'former' | 'sleeve' | 'cover' | 'surface';
      readonly back: boolean;
    }
  | {
      readonly by: 'up' | 'down';
      readonly what: 'tape-edges-at-flange' | 'tape-edge' | 'flange' | 'block';
    };

export interface PathLeg {
  readonly kind: 'surface' | 'air' | 'through' | 'closed-joint' | 'over';
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  readonly length: number;
  readonly plies: number;
  /** Null where nothing is known but where it lies. */
  readonly course: LegCourse | null;
  /** Its piece is shorter than X and ends on a conductor that floats: its length adds nothing. Left out: it counts. */
  readonly counts?: false;
}

/** Shortest whole path of one metric that punctures at most `plies` plies, over all sections. */
export interface PrintedPath {
  readonly metric: Metric;
  readonly plies: number;
  readonly length: number | null;
  readonly grade: Grade | null;
  readonly section: string | null;
  /** Floating conductors that it runs over. */
  readonly over: readonly string[];
  readonly points: readonly (readonly [number, number])[];
  readonly legs: readonly PathLeg[];
  readonly pieces: readonly {
    readonly between: readonly [string, string];
    readonly length: number;
    /** What of the length counts: nothing where it is shorter than X. */
    readonly counted: number;
    readonly plies: number;
  }[];
  readonly required: { readonly basic: number | null; readonly reinforced: number | null } | null;
}
