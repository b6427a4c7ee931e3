// The verdict of what was found: every pair printed, the weak spots, what stands across all pairs.

import type { NotJudged } from '#judge/verdict/remark.ts';
import { because, citesOf, weakestConfirmed, type Because, type Confirmed } from '#standards/because.ts';
import { heatOf } from '#stress/heat/heat.ts';
import { assumptionsOf } from '#judge/assumptions/assumptions.ts';
import { bookRemarks } from '#judge/remarks/book-remarks.ts';
import { bestFigures } from '#judge/assumptions/best-figures.ts';
import { hotSpot, overfullSpot, touchSpot } from '#judge/spots/build-spots.ts';
import {
  heldBack,
  judgedAnswers,
  lowestAnswer,
  type Missing,
  undrawnOf,
  unplacedAt,
} from '#judge/answers/pair-answer.ts';
import type { DrawnSections } from '#judge/answers/drawn-sections.ts';
import { ownRemarks, strayRemarks } from '#judge/remarks/own-remarks.ts';
import { printPair } from '#judge/answers/print-pair.ts';
import { notJudgedOf, remarksOf } from '#judge/remarks/remarks.ts';
import { weakSpots } from '#judge/spots/spots.ts';
import type { Assumption, Verdict } from '#judge/verdict/verdict.ts';
import type { WeakSpot } from '#judge/verdict/spot.ts';
import type { PairVerdict } from '#judge/verdict/pair.ts';
import type { Answer } from '#judge/verdict/answer.ts';
import { judgedTouch, type FieldWindings } from '#judge/cases/judged-touch.ts';
import { openOfBuild } from '#judge/assumptions/open-of-build.ts';
import { coreAsPrimary } from './core-as-primary.ts';
import { fitOf } from './fit-of.ts';
import { type Found, isShort } from './found.ts';

/** `drawn` grows by the sections that paths are told on; `windings`: as the field has them, in place of the estimate. */
export function verdictOf(found: Found, drawn: DrawnSections, windings: FieldWindings | null): Verdict {
  const { judging, design, worst, answers, missing } = found;
  const { book } = judging;
  const { filled, build } = worst.nominal;
  const whole = wholeOf(found, windings);
  const { pairs, spots } = printedOf(found, drawn);
  const grounds = pairs.flatMap(groundsOf);
  return {
    format: 'layerwright-verdict/1',
    title: design.title,
    rules: { id: book.id, edition: yearOf(book.edition) },
    verdict: whole.verdictWith(answers),
    notJudged: notJudgedOf(design, worst.pairs, [...filled.notJudged, ...notDrawn(missing)], whole.heat),
    coreAsPrimary: coreAsPrimary(found),
    pairs,
    touchCurrent: whole.touch && whole.touch.touch,
    weakSpots: [...spots, ...whole.spots],
    fit: fitOf(build),
    remarks: [
      ...bookRemarks(book, design, worst.pairs),
      ...remarksOf(design, build, worst.pairs),
      ...ownRemarks(grounds),
      ...strayRemarks(design.confirmed),
    ],
    assumptions: assumptionsIn(found, whole),
    restsOn: restsOn(grounds),
  };
}

/** What is found of the build beside its pairs. */
interface Whole {
  readonly heat: ReturnType<typeof heatOf>;
  readonly touch: ReturnType<typeof judgedTouch>;
  readonly spots: readonly WeakSpot[];
  /** The verdict, the pairs answered so. */
  readonly verdictWith: (answers: readonly Answer[]) => Answer;
}

function wholeOf({ judging, design, worst, missing, fields }: Found, windings: FieldWindings | null): Whole {
  const { book } = judging;
  const { overfull } = worst;
  const heat = heatOf(design, book);
  const hot = hotSpot(heat);
  const touch = judgedTouch(design, book, windings, fields.length === 0);
  const touching = touch && touchSpot(touch);
  return {
    heat,
    touch,
    spots: [
      ...(touching ? [touching] : []),
      ...(overfull ? [overfullSpot(overfull.build)] : []),
      ...(hot ? [hot] : []),
    ],
    verdictWith: (answers) =>
      lowestAnswer([
        ...judgedAnswers(worst.pairs, answers, missing),
        ...(hot ? [hot.verdict] : []),
        ...(touch ? [touch.touch.verdict] : []),
        ...(overfull ? ['not-shown' as const] : []),
      ]),
  };
}

function printedOf(
  { judging, design, worst, best, answers, missing, deciders }: Found,
  drawn: DrawnSections,
) {
  const unknowns = { counted: worst.nominal.filled.counted, deciding: deciders.deciding };
  const bestDrawn = best.map((pair, i) => (answers[i] === 'falls-short' ? drawn.placed(pair) : pair));
  const pairs = worst.pairs.map((pair, i) =>
    printPair(
      judging.book,
      design,
      drawn.placed(pair),
      bestDrawn[i]!,
      answers[i]!,
      undrawnOf(pair, missing),
      unplacedAt(pair, missing),
      answers[i] === 'not-shown' && isShort(pair) ? unknowns : null,
    ),
  );
  const outcomes = worst.pairs.map((pair, i) => ({
    worst: drawn.placed(pair),
    best: bestDrawn[i]!,
    verdict: answers[i]!,
    unknowns,
  }));
  return { pairs, spots: weakSpots(design, outcomes) };
}

function assumptionsIn(
  { judging, design, worst, answers, missing, deciders }: Found,
  { heat, touch, verdictWith }: Whole,
): readonly Assumption[] {
  const { book } = judging;
  return [
    ...openOfBuild(design, heat, touch?.touch ?? null),
    ...assumptionsOf(design, {
      national: book.national(design.supply.market),
      counted: worst.nominal.filled.counted,
      intervals: worst.intervals,
      deciders,
      pairs: worst.pairs,
      ...heldBack(worst.pairs, answers, missing),
      figureAtBest: bestFigures(book, design, worst.pairs),
      verdictWith: (reached) => verdictWith(answers.map((answer, i) => (reached.has(i) ? 'meets' : answer))),
    }),
  ];
}

const notDrawn = ({ undrawn }: Missing): readonly NotJudged[] =>
  [...undrawn].map((circuit) => ({ what: 'undrawn', circuit }));

/** `3 (2018)` is told as 2018. */
const yearOf = (edition: string): string => /\((\d{4})\)/.exec(edition)?.[1] ?? edition;

/** What a pair rests on: what its circuits ask, the figure that is asked where a path holds it, how its grade was found. */
const groundsOf = ({ limiting, because: why }: PairVerdict): readonly Because[] =>
  limiting === null ? [why] : [limiting.because, why];

/** The least confirmed figure that any pair rests on; a second-hand copy counts as memory. */
function restsOn(whys: readonly Because[]): Confirmed {
  const all = because('verdict', {}, [], whys);
  const weakest = citesOf(all).length === 0 ? 'stated' : weakestConfirmed(all);
  return weakest === 'secondary' ? 'memory' : weakest;
}
