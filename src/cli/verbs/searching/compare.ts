// `compare A B [--json | --out X.html [--black]]`: two builds side by side, layer by layer and pair by pair; as a report drawn to
// one scale.

import { compared } from '#judge/compare/comparison.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { compareReport } from '#papers/html/compare/compare-report.ts';
import { fitSide, type ComparedBuild } from '#papers/html/compare/compared-build.ts';
import { fitChanges } from '#words/mend/fit-changes.ts';
import { comparedBuild, sideOf } from '#cli/files/compared-build.ts';
import { writeWhole } from '#cli/files/write-whole.ts';
import { comparisonLines } from '#words/mend/compare-words.ts';
import { changeWords } from '#words/mend/mend-words.ts';
import { printable } from '#words/text/printable.ts';
import { readArguments } from '#cli/line/arguments.ts';
import { faultLines, loadDesign } from '#cli/files/load-design.ts';
import { done, refused, type Outcome } from '#cli/line/outcome.ts';

export function compareFiles(words: readonly string[]): Outcome {
  const given = readArguments(words, { json: 'switch', out: 'value', black: 'switch' });
  if (given.kind === 'wrong') return refused(`compare: ${given.says}.`);
  const [fileA, fileB, ...more] = given.files;
  if (fileA === undefined || fileB === undefined || more.length > 0)
    return refused('compare: name two design files.');
  if (given.options.has('out') && given.options.has('json'))
    return refused('compare: either --json or --out X.html.');
  const [a, b] = [loadDesign(fileA), loadDesign(fileB)];
  const faults = [
    ...(a.kind === 'bad' ? [faultLines(fileA, a.faults)] : []),
    ...(b.kind === 'bad' ? [faultLines(fileB, b.faults)] : []),
  ];
  if (a.kind === 'bad' || b.kind === 'bad') return refused(faults.join('\n'));
  const cache = new PathCache();
  const [builtA, builtB] = [a, b].map(({ text, design }) =>
    comparedBuild(design.title, JSON.parse(text) as DesignFile, design, cache),
  ) as [ComparedBuild, ComparedBuild];
  const [sideA, sideB] = [sideOf(builtA), sideOf(builtB)];
  const comparison = compared(sideA, sideB);
  const out = given.options.get('out');
  if (out !== undefined)
    return writeWhole(
      out,
      compareReport([builtA, builtB], comparison, given.options.has('black')),
      'compare',
    );
  const fit = fitChanges(fitSide(builtA), fitSide(builtB));
  if (!given.options.has('json'))
    return done(`${comparisonLines(comparison, fit, [sideA.doc, sideB.doc]).map(printable).join('\n')}\n`);
  return done(`${JSON.stringify(asData(comparison, [sideA, sideB], fit), null, 2)}\n`);
}

/** `layerwright-compare/1` */
function asData(
  { changed, pairs, ...rest }: ReturnType<typeof compared>,
  [a, b]: readonly [ReturnType<typeof sideOf>, ReturnType<typeof sideOf>],
  fit: ReturnType<typeof fitChanges>,
): object {
  return {
    format: 'layerwright-compare/1',
    titles: [a.verdict.title, b.verdict.title],
    ...rest,
    changed: changed.map((change) => ({ ...change, says: changeWords(change, b.doc) })),
    pairs,
    fit,
  };
}
