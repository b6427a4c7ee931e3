// A judged pair as it is printed: millimetres and volts, what is required with its derivation, the paths by plies.

import { because } from '#standards/because.ts';
import type { Book } from '#books/questions/book.ts';
import { isOutOfRange } from '#standards/tables/out-of-range.ts';
import type { Design } from '#model/design.ts';
import { inMm, nm, type Nm } from '#units/quantity.ts';
import { countedLength } from '#judge/grade/chain.ts';
import { beyondTables } from './pair-answer.ts';
import { printed } from '#judge/grade/grade.ts';
import { PRINTED_PLIES } from '#judge/paths/shortest-paths.ts';
import type { FoundPath, PairOutcome } from '#judge/paths/case-result.ts';
import { askedRank } from '#judge/paths/asked-rank.ts';
import { orientedLegs, pathPoints, printedLegs } from '#judge/paths/path-legs.ts';
import { pairReasons } from './pair-reasons.ts';
import { conditionsOf, type Unknowns } from '#judge/spots/conditions.ts';
import { placeOf } from '#judge/spots/spot-kind.ts';
import { requiredLength } from '#judge/spots/spots.ts';
import { GROUPS } from '#judge/assume/stuff.ts';
import { byMeans } from './by-means.ts';
import { printDistance } from './print-distance.ts';
import type { PrintedPath } from '#judge/verdict/path.ts';
import type { Limiting, PairStress, PairVerdict, Proven, Required } from '#judge/verdict/pair.ts';
import type { Answer } from '#judge/verdict/answer.ts';

export function printPair(
  book: Book,
  design: Design,
  worst: PairOutcome,
  best: PairOutcome,
  verdict: Answer,
  undrawn: readonly string[],
  unplaced: readonly string[],
  unknowns: Unknowns | null,
): PairVerdict {
  const { between, needed } = worst;
  const isJudged = undrawn.length === 0 || verdict !== 'not-shown';
  const achieved = isJudged ? worst.achieved : 'none';
  const paths = (['creepage', 'clearance'] as const).flatMap((metric) =>
    PRINTED_PLIES.map((k) => printPath(design, worst, metric, k, worst.shortest[metric][k] ?? null)),
  );
  return {
    between,
    needed: needed ?? 'functional',
    achieved,
    achievedAtBest: (needed === null ? worst : best).achieved,
    verdict,
    undrawn,
    beyond: beyondTables(worst),
    unplaced,
    stress: printStress(worst),
    required: needed === null ? null : printRequired(book, design, worst),
    paths,
    limiting: isJudged ? printLimiting(design, worst, unknowns) : null,
    proven: verdict === 'falls-short' && needed !== null ? printProven(design, best) : null,
    because: because(
      'judged-pair',
      { needed, achieved, verdict },
      [],
      [worst.neededBecause, ...pairReasons(worst)],
    ),
  };
}

function printStress({ stress, transients }: PairOutcome): PairStress {
  const { withstand } = transients;
  return {
    rms: stress.nominal.rms,
    peak: stress.nominal.peak,
    frequency: stress.frequency,
    withstand: isOutOfRange(withstand) ? 0 : withstand.value,
    basis: stress.basis,
    because: because('stress', {}, [], [stress.because, withstand.because]),
  };
}

function printRequired(book: Book, design: Design, pair: PairOutcome): Required {
  const { required } = pair;
  const group = GROUPS[weakestRank(pair)]!;
  const least = book.leastThickness();
  const rule = book.sheets();
  return {
    clearance: printDistance(required.clearance),
    creepage: { ...printDistance(required.creepage(group)), materialGroup: group },
    throughInsulation: {
      leastThickness: inMm(least.value),
      plies: rule.value,
      ...supplementaryRule(book),
      because: because('through-insulation', {}, [], [least.because, rule.because]),
    },
    test: printTest(book, pair),
    ...(book.asksMeans && { byMeans: byMeans(book, design, pair, group) }),
  };
}

function printTest({ testSeconds }: Book, { required, needed }: PairOutcome): Required['test'] {
  const { basic, reinforced, supplementary } = required.test;
  const own = needed === 'supplementary' ? (supplementary ?? basic) : basic;
  const asked = needed === 'reinforced' || needed === 'double' ? reinforced : own;
  const peakOf = (level: typeof basic) => (isOutOfRange(level) ? null : level.value);
  const peak = peakOf(asked);
  // no material has a lower factor than one without a row: its level is the highest of all solids
  const high = required.highFrequencyTest(null)[asked === reinforced ? 'reinforced' : 'basic'];
  return {
    peak,
    rms: peak === null ? null : Math.round(peak / Math.SQRT2),
    dc: peak,
    seconds: testSeconds.value,
    basicPeak: peakOf(basic),
    reinforcedPeak: peakOf(reinforced),
    ...(supplementary && { supplementaryPeak: peakOf(supplementary) }),
    highFrequencyPeak: high?.value ?? null,
    because: because('test', {}, [], [asked.because, ...(high ? [high.because] : []), testSeconds.because]),
  };
}

