// `mend FILE [--json] [--top N]`: the smallest changes that reach what is needed, best first, or why there are none.

import { fileJudge } from '#judge/judging/judge-files.ts';
import { heldMends, type HeldMending } from '#mend/hold/held-mends.ts';
import { MEND_DEFAULTS } from '#mend/search/mend.ts';
import type { Held } from '#mend/hold/slack.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { changeWords, limitWords, mendingLines, noMendWords, rankWords } from '#words/mend/mend-words.ts';
import { printable } from '#words/text/printable.ts';
import { readArguments } from '#cli/line/arguments.ts';
import { faultLines, loadDesign } from '#cli/files/load-design.ts';
import { done, refused, type Outcome } from '#cli/line/outcome.ts';

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
  const mending = wholeMending(doc, top);
  if (given.options.has('json')) return done(`${JSON.stringify(mendData(mending, doc), null, 2)}\n`);
  return done(`${mendingLines(mending, doc).map(printable).join('\n')}\n`);
}

function wholeMending(doc: DesignFile, top: number): HeldMending {
  const search = heldMends(doc, fileJudge(), { ...MEND_DEFAULTS, top });
  for (;;) {
    const step = search.next();
    if (step.done === true) return step.value;
  }
}

const mendData = ({ proposals, held, none, leftOut }: HeldMending, doc: DesignFile) => ({
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
    why: rankWords(proposals[i]!, proposals),
    limits: limitWords(verdict),
    coreAsPrimary: verdict.coreAsPrimary && { verdict: verdict.coreAsPrimary.verdict },
    stillOpen: verdict.pairs.filter((pair) => pair.verdict === 'not-shown').map(({ between }) => between),
  })),
  leftOut: leftOut.map(({ changes, overfull, pair }) => ({
    changes: changes.map((change) => ({ ...change, says: changeWords(change, doc) })),
    overfull,
    pair: pair && pair.between,
    length: pair && pair.length,
    required: pair && pair.required,
  })),
  none: none === null ? null : noMendWords(none, doc),
});

const slackData = (slack: Held['slack']) =>
  slack && { field: slack.field, of: slack.of, by: slack.by, to: slack.to, share: slack.share };
