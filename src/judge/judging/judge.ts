// The judgement of a design: what is needed and achieved between every two circuits, and the verdict over all.
// Judged twice, with all unknowns at worst and all at best; what differs is not shown.

import type { NotJudged } from '#judge/verdict/remark.ts';
import { because, citesOf, weakestConfirmed, type Because, type Confirmed } from '#standards/because.ts';
import { bookOf } from '#books/book-of.ts';
import type { Design } from '#model/design.ts';
import type { Build } from '#solver/section/build.ts';
import { chamberFits } from '#solver/placing/chamber-fits.ts';
import type { Section } from '#solver/section/section.ts';
import { type Turn, turnsOf } from '#solver/placing/turns.ts';
import { soldIn } from '#judge/assume/sold-in.ts';
import { heatOf } from '#stress/heat/heat.ts';
import { inMm, type Nm } from '#units/quantity.ts';
import { assumptionsOf, openFrequencies, openVoltages } from '#judge/assumptions/assumptions.ts';
import { bookRemarks } from '#judge/remarks/book-remarks.ts';
import { bestFigures } from '#judge/assumptions/best-figures.ts';
import { hotSpot, overfullSpot, touchSpot } from '#judge/spots/build-spots.ts';
import { openBridgeFields } from '#judge/conductors/open-bridges.ts';
import { judgeBest } from '#judge/cases/best-case.ts';
import { decidersOf } from '#judge/cases/deciders.ts';
import { reaches } from '#standards/ladder.ts';
import type { PairOutcome } from '#judge/paths/case-result.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import {
  answerOf,
  heldBack,
  judgedAnswers,
  lowestAnswer,
  type Missing,
  missingOf,
  undrawnOf,
  unplacedAt,
} from '#judge/answers/pair-answer.ts';
import { DrawnSections } from '#judge/answers/drawn-sections.ts';
import { ownRemarks, strayRemarks } from '#judge/remarks/own-remarks.ts';
import { printPair } from '#judge/answers/print-pair.ts';
import { notJudgedOf, remarksOf } from '#judge/remarks/remarks.ts';
import { requiredLength, weakSpots } from '#judge/spots/spots.ts';
import type { CoreAsPrimary, Fit, Verdict } from '#judge/verdict/verdict.ts';
import type { PairVerdict } from '#judge/verdict/pair.ts';
import type { Answer } from '#judge/verdict/answer.ts';
import { judgedTouch, type FieldWindings } from '#judge/cases/judged-touch.ts';
import { openOfBuild } from '#judge/assumptions/open-of-build.ts';
import { judgedParts, type JudgedParts } from '#judge/cases/judged-parts.ts';
import { judgeWorst, type WorstCase } from '#judge/cases/worst-case.ts';

export interface Judgement {
  readonly verdict: Verdict;
  /** As judged at worst, intervals nominal; the plain one first, after them those of paths that lie elsewhere. */
  readonly sections: readonly Section[];
  /** Turns of every section by its name, worked out only when asked for. */
  readonly turns: { readonly get: (section: string) => readonly Turn[] | undefined };
  /** Every bridging part and distance outside, graded as the pairs rest on it. */
  readonly parts: JudgedParts;
  /** Capacitances of the windings by the field, where the touch current was judged with them. */
  readonly windings: FieldWindings | null;
}

/** A judgement before its turns are asked for: data without a function, which may go from one thread to another. */
export interface PlainJudgement extends Pick<Judgement, 'verdict' | 'sections' | 'parts' | 'windings'> {
  /** What each of the sections is of. */
  readonly builds: readonly Build[];
}

/** Throws where the rule book does not exist: reading the file has refused it. `cache` may live from call to call. */
export const judge = (design: Design, cache: PathCache = new PathCache()): Judgement =>
  withTurns(judgePlain(design, cache));

export const withTurns = ({ verdict, sections, parts, windings, builds }: PlainJudgement): Judgement => ({
  verdict,
  sections,
  parts,
  windings,
  turns: {
    get: (name) => {
      const at = sections.findIndex((each) => each.name === name);
      return at < 0 ? undefined : turnsOf(builds[at]!, sections[at]!);
    },
  },
});

