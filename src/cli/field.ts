// `field FILE [--json] [--round]`: capacitances, and where discharge would start.

import { finished } from '#field/solve/finished.ts';
import { FINE, fieldOf } from '#judge/field/field-of.ts';
import { study } from '#judge/study.ts';
import { fieldText } from '#words/field/field-text.ts';
import { readArguments } from './arguments.ts';
import { faultLines, loadDesign } from './load-design.ts';
import { done, refused, type Outcome } from './outcome.ts';

export function fieldOfFile(words: readonly string[]): Outcome {
  const given = readArguments(words, { json: 'switch', round: 'switch' });
  if (given.kind === 'wrong') return refused(`field: ${given.says}.`);
  const { files, options } = given;
  const [file] = files;
  if (file === undefined || files.length > 1)
    return refused('field: name one design file, or - for standard input.');
  const loaded = loadDesign(file);
  if (loaded.kind === 'bad') return refused(faultLines(file, loaded.faults));
  const { design } = loaded;
  const turned = options.has('round');
  if (turned && design.former.tube?.shape !== 'round')
    return refused('field: --round needs a round tube in the file (former.tube).');
  const { report } = finished(fieldOf(design, study(design), { ...FINE, turned }));
  return done(options.has('json') ? `${JSON.stringify(report, null, 2)}\n` : fieldText(design, report));
}
