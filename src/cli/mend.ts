// `mend FILE [--json] [--top N]`: the smallest changes that reach what is needed, best first, or why there are none.

import { knownIds } from '#judge/fill/known-ids.ts';
import { judge } from '#judge/judge.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import { MEND_DEFAULTS, mend, type JudgeFile, type Mending } from '#mend/mend.ts';
import { heldOf, type Held } from '#mend/slack.ts';
import { readDesign } from '#model/read/read-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { changeWords, limitWords, mendingLines, noMendWords } from '#words/mend/mend-words.ts';
import { printable } from '#words/text/printable.ts';
import { readArguments } from './arguments.ts';
import { faultLines, loadDesign } from './load-design.ts';
import { done, refused, type Outcome } from './outcome.ts';

const MOST = 20;

export function mendFile(words: readonly string[]): Outcome {
  const given = readArguments(words, { json: 'switch', top: 'value' });
  if (given.kind === 'wrong') return refused(`mend: ${given.says}.`);
  const [file, ...more] = given.files;
  if (file === undefined || more.length > 0)
    return refused('mend: name one design file, or - for standard input.');
  const top = Number(given.options.get('top') ?? MEND_DEFAULTS.top);
  if (!Number.isInteger(top) || top < 1 || top > MOST)
    return refused(`mend: --top is a whole number from 1 to ${MOST}.`);
  const loaded = loadDesign(file);
  if (loaded.kind === 'bad') return refused(faultLines(file, loaded.faults));
  const doc = JSON.parse(loaded.text) as DesignFile;
  const judgeFile = judges();
  const mending = wholeMending(doc, top, judgeFile);
  const held = mending.proposals.map(({ design, changes }) => heldOf(design, changes, judgeFile));
  if (given.options.has('json')) return done(`${JSON.stringify(mendData(mending, held, doc), null, 2)}\n`);
  return done(`${mendingLines(mending, held, doc).map(printable).join('\n')}\n`);
}

function judges(): JudgeFile {
  const cache = new PathCache();
  return (edited) => {
    const read = readDesign(edited, knownIds);
    return read.kind === 'bad' ? null : judge(read.design, cache).verdict;
  };
}

/** Once something was found, the search goes on for so long, ms. */
const ENOUGH = 10_000;

function wholeMending(doc: DesignFile, top: number, judgeFile: JudgeFile): Mending {
  const began = Date.now();
  const search = mend(doc, judgeFile, { ...MEND_DEFAULTS, top });
  for (;;) {
    const step = search.next();
    if (step.done) return step.value;
    if (step.value.proposals.length > 0 && Date.now() - began > ENOUGH) return step.value;
  }
}

const mendData = ({ proposals, none }: Mending, held: readonly Held[], doc: DesignFile) => ({
  format: 'layerwright-mend/1',
  proposals: proposals.map(({ changes, design, verdict, cost }, i) => ({
    changes: changes.map((change) => ({ ...change, says: changeWords(change, doc) })),
    design,
    verdict: verdict.verdict,
    cost: {
      height: cost.height,
      width: cost.width,
      plies: cost.plies,
      fill: cost.fill,
      coupling: cost.coupling,
    },
    share: held[i]?.share ?? null,
    slack: slackData(held[i]?.slack ?? null),
    limits: limitWords(verdict),
  })),
  none: none === null ? null : noMendWords(none),
});

const slackData = (slack: Held['slack']) => slack && { field: slack.field, to: slack.to, share: slack.share };
