// `report FILE --out X.html [--winder] [--black] [--field]`: the self-contained report, with a page of the field, or the winder's
// sheet; `--out X.csv` gives the figures alone.

import { csvOf } from '#papers/csv.ts';
import { reportHtml } from '#papers/html/report/report.ts';
import { winderSheet } from '#papers/html/winder-sheet.ts';
import { fieldPicture } from '#judge/field/field-picture.ts';
import { study } from '#judge/study.ts';
import { byField } from '#cli/verbs/by-field.ts';
import { readArguments } from '#cli/line/arguments.ts';
import { faultLines, loadDesign } from '#cli/files/load-design.ts';
import { refused, type Outcome } from '#cli/line/outcome.ts';
import { writeWhole } from '#cli/files/write-whole.ts';

export function reportFile(words: readonly string[]): Outcome {
  const given = readArguments(words, { out: 'value', winder: 'switch', black: 'switch', field: 'switch' });
  if (given.kind === 'wrong') return refused(`report: ${given.says}.`);
  const { files, options } = given;
  const [file] = files;
  const out = options.get('out');
  if (file === undefined || files.length > 1)
    return refused('report: name one design file, or - for standard input.');
  if (out === undefined) return refused('report: say where to with --out X.html or --out X.csv.');
  const csv = /\.csv$/i.test(out);
  if (csv && options.has('winder')) return refused('report: the winder’s sheet is HTML; name a file X.html.');
  const loaded = loadDesign(file);
  if (loaded.kind === 'bad') return refused(faultLines(file, loaded.faults));
  const { design, text } = loaded;
  const solved = options.has('field') ? byField(design) : null;
  const judgement = solved?.studied ?? study(design);
  const field = solved && fieldPicture(solved.found);
  const black = options.has('black');
  if (csv) return writeWhole(out, csvOf(design, judgement.verdict), 'report');
  const html = options.has('winder')
    ? winderSheet({ design, judgement, black })
    : reportHtml({ design, judgement, designText: text, black, field });
  return writeWhole(out, html, 'report');
}
