// A cell of a table, or a figure of a rule, that the user confirmed or corrected from a copy of the standard of their own.
// It is named as its citation names it; `value` is as printed, in the table's unit, and left out where ours is right.

export interface OwnCell {
  /** Of the table file, e.g. `IEC 62368-1`. */
  readonly standard: string;
  /** Id of the table file; `rules` of a rule in words. */
  readonly table: string;
  /** As the citation says it: `250 V rms, PD 2, IIIa`. */
  readonly cell: string;
  readonly value: number | null;
  /** Where it stands in the reader's copy. */
  readonly clause: string;
  /** Day on which it was read, `2026-11-30`. */
  readonly on: string;
}

export const isOwn = (
  own: OwnCell,
  { standard, id }: { readonly standard: string; readonly id: string },
  cell: string,
): boolean => own.standard === standard && own.table === id && own.cell === cell;
