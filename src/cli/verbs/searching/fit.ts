// `fit FILE [--json]`: how the windings fit their window, row by row, and what copper they take.

import { judge } from '#judge/judging/judge.ts';
import { copperReport } from '#judge/study/copper.ts';
import { fitLines } from '#words/mend/fit-words.ts';
import { printable } from '#words/text/printable.ts';
import { readArguments } from '#cli/line/arguments.ts';
import { faultLines, loadDesign } from '#cli/files/load-design.ts';
import { done, refused, type Outcome } from '#cli/line/outcome.ts';

export function fitOfFile(words: readonly string[]): Outcome {
  const given = readArguments(words, { json: 'switch' });
  if (given.kind === 'wrong') return refused(`fit: ${given.says}.`);
  const [file, ...more] = given.files;
  if (file === undefined || more.length > 0)
    return refused('fit: name one design file, or - for standard input.');
  const loaded = loadDesign(file);
  if (loaded.kind === 'bad') return refused(faultLines(file, loaded.faults));
  const { fit } = judge(loaded.design).verdict;
  const report = copperReport(loaded.design, fit);
  if (given.options.has('json'))
    return done(
      `${JSON.stringify({ format: 'layerwright-fit/1', height: fit.height, ...report }, null, 2)}\n`,
    );
  return done(`${fitLines(fit, report).map(printable).join('\n')}\n`);
}
