// The tool as a library: what `import … from 'layerwright'` gives. A design is read, judged once, and drawn and told from
// that judgement. Pure: it reads no file, keeps nothing from call to call, runs in Node and in a browser.
// Lengths in mm, voltages in V, frequencies in Hz, currents in mA wherever a verdict carries a number.

import { knownIds } from '#judge/conductors/known-ids.ts';
import { designSchema } from '#model/schema/design-schema.ts';

export { judge, type Judged } from './judged.ts';
export { readDesign, type Design, type ReadDesign } from './read.ts';
export { drawSection, report, tell, type DrawOptions, type ReportOptions } from './faces.ts';
export type { BadInput } from '#model/faults/bad-input.ts';
export type {
  ToldLimiting as Limiting,
  ToldPair as PairVerdict,
  ToldSpot as WeakSpot,
  ToldVerdict as Verdict,
} from '#words/told.ts';
export type { Answer } from '#judge/verdict/answer.ts';
export type { Grade, Metric } from '#units/terms.ts';

/** Ids of the rule books that there are, the default first. */
export const ruleBooks: readonly string[] = knownIds.rules;

/** JSON Schema of the design file (format `layerwright-design/1`), as plain data. */
export const schema = (): unknown => designSchema();
