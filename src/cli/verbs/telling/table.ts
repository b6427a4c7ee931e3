// `table [TABLE] [--rules ID]`: the tables of a rule book, or every cell of one with how well it is known; with
// `--out X.svg` what it asks as a plot, round `--at`, of `--column` at `--place`, with a build's points from `--build`.

import { ruleBook, ruleBookIds } from '#books/shelf.ts';
import { readArguments } from '#cli/line/arguments.ts';
import { done, refused, type Outcome } from '#cli/line/outcome.ts';
import { faultLines, loadDesign } from '#cli/files/load-design.ts';
import { writeWhole } from '#cli/files/write-whole.ts';
import { tableAsked, tableLines } from '#drawing/plot/table-lines.ts';
import { tablePlot } from '#drawing/plot/table-plot.ts';
import { tablePoints, type TablePoint } from '#drawing/plot/table-points.ts';
import { PRINT_INKS, svgTablePlot } from '#drawing/svg/svg-table-plot.ts';
import { judge } from '#judge/judging/judge.ts';
import type { Design } from '#model/design.ts';
import { plainColumn, plainPlaces } from '#standards/tables/plain-place.ts';
import type { Table } from '#standards/tables/table.ts';
import { rulesView, tableView } from '#standards/tables/table-view.ts';
import { circuitLooks } from '#words/design/circuit-look.ts';
import { printable } from '#words/text/printable.ts';
import { pairNames } from '#words/verdict/pair-words.ts';
import { tableList, tableText } from '#words/books/table-text.ts';

const PLAIN_VOLTS = 250;

export function tableOf(words: readonly string[]): Outcome {
  const given = readArguments(words, {
    rules: 'value',
    out: 'value',
    at: 'value',
    column: 'value',
    place: 'value',
    build: 'value',
  });
  if (given.kind === 'wrong') return refused(`table: ${given.says}.`);
  const { files, options } = given;
  const [name] = files;
  if (files.length > 1) return refused('table: name one table.');
  const file = options.get('build');
  const loaded = file === undefined ? null : loadDesign(file, options.get('rules') ?? null);
  if (loaded?.kind === 'bad') return refused(faultLines(file ?? '', loaded.faults));
  const design = loaded?.design ?? null;
  const id = options.get('rules') ?? design?.rules ?? 'iec-62368-1';
  const own = design?.confirmed ?? [];
  const book = ruleBook(id, own);
  if (book === null)
    return refused(`table: there is no rule book ${printable(id)}; there is ${ruleBookIds.join(', ')}.`);
  const views = [...book.tables.map((each) => tableView(each.file, own)), rulesView(book.rules.file, own)];
  if (name === undefined) return done(tableList(views));
  const view = views.find((each) => each.file === name);
  if (view === undefined) {
    const ids = views.map((each) => each.file).join(', ');
    return refused(`table: ${book.title} has no table ${printable(name)}; there is ${ids}.`);
  }
  const out = options.get('out');
  if (out === undefined) return done(tableText(view));
  const table = book.tables.find((each) => each.file.id === name);
  return table === undefined ? noPlot(name) : plotOf(table, options, design, out);
}

const noPlot = (name: string): Outcome => refused(`table: ${printable(name)} holds no lengths by a voltage.`);

function plotOf(
  table: Table,
  options: ReadonlyMap<string, string>,
  design: Design | null,
  out: string,
): Outcome {
  const { file } = table;
  const column = options.get('column') ?? plainColumn(file);
  if (!file.columns.includes(column))
    return refused(`table: there is no column ${printable(column)}; there is ${file.columns.join(', ')}.`);
  const found: readonly TablePoint[] = design === null ? [] : tablePoints(judge(design).verdict, file);
  const places = plainPlaces(file, options.get('place')?.split(',') ?? found[0]?.places ?? []);
  const points = found.filter((point) => point.places.join() === places.join());
  const at = Number(options.get('at') ?? points[0]?.at ?? PLAIN_VOLTS);
  if (!(at > 0)) return refused(`table: --at is a voltage in V, not ${printable(options.get('at') ?? '')}.`);
  const asked = tableAsked(table, at, column, places);
  const plot = tablePlot(tableLines(table, column, places), points, at, asked);
  if (plot === null) return noPlot(file.id);
  const looks = circuitLooks(design?.circuits ?? []);
  const title = `${file.standard}${file.table === null ? '' : `, table ${file.table}`}: ${file.quantity}`;
  const [axis] = file.axes;
  const along = `${axis?.name ?? ''}, ${(axis?.unit ?? '').replace(/^k/, '')}`;
  const svg = svgTablePlot(
    plot,
    { title, along, nameOf: ({ between }) => pairNames(between, looks) },
    PRINT_INKS,
  );
  return writeWhole(out, `${svg}\n`, 'table');
}
