// Two builds side by side: layer by layer, pair by pair, what was changed in the file and what it did to path, grade and fit.

import { alignLayers } from '#model/edit/align-layers.ts';
import { designChanges, type FieldChange } from '#model/edit/design-changes.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import type { PairVerdict } from '#judge/verdict/pair.ts';
import type { Answer } from '#judge/verdict/answer.ts';

export interface Judged {
  readonly doc: DesignFile;
  readonly verdict: Verdict;
}

export interface Comparison {
  readonly verdicts: readonly [Answer, Answer];
  /** Innermost first; `same` where nothing of the layer differs, nor of its winding. */
  readonly layers: readonly ComparedLayer[];
  readonly pairs: readonly ComparedPair[];
  /** Fields that differ, layers by their place in the second build where it has them. */
  readonly changed: readonly FieldChange[];
  readonly did: readonly Consequence[];
  /** The two are judged by different books. */
  readonly otherRules: boolean;
}

export interface ComparedLayer {
  readonly a: number | null;
  readonly b: number | null;
  readonly same: boolean;
}

export interface ComparedPair {
  readonly between: readonly [string, string];
  readonly a: PairVerdict | null;
  readonly b: PairVerdict | null;
}

export type Figure = 'height' | 'weak-spots' | 'plies' | 'unknowns';

export interface Consequence {
  readonly what: Figure;
  readonly a: number;
  readonly b: number;
}

export function compared(a: Judged, b: Judged): Comparison {
  return {
    verdicts: [a.verdict.verdict, b.verdict.verdict],
    layers: alignLayers(a.doc.layers, b.doc.layers).map((layer) => ({
      ...layer,
      same: layer.a !== null && layer.b !== null && isSame(a.doc, layer.a, b.doc, layer.b),
    })),
    pairs: pairsOf(a.verdict, b.verdict),
    changed: designChanges(a.doc, b.doc),
    did: [
      { what: 'height', a: a.verdict.fit.height.used, b: b.verdict.fit.height.used },
      { what: 'plies', a: pliesOf(a.doc), b: pliesOf(b.doc) },
      { what: 'weak-spots', a: a.verdict.weakSpots.length, b: b.verdict.weakSpots.length },
      { what: 'unknowns', a: decidersOf(a.verdict), b: decidersOf(b.verdict) },
    ],
    otherRules: a.verdict.rules.id !== b.verdict.rules.id,
  };
}

function isSame(a: DesignFile, i: number, b: DesignFile, j: number): boolean {
  const whole = (doc: DesignFile, index: number): string => {
    const layer = doc.layers[index];
    const winding =
      layer?.kind === 'winding' ? doc.windings.find(({ id }) => id === layer.winding) : undefined;
    return JSON.stringify([layer, winding]);
  };
  return whole(a, i) === whole(b, j);
}

/** Those of which either asks something; in the order of the first build. */
function pairsOf(a: Verdict, b: Verdict): readonly ComparedPair[] {
  const key = ({ between }: PairVerdict): string => [...between].sort().join('\n');
  const asked = ({ pairs }: Verdict) => pairs.filter(({ required }) => required !== null);
  const keys = new Set([...asked(a), ...asked(b)].map(key));
  return [...keys].map((one) => {
    const own = a.pairs.find((pair) => key(pair) === one) ?? null;
    const other = b.pairs.find((pair) => key(pair) === one) ?? null;
    return { between: (own ?? other)!.between, a: own, b: other };
  });
}

const pliesOf = (doc: DesignFile): number =>
  doc.layers.reduce(
    (sum, layer) => sum + (layer.kind === 'tape' && typeof layer.plies === 'number' ? layer.plies : 0),
    0,
  );

const decidersOf = ({ assumptions }: Verdict): number => assumptions.filter(({ decides }) => decides).length;