/** `windings`: as the field has them, to take the place of the estimate. */
export function judgePlain(
  asFiled: Design,
  cache: PathCache,
  book = bookOf(asFiled),
  windings: FieldWindings | null = null,
): PlainJudgement {
  const design = soldIn(asFiled, book);
  cache.nextGeneration();
  const judging = { book, cache, printed: false, reachOnly: false };
  const worst = judgeWorst({ ...judging, printed: true }, design);
  const best = judgeBest(judging, design, worst);
  const missing = missingOf(design);
  const answers = worst.pairs.map((pair, i) => answerOf(pair, best[i]!, missing));
  const { filled, build } = worst.nominal;
  const { overfull } = worst;
  const short = ({ achieved, needed }: PairOutcome) => !reaches(achieved, needed);
  const open = new Set(
    answers.flatMap((answer, i) => (answer === 'not-shown' && short(worst.pairs[i]!) ? [i] : [])),
  );
  const fields = [
    ...filled.counted.flatMap(({ field, kind }) => (kind === 'default' ? [] : [field])),
    ...design.bridges.flatMap(openBridgeFields).map(({ field }) => field),
    ...openFrequencies(worst.pairs).map(({ field }) => field),
    ...openVoltages(worst.pairs).map(({ field }) => field),
  ];
  const deciders = decidersOf(judging, design, fields, open, worst);
  const heat = heatOf(design, book);
  const hot = hotSpot(heat);
  const touch = judgedTouch(design, book, windings, fields.length === 0);
  const touching = touch && touchSpot(touch);
  const overall = (all: readonly Answer[]): Answer =>
    lowestAnswer([
      ...judgedAnswers(worst.pairs, all, missing),
      ...(hot ? [hot.verdict] : []),
      ...(touch ? [touch.touch.verdict] : []),
      ...(overfull ? ['not-shown' as const] : []),
    ]);
  const unknowns = { counted: filled.counted, deciding: deciders.deciding };
  const drawn = new DrawnSections(worst.nominal.sections, build);
  const bestDrawn = best.map((pair, i) => (answers[i] === 'falls-short' ? drawn.placed(pair) : pair));
  const pairs = worst.pairs.map((pair, i) =>
    printPair(
      book,
      design,
      drawn.placed(pair),
      bestDrawn[i]!,
      answers[i]!,
      undrawnOf(pair, missing),
      unplacedAt(pair, missing),
      answers[i] === 'not-shown' && short(pair) ? unknowns : null,
    ),
  );
  const spots = weakSpots(
    design,
    worst.pairs.map((pair, i) => ({
      worst: drawn.placed(pair),
      best: bestDrawn[i]!,
      verdict: answers[i]!,
      unknowns,
    })),
  );
  const verdict: Verdict = {
    format: 'layerwright-verdict/1',
    title: design.title,
    rules: { id: book.id, edition: yearOf(book.edition) },
    verdict: overall(answers),
    notJudged: notJudgedOf(design, worst.pairs, [...filled.notJudged, ...notDrawn(missing)], heat),
    coreAsPrimary: coreAsPrimary(judging, design, worst, answers),
    pairs,
    touchCurrent: touch && touch.touch,
    weakSpots: [
      ...spots,
      ...(touching ? [touching] : []),
      ...(overfull ? [overfullSpot(overfull.build)] : []),
      ...(hot ? [hot] : []),
    ],
    fit: fitOf(build),
    remarks: [
      ...bookRemarks(book, design, worst.pairs),
      ...remarksOf(design, build, worst.pairs),
      ...ownRemarks(pairs.flatMap(groundsOf)),
      ...strayRemarks(design.confirmed),
    ],
    assumptions: [
      ...openOfBuild(design, heat, touch?.touch ?? null),
      ...assumptionsOf(design, {
        national: book.national(design.supply.market),
        counted: filled.counted,
        intervals: worst.intervals,
        deciders,
        pairs: worst.pairs,
        ...heldBack(worst.pairs, answers, missing),
        figureAtBest: bestFigures(book, design, worst.pairs),
        verdictWith: (reached) => overall(answers.map((answer, i) => (reached.has(i) ? 'meets' : answer))),
      }),
    ],
    restsOn: restsOn(pairs.flatMap(groundsOf)),
  };
  const { sections, builds } = drawn;
  const parts = judgedParts(judging, design, worst.pairs, best);
  return { verdict, sections, parts, windings, builds };
}

const notDrawn = ({ undrawn }: Missing): readonly NotJudged[] =>
  [...undrawn].map((circuit) => ({ what: 'undrawn', circuit }));

/** `3 (2018)` is told as 2018. */
const yearOf = (edition: string): string => /\((\d{4})\)/.exec(edition)?.[1] ?? edition;

/** Laboratories often count the core with the primary: shown beside a core that floats. */
function coreAsPrimary(
  judging: Parameters<typeof judgeWorst>[0],
  design: Design,
  asIs: WorstCase,
  answers: readonly Answer[],
): CoreAsPrimary | null {
  const { bond } = design.core;
  const primary = design.circuits.find(({ role }) => role === 'mains');
  if (bond !== 'floating' || !primary || asIs.nominal.coreBonds[0] !== null) return null;
  const worst = judgeWorst(judging, design, primary.id);
  const best = judgeBest(judging, design, worst, primary.id);
  const missing = missingOf(design);
  const tied = worst.pairs.map((pair, i) => answerOf(pair, best[i]!, missing));
  const asked = worst.pairs.flatMap((pair, i) => (pair.needed === null ? [] : [{ pair, verdict: tied[i]! }]));
  const pairs = asked.map(({ pair, verdict }) => {
    const isJudged = undrawnOf(pair, missing).length === 0 || verdict !== 'not-shown';
    const path = isJudged && pair.holding?.kind === 'path' ? pair.holding : null;
    return {
      between: pair.between,
      achieved: isJudged ? pair.achieved : ('none' as const),
      verdict,
      length: path && inMm(path.length as Nm),
      required: path && requiredLength(path, pair),
      metric: path && path.metric,
    };
  });
  const all = [tied, answers].flatMap((each) => judgedAnswers(worst.pairs, each, missing));
  return { verdict: lowestAnswer(all), pairs };
}

export function fitOf(build: Parameters<typeof chamberFits>[0]): Fit {
  const fits = chamberFits(build);
  const used = Math.max(0, ...fits.map((fit) => fit.used)) as Nm;
  return {
    height: { used: inMm(used), available: inMm(build.height) },
    chambers: fits.map((fit) => ({
      used: inMm(fit.used),
      layers: fit.layers.map((layer) => ({ ...layer, height: inMm(layer.height) })),
    })),
  };
}

/** What a pair rests on: what its circuits ask, the figure that is asked where a path holds it, how its grade was found. */
const groundsOf = ({ limiting, because: why }: PairVerdict): readonly Because[] =>
  limiting === null ? [why] : [limiting.because, why];

/** The least confirmed figure that any pair rests on; a second-hand copy counts as memory. */
function restsOn(whys: readonly Because[]): Confirmed {
  const all = because('verdict', {}, [], whys);
  const weakest = citesOf(all).length === 0 ? 'stated' : weakestConfirmed(all);
  return weakest === 'secondary' ? 'memory' : weakest;
}
