// `series FILE VARIANTS.csv [--json]`: one build with each line of a table of figures, judged one after the other.

import { limitingDistance } from '#judge/compare/limiting-distance.ts';
import { fileJudge } from '#judge/judging/judge-files.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { readDesign } from '#model/read/read-design.ts';
import { readVariants, type Variant } from '#model/read/read-variants.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { rowWords, seriesLines, type SeriesRow } from '#words/mend/series-words.ts';
import { printable } from '#words/text/printable.ts';
import { readArguments } from '#cli/line/arguments.ts';
import { faultLines, loadDesign } from '#cli/files/load-design.ts';
import { done, refused, type Outcome } from '#cli/line/outcome.ts';
import { readFile } from '#cli/files/read-file.ts';

export function seriesOf(words: readonly string[]): Outcome {
  const given = readArguments(words, { json: 'switch' });
  if (given.kind === 'wrong') return refused(`series: ${given.says}.`);
  const [file, table, ...more] = given.files;
  if (file === undefined || table === undefined || more.length > 0)
    return refused('series: name one design file and one table of comma-separated values.');
  const loaded = loadDesign(file);
  if (loaded.kind === 'bad') return refused(faultLines(file, loaded.faults));
  const read = readFile(table, 'a table of comma-separated values');
  if (read.kind === 'bad') return refused(faultLines(table, [read.fault]));
  const found = readVariants(JSON.parse(loaded.text) as DesignFile, read.text);
  if (found.kind === 'bad') return refused(printable(`${table}: ${found.says}.`));
  const judge = fileJudge();
  const rows = found.variants.map((variant) => rowOf(variant, judge));
  const refusedRow = rows.find(({ verdict }) => verdict === null);
  const code = refusedRow === undefined ? 0 : 2;
  const { fields } = found;
  const text = given.options.has('json')
    ? JSON.stringify({ format: 'layerwright-series/1', fields, rows }, null, 2)
    : seriesLines(fields, rows).map(printable).join('\n');
  const err =
    refusedRow === undefined ? '' : `${printable(`${table}: ${refusedRow.name}: ${rowWords(refusedRow)}`)}\n`;
  return { ...done(`${text}\n`), code, err };
}

function rowOf({ name, cells, doc }: Variant, judge: ReturnType<typeof fileJudge>): SeriesRow {
  const verdict = judge.whole(doc);
  const read = verdict === null ? readDesign(doc, knownIds) : null;
  return {
    name,
    cells,
    verdict: verdict && verdict.verdict,
    fault: read?.kind === 'bad' ? (read.faults[0] ?? null) : null,
    limiting: verdict && limitingDistance(verdict),
    height: verdict && verdict.fit.height.used,
  };
}
