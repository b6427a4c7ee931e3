// `mend FILE [--json | --out X.html [--black]] [--top N]`: the smallest changes that reach what is needed, best first, or why there
// are none; as a report with each way drawn before and after.

import { fileJudge } from '#judge/judging/judge-files.ts';
import { heldMends, type HeldMending } from '#mend/hold/held-mends.ts';
import { patienceOf } from '#mend/hold/patience.ts';
import { MEND_DEFAULTS } from '#mend/search/mend.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import type { Design } from '#model/design.ts';
import { readDesign } from '#model/read/read-design.ts';
import { compared } from '#judge/compare/comparison.ts';
import { comparedBuild, sideOf } from '#cli/files/compared-build.ts';
import { mendReport, type Way } from '#papers/html/compare/mend-report.ts';
import { writeWhole } from '#cli/files/write-whole.ts';
import type { Held } from '#mend/hold/slack.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { changeWords, limitWords, mendingLines, rankWords } from '#words/mend/mend-words.ts';
import { noMendWords } from '#words/mend/no-mend-words.ts';
import { printable } from '#words/text/printable.ts';
import { readArguments } from '#cli/line/arguments.ts';
import { faultLines, loadDesign } from '#cli/files/load-design.ts';
import { done, refused, type Outcome } from '#cli/line/outcome.ts';

const MOST = 20;

export function mendFile(words: readonly string[]): Outcome {
  const given = readArguments(words, {
    json: 'switch',
    top: 'value',
    out: 'value',
    black: 'switch',
  });
  if (given.kind === 'wrong') return refused(`mend: ${given.says}.`);
  const [file, ...more] = given.files;
  if (file === undefined || more.length > 0)
    return refused('mend: name one design file, or - for standard input.');
  const top = Number(given.options.get('top') ?? MEND_DEFAULTS.top);
  if (!Number.isInteger(top) || top < 1 || top > MOST)
    return refused(`mend: --top is a whole number from 1 to ${MOST}.`);
  if (given.options.has('out') && given.options.has('json'))
    return refused('mend: either --json or --out X.html.');
  if (given.options.has('black') && !given.options.has('out'))
    return refused('mend: --black goes with --out X.html.');
  const loaded = loadDesign(file);
  if (loaded.kind === 'bad') return refused(faultLines(file, loaded.faults));
  const doc = JSON.parse(loaded.text) as DesignFile;
  const mending = wholeMending(doc, top);
  const out = given.options.get('out');
  if (out !== undefined)
    return writeWhole(out, mendHtml(loaded.design, doc, mending, given.options.has('black')), 'mend');
  if (given.options.has('json')) return done(`${JSON.stringify(mendData(mending, doc), null, 2)}\n`);
  return done(`${mendingLines(mending, doc).map(printable).join('\n')}\n`);
}

function wholeMending(doc: DesignFile, top: number): HeldMending {
  const search = heldMends(doc, fileJudge(), { ...MEND_DEFAULTS, top }, patienceOf(worked));
  for (;;) {
    const step = search.next();
    if (step.done === true) return step.value;
  }
}

function mendHtml(design: Design, doc: DesignFile, mending: HeldMending, black: boolean): string {
  const found = comparedBuild('as found', doc, design);
  const ways = mending.proposals.flatMap((proposal, i): readonly Way[] => {
    const read = readDesign(proposal.design, knownIds);
    if (read.kind === 'bad') return [];
    const build = comparedBuild(`way ${i + 1}`, proposal.design, read.design);
    return [{ build, comparison: compared(sideOf(found), sideOf(build)) }];
  });
  return mendReport({ found, mending, ways, black });
}

/** Seconds of the processor so far: what a machine does beside it does not count. */
function worked(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
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
    drawn: held[i]?.drawn ?? null,
    cut: held[i] === undefined ? null : { share: held[i].isCut, slack: held[i].isSlackCut },
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
  slack && {
    field: slack.field,
    of: slack.of,
    by: slack.by,
    sleevesBy: slack.sleevesBy,
    to: slack.to,
    share: slack.share,
  };
