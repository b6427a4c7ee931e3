// Where a carried layer would go: the index in the file before which it would stand, by the rows on the screen.

/** Rows stand outermost first; each carries its layer's index. Null without rows. */
export function dropPlace(rows: readonly HTMLElement[], y: number): number | null {
  for (const row of rows) {
    const { top, height } = row.getBoundingClientRect();
    if (y < top + height / 2) return Number(row.dataset.layer) + 1;
  }
  const last = rows.at(-1);
  return last === undefined ? null : Number(last.dataset.layer);
}
