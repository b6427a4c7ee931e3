// What a mend costs: height and width of the window, plies, how full it gets, and how far primary and output move apart
// (the further, the looser they couple). The rank orders proposals: few changes, no new former or wire, little height.

import type { Verdict } from '#judge/verdict/verdict.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Change } from '#mend/acts/act.ts';
import { lengthAt } from '#mend/acts/file-lengths.ts';

export interface Cost {
  /** Height used more than before, mm. */
  readonly height: number;
  /** Width taken from windings by their margins, mm, of the layer that loses most. */
  readonly width: number;
  readonly plies: number;
  /** Part of the window's height that is used, 0 to 1. */
  readonly fill: number;
  /** Mean distance between primary and output more than before, mm. */
  readonly coupling: number;
  /** Smaller is better; only for ordering. */
  readonly rank: number;
}

export interface CostInput {
  readonly doc: DesignFile;
  readonly design: DesignFile;
  readonly before: Verdict;
  readonly after: Verdict;
  readonly changes: readonly Change[];
}

/** What each kind of field weighs beside another: what the winder does anyway is light, what must be bought is heavy. */
const WEIGHTS: readonly (readonly [RegExp, number])[] = [
  [/\.plies$/, 1],
  [/\.filled$/, 0.5],
  [/\.margins\./, 1],
  [/\.inset\./, 0.5],
  [/\.sleeve$/, 2],
  [/\.way$/, 2],
  [/\.anchored$/, 1],
  [/^evidence$/, 0],
  [/^core\.bond$/, 2],
  [/^layers$/, 6],
  [/^core\.wrap$/, 3],
  [/^bridges/, 3],
  [/\.wire$/, 5],
  [/^former\./, 8],
];

export function costOf({ doc, design, before, after, changes }: CostInput): Cost {
  const height = round(after.fit.height.used - before.fit.height.used);
  const width = Math.max(0, ...design.layers.map((_, i) => marginsOf(design, i) - marginsOf(doc, i)));
  const plies = pliesOf(design) - pliesOf(doc);
  const coupling = round(meanDistance(design, after) - meanDistance(doc, before));
  const weight = changes.reduce(
    (sum, { field }) => sum + (WEIGHTS.find(([pattern]) => pattern.test(field))?.[1] ?? 2),
    0,
  );
  const available = after.fit.height.available;
  return {
    height,
    width: round(width),
    plies,
    fill: available > 0 ? round(after.fit.height.used / available) : 1,
    coupling,
    rank: weight + Math.max(0, height) * 2 + width * 0.5,
  };
}

const round = (value: number): number => Math.round(value * 1000) / 1000;

const marginsOf = (doc: DesignFile, layer: number): number =>
  doc.layers[layer]?.kind !== 'winding'
    ? 0
    : (['left', 'right'] as const).reduce(
        (sum, side) => sum + (lengthAt(doc, `layers[${layer}].margins.${side}.width`, 0) ?? 0),
        0,
      );

const pliesOf = (doc: DesignFile): number =>
  doc.layers.reduce(
    (sum, layer) => sum + (layer.kind === 'tape' && typeof layer.plies === 'number' ? layer.plies : 0),
    0,
  );

/** Mean over all pairs of layers of the first mains and the first touchable circuit, middle to middle, mm. */
function meanDistance(doc: DesignFile, { fit }: Verdict): number {
  const circuitOf = (role: string) => doc.circuits.find((circuit) => circuit.role === role)?.id;
  const middles = (circuit: string | undefined) =>
    fit.chambers.flatMap(({ layers }) => {
      let top = 0;
      return layers.flatMap(({ layer, height }) => {
        const entry = doc.layers[layer];
        top += height;
        const winding = entry?.kind === 'winding' ? entry.winding : null;
        const isIts = doc.windings.some(({ id, circuit: of }) => id === winding && of === circuit);
        return isIts ? [top - height / 2] : [];
      });
    });
  const [mains, touchable] = [middles(circuitOf('mains')), middles(circuitOf('touchable'))];
  const all = mains.flatMap((a) => touchable.map((b) => Math.abs(a - b)));
  return all.length === 0 ? 0 : all.reduce((sum, each) => sum + each, 0) / all.length;
}
