// `compare A B [--json]`: two builds side by side, layer by layer and pair by pair.

import { compared } from '#judge/compare/comparison.ts';
import { judge } from '#judge/judging/judge.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { comparisonLines } from '#words/mend/compare-words.ts';
import { changeWords } from '#words/mend/mend-words.ts';
import { printable } from '#words/text/printable.ts';
import { readArguments } from '#cli/line/arguments.ts';
import { faultLines, loadDesign } from '#cli/files/load-design.ts';
import { done, refused, type Outcome } from '#cli/line/outcome.ts';

export function compareFiles(words: readonly string[]): Outcome {
  const given = readArguments(words, { json: 'switch' });
  if (given.kind === 'wrong') return refused(`compare: ${given.says}.`);
  const [fileA, fileB, ...more] = given.files;
  if (fileA === undefined || fileB === undefined || more.length > 0)
    return refused('compare: name two design files.');
  const [a, b] = [loadDesign(fileA), loadDesign(fileB)];
  const faults = [
    ...(a.kind === 'bad' ? [faultLines(fileA, a.faults)] : []),
    ...(b.kind === 'bad' ? [faultLines(fileB, b.faults)] : []),
  ];
  if (a.kind === 'bad' || b.kind === 'bad') return refused(faults.join('\n'));
  const cache = new PathCache();
  const [sideA, sideB] = [a, b].map(({ text, design }) => ({
    doc: JSON.parse(text) as DesignFile,
    verdict: judge(design, cache).verdict,
  })) as [Parameters<typeof compared>[0], Parameters<typeof compared>[1]];
  const comparison = compared(sideA, sideB);
  if (!given.options.has('json'))
    return done(`${comparisonLines(comparison, [sideA.doc, sideB.doc]).map(printable).join('\n')}\n`);
  const { changed, pairs, ...rest } = comparison;
  const data = {
    format: 'layerwright-compare/1',
    titles: [sideA.verdict.title, sideB.verdict.title],
    ...rest,
    changed: changed.map((change) => ({ ...change, says: changeWords(change, sideB.doc) })),
    pairs,
  };
  return done(`${JSON.stringify(data, null, 2)}\n`);
}
