// A term of the trade: its names, one sentence, and its nearest neighbours. Sentences are our own.

export interface Term {
  readonly id: string;
  readonly term: string;
  /** Other names for the same thing, and other forms under which it stands in sentences. */
  readonly also: readonly string[];
  readonly says: string;
  /** What counts as it and what does not, where that is often mixed up. */
  readonly counts?: string;
  /** Ids of terms that are easily taken for it, or that stand beside it. */
  readonly near: readonly string[];
}

export const term = (
  id: string,
  name: string,
  says: string,
  near: readonly string[],
  more: { readonly also?: readonly string[]; readonly counts?: string } = {},
): Term => ({
  id,
  term: name,
  also: more.also ?? [],
  says,
  ...(more.counts === undefined ? {} : { counts: more.counts }),
  near,
});