function supplementaryRule(book: Book): Pick<Required['throughInsulation'], 'supplementary'> {
  const { supplementary: plies } = book.sheets().value;
  const least = book.leastSupplementary?.().value;
  return least === undefined || plies === undefined
    ? {}
    : { supplementary: { leastThickness: inMm(least), plies } };
}

/** Of the creepage path that holds the pair, or of its shortest. */
function weakestRank(pair: PairOutcome): number {
  const { holding } = pair;
  return askedRank(holding?.kind === 'path' && holding.metric === 'creepage' ? holding : null, pair);
}

function printPath(
  design: Design,
  pair: PairOutcome,
  metric: FoundPath['metric'],
  plies: number,
  path: FoundPath | null,
): PrintedPath {
  if (!path) {
    const none = { points: [], legs: [], pieces: [], over: [] };
    return { metric, plies, length: null, grade: null, section: null, required: null, ...none };
  }
  const legs = orientedLegs(design, path, pair.between[0]);
  const limits = path.asked.distance(path.rank);
  const single = path.chain.pieces.length === 1;
  return {
    metric,
    plies,
    length: inMm(path.length as Nm),
    grade: printed(path.grade, pair.needed),
    section: path.section?.name ?? 'outside',
    over: path.chain.over,
    points: pathPoints(legs),
    legs: path.section ? printedLegs(path.section, legs) : [],
    pieces: single
      ? []
      : path.chain.pieces.map((piece) => ({
          between: piece.kind === 'inside' ? piece.piece.between : piece.between,
          length: inMm(piece.length),
          counted: inMm(nm(countedLength(path.chain, piece, path.asked.x))),
          plies: piece.plies,
        })),
    required:
      pair.needed === null
        ? null
        : { basic: mmOrNull(limits.basic), reinforced: mmOrNull(limits.reinforced) },
  };
}

const mmOrNull = (value: Nm | null): number | null => (value === null ? null : inMm(value));

/** What limits the pair whatever the unknowns are. */
function printProven(design: Design, best: PairOutcome): Proven | null {
  const limiting = printLimiting(design, best, null);
  const { holding } = best;
  if (limiting === null || holding === null) return null;
  const { metric, length, required, grade, because: why } = limiting;
  if (holding.kind === 'bridge') return { bridge: holding.bridge.id, grade, because: why };
  const [only, more] = holding.chain.pieces;
  const entry = only?.kind === 'outside' && more === undefined ? only.entry : null;
  if (entry === null || metric === 'bridge') return limiting;
  return { outside: entry, what: limiting.outside, metric, length, required, grade, because: why };
}

function printLimiting(design: Design, pair: PairOutcome, unknowns: Unknowns | null): Limiting | null {
  const { holding } = pair;
  if (holding === null) return null;
  const grade = printed(holding.grade, pair.needed);
  if (holding.kind === 'bridge') {
    const none = { length: null, required: null, section: null, points: [], legs: [], plies: 0 };
    const along = { over: [], outside: [], conditions: [] };
    const { id, because } = holding.bridge;
    return { metric: 'bridge', grade, ...none, ...along, bridge: id, because };
  }
  const legs = orientedLegs(design, holding, pair.between[0]);
  const figures = pair.required.creepage(GROUPS[askedRank(holding, pair)]!);
  const wanted = holding.metric === 'creepage' ? figures : pair.required.clearance;
  const strong = pair.needed === 'reinforced' || pair.needed === 'double';
  return {
    metric: holding.metric,
    length: inMm(holding.length as Nm),
    required: pair.needed === null ? null : requiredLength(holding, pair),
    grade,
    section: holding.section?.name ?? 'outside',
    points: pathPoints(legs),
    legs: holding.section ? printedLegs(holding.section, legs) : [],
    plies: holding.plies,
    over: holding.chain.over,
    outside: holding.chain.pieces.flatMap((piece) => (piece.kind === 'outside' ? [piece.what] : [])),
    bridge: null,
    conditions:
      unknowns === null ? [] : conditionsOf(design, holding, placeOf(design, holding, legs), unknowns),
    because: (strong ? wanted.reinforced : wanted.basic).because,
  };
}
