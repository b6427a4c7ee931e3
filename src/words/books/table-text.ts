// The tables of a rule book as text: the list of them, and one with every cell and how well it is known.

import { confirmedWords } from '#words/text/confirmed-words.ts';
import { plain } from '#words/text/number-words.ts';
import type { CellView, TableView } from '#standards/tables/table-view.ts';

/** `creepage  table 17  creepage, 217 cells, two sources to published`, a line each. */
export function tableList(views: readonly TableView[]): string {
  const wide = Math.max(...views.map(({ file }) => file.length));
  const lines = views.map((view) => {
    const place = view.number === null ? '' : `table ${view.number}, `;
    const known =
      view.best === view.worst
        ? confirmedWords(view.best)
        : `${confirmedWords(view.best)} to ${confirmedWords(view.worst)}`;
    const cells = view.rows.flatMap((row) => row.cells).filter(({ value }) => value !== null).length;
    return `${view.file.padEnd(wide)}  ${place}${view.quantity}, ${cells === 1 ? '1 cell' : `${cells} cells`}, ${known}`;
  });
  return `${lines.join('\n')}\n`;
}

export function tableText(view: TableView): string {
  const { standard, edition, number, clauses, quantity, unit, describes, rows } = view;
  const head = [
    `${standard}, ${edition}${number === null ? '' : `, table ${number}`}${clauses === '' ? '' : `, clause ${clauses}`}`,
    `${quantity}${unit === '' || unit === 'word' ? '' : `, ${unit}`}: ${describes}`,
    '',
  ];
  return `${[...head, ...rows.flatMap(({ cells }) => cells.map(cellLine))].join('\n')}\n`;
}

function cellLine({ name, value, unit, confirmed, others, own }: CellView): string {
  const figure = value === null ? 'no figure' : typeof value === 'number' ? `${plain(value)} ${unit}` : value;
  const by = own === null ? '' : `, ${own.clause}, ${own.on}`;
  const known = value === null ? '' : ` (${confirmedWords(confirmed)}${by})`;
  const other = others.length === 0 ? '' : `; other readings ${others.map((each) => each.value).join(', ')}`;
  return `  ${name}: ${figure}${known}${other}`;
}
