// The row that a laboratory may take instead of interpolating, as a figure's derivation carries it, mm.

import type { Because } from '#standards/because.ts';

/** Of the outermost step that knows one; null where no line was drawn between two rows. */
export function nextRowOf(why: Because): number | null {
  return ownNextRow(why) ?? why.from.map(nextRowOf).find((next) => next !== null) ?? null;
}

function ownNextRow(why: Because): number | null {
  switch (why.step) {
    case 'table-value':
      return why.values.interpolated ? why.values.nextRow : null;
    case 'reinforced-factor':
    case 'required-clearance':
    case 'required-creepage':
      return why.values.nextRow;
    default:
      return null;
  }
}
