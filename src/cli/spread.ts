// `spread FILE [--draws N] [--seed S] [--json]`: the share of pieces that meet when they are wound by this drawing.

import { knownIds } from '#judge/fill/known-ids.ts';
import { judge } from '#judge/judge.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import { readDesign } from '#model/read/read-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { PLACEMENT } from '#spread/placement.ts';
import { spread, type JudgeFile, type Spread } from '#spread/spread.ts';
import { spreadLines } from '#words/mend/spread-words.ts';
import { printable } from '#words/text/printable.ts';
import { readArguments } from './arguments.ts';
import { faultLines, loadDesign } from './load-design.ts';
import { done, refused, type Outcome } from './outcome.ts';

const MOST_DRAWS = 1_000_000;

export function spreadFile(words: readonly string[]): Outcome {
  const given = readArguments(words, { draws: 'value', seed: 'value', json: 'switch' });
  if (given.kind === 'wrong') return refused(`spread: ${given.says}.`);
  const [file, ...more] = given.files;
  if (file === undefined || more.length > 0)
    return refused('spread: name one design file, or - for standard input.');
  const draws = Number(given.options.get('draws') ?? 1000);
  const seed = Number(given.options.get('seed') ?? 1);
  if (!Number.isInteger(draws) || draws < 1 || draws > MOST_DRAWS)
    return refused(`spread: --draws is a whole number from 1 to ${MOST_DRAWS}.`);
  if (!Number.isInteger(seed) || seed < 0) return refused('spread: --seed is a whole number from 0 up.');
  const loaded = loadDesign(file);
  if (loaded.kind === 'bad') return refused(faultLines(file, loaded.faults));
  const doc = JSON.parse(loaded.text) as DesignFile;
  const found = whole(doc, { draws, seed });
  if (given.options.has('json'))
    return done(`${JSON.stringify({ format: 'layerwright-spread/1', ...found }, null, 2)}\n`);
  return done(`${spreadLines(found, doc).map(printable).join('\n')}\n`);
}

function whole(doc: DesignFile, options: { readonly draws: number; readonly seed: number }): Spread {
  const cache = new PathCache();
  const judgeFile: JudgeFile = (piece) => {
    const read = readDesign(piece, knownIds);
    return read.kind === 'bad' ? null : judge(read.design, cache).verdict;
  };
  const search = spread(doc, judgeFile, { ...options, placement: PLACEMENT });
  for (;;) {
    const step = search.next();
    if (step.done) return step.value;
  }
}
