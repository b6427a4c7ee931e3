// One side of two builds that are set beside each other on paper: its file, what was read of it, and how it was judged.

import type { CopperReport } from '#judge/study/copper.ts';
import type { Drawable } from '#drawing/scene/scene.ts';
import type { Design } from '#model/design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { FitSide } from '#words/mend/fit-changes.ts';

export interface ComparedBuild {
  /** `as found`, `way 1`. */
  readonly says: string;
  readonly doc: DesignFile;
  readonly design: Design;
  readonly judgement: Drawable;
  readonly copper: CopperReport;
}

export const fitSide = ({ judgement, copper }: ComparedBuild): FitSide => ({
  fit: judgement.verdict.fit,
  copper,
});
