// What a mend costs: height and width of the window, plies, how full it gets, and how far primary and output move apart
// (the further, the looser they couple). The rank orders proposals by what a winder feels: light acts and few of them, then
// little height, little apart, little width, and room left in the window.

import type { Verdict } from '#judge/verdict/verdict.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Act } from '#mend/acts/act.ts';
import { effortOf } from '#mend/acts/effort.ts';
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
  readonly acts: readonly Act[];
}

/** Of the whole window's height: so much weighs as an act does. */
const HEIGHT = 0.2;
/** Of the mean way from primary to output. */
const APART = 0.5;
/** Margin taken from a winding, mm. */
const WIDTH = 2;
/** A window fuller than this leaves nothing for what the hand winds loose. */
const FULL = 0.9;

export function costOf({ doc, design, before, after, acts }: CostInput): Cost {
  const height = round(after.fit.height.used - before.fit.height.used);
  const width = Math.max(0, ...design.layers.map((_, i) => marginsOf(design, i) - marginsOf(doc, i)));
  const [apart, was] = [meanDistance(design, after), meanDistance(doc, before)];
  const { available } = after.fit.height;
  const fill = available > 0 ? round(after.fit.height.used / available) : 1;
  const taken = {
    height: available > 0 ? Math.max(0, height / available) / HEIGHT : 0,
    apart: was > 0 ? Math.max(0, apart / was - 1) / APART : 0,
    full: fill > FULL ? (fill - FULL) / (1 - FULL) : 0,
  };
  const effort = acts.reduce((sum, act) => sum + effortOf(act), 0);
  return {
    height,
    width: round(width),
    plies: pliesOf(design) - pliesOf(doc),
    fill,
    coupling: round(apart - was),
    rank: effort + taken.height + taken.apart + taken.full + width / WIDTH,
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
