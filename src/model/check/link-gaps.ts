// Where a winding is split: places between two of its layers in one chamber with layers of others (or tape) between.
// One link spans each; in the order of the file. A winding that goes on in another chamber has no gap there.

export interface LinkGap {
  readonly chamber: number;
  /** Indices in the file's layers. */
  readonly inner: number;
  readonly outer: number;
}

interface AnyLayer {
  readonly kind: string;
  readonly chamber?: number | undefined;
  readonly winding?: string;
}

export function linkGaps(layers: readonly AnyLayer[], winding: string): readonly LinkGap[] {
  const gaps: LinkGap[] = [];
  /** Per chamber the last layer of this winding, and whether another has come since. */
  const open = new Map<number, { readonly inner: number; readonly parted: boolean }>();
  layers.forEach((layer, outer) => {
    const chamber = layer.chamber ?? 0;
    const before = open.get(chamber);
    if (layer.kind === 'winding' && layer.winding === winding) {
      if (before?.parted) gaps.push({ chamber, inner: before.inner, outer });
      open.set(chamber, { inner: outer, parted: false });
    } else if (before) open.set(chamber, { ...before, parted: true });
  });
  return gaps;
}
