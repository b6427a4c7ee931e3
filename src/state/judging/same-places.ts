// Whether each place of one document names the same thing in another. While the drawing shows an older document, an edge
// that is taken on it goes by its place in the file: it must not be another's.

import type { DesignFile } from '#model/schema/schema.ts';

type Listed = Readonly<Record<string, unknown>>;

/** Layers, windings and chambers: the lists whose entries the drawing and the rows beside it change by place. */
export const samePlaces = (a: DesignFile, b: DesignFile): boolean =>
  sameList(a.layers, b.layers) &&
  sameList(a.windings, b.windings) &&
  sameList(a.former.chambers, b.former.chambers);

/** Entries are never changed in place, so one that stands elsewhere in the other list was moved. */
const sameList = (a: readonly Listed[], b: readonly Listed[]): boolean =>
  a.length === b.length &&
  a.every((entry, i) => entry === b[i] || (!b.includes(entry) && isLike(entry, b[i]!)));

const isLike = (a: Listed, b: Listed): boolean =>
  ['kind', 'winding', 'chamber', 'id'].every((key) => a[key] === b[key]);
