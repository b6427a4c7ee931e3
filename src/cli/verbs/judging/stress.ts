// `stress FILE [--json]`: working voltages, transients, bridging parts, touch current, tests, heat.

import { stressText } from '#words/stress/stress-words.ts';
import { study } from '#judge/study.ts';
import { readArguments } from '#cli/line/arguments.ts';
import { faultLines, loadDesign } from '#cli/files/load-design.ts';
import { done, refused, type Outcome } from '#cli/line/outcome.ts';

export function stressOfFile(words: readonly string[]): Outcome {
  const given = readArguments(words, { json: 'switch' });
  if (given.kind === 'wrong') return refused(`stress: ${given.says}.`);
  const { files, options } = given;
  const [file] = files;
  if (file === undefined || files.length > 1)
    return refused('stress: name one design file, or - for standard input.');
  const loaded = loadDesign(file);
  if (loaded.kind === 'bad') return refused(faultLines(file, loaded.faults));
  const { design } = loaded;
  const sheet = study(design).stress;
  return done(options.has('json') ? `${JSON.stringify(sheet, null, 2)}\n` : stressText(design, sheet));
}
