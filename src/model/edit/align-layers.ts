// Which layer of one build is which of another: the longest run of layers that are of one kind and winding in both, in order.
// A layer that only one of them has stands alone; one that was moved stands twice.

import type { DesignFile } from '#model/schema/schema.ts';

export interface AlignedLayer {
  /** Indices in the two files; null where it has none such. */
  readonly a: number | null;
  readonly b: number | null;
}

/** Innermost first. */
export function alignLayers(a: DesignFile['layers'], b: DesignFile['layers']): readonly AlignedLayer[] {
  const [keysA, keysB] = [a.map(nameOf), b.map(nameOf)];
  // longest[i][j]: of the layers from i and j on
  const longest = Array.from({ length: a.length + 1 }, () => new Array<number>(b.length + 1).fill(0));
  for (let i = a.length - 1; i >= 0; i -= 1)
    for (let j = b.length - 1; j >= 0; j -= 1)
      longest[i]![j] =
        keysA[i] === keysB[j]
          ? longest[i + 1]![j + 1]! + weightOf(a[i], b[j])
          : Math.max(longest[i + 1]![j]!, longest[i]![j + 1]!);
  const aligned: AlignedLayer[] = [];
  let [i, j] = [0, 0];
  while (i < a.length && j < b.length) {
    const isPair = keysA[i] === keysB[j] && longest[i]![j] === longest[i + 1]![j + 1]! + weightOf(a[i], b[j]);
    if (isPair) aligned.push({ a: i++, b: j++ });
    else if (longest[i + 1]![j]! >= longest[i]![j + 1]!) aligned.push({ a: i++, b: null });
    else aligned.push({ a: null, b: j++ });
  }
  while (i < a.length) aligned.push({ a: i++, b: null });
  while (j < b.length) aligned.push({ a: null, b: j++ });
  return aligned;
}

type LayerFile = DesignFile['layers'][number];

const nameOf = (layer: LayerFile): string =>
  layer.kind === 'winding' ? `winding ${layer.winding}` : layer.kind;

/** Layers that are alike in all belong together before those that are only of one kind. */
const weightOf = (a: LayerFile | undefined, b: LayerFile | undefined): number =>
  JSON.stringify(a) === JSON.stringify(b) ? 1.01 : 1;
