// The figures of a verdict as comma-separated values, one line a figure, for a spreadsheet.
// A text that a spreadsheet would take for a formula gets an apostrophe before it, and no cell holds a control sign.

import type { Design } from '#model/design.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import type { PairVerdict } from '#judge/verdict/pair.ts';
import { answerWords } from '#words/text/answer-words.ts';
import { printable } from '#words/text/printable.ts';

type Cell = string | number | null;

const HEAD: readonly Cell[] = [
  'what',
  'between',
  'metric',
  'plies',
  'built',
  'required',
  'unit',
  'grade',
  'verdict',
  'section',
];

export function csvOf(design: Design, verdict: Verdict): string {
  const rows = [
    HEAD,
    row('build', { between: design.title, verdict: answerWords(verdict.verdict) }),
    ...verdict.pairs.flatMap(pairRows),
    ...verdict.weakSpots.map((spot, k) =>
      row(`weak spot ${k + 1}, ${spot.kind}`, {
        between: spot.between?.join(' to ') ?? '',
        metric: spot.metric,
        built: spot.length,
        required: spot.required,
        unit: spot.length === null ? '' : 'mm',
        grade: spot.achieved,
        verdict: answerWords(spot.verdict),
        section: spot.section,
      }),
    ),
    row('stack height', {
      built: verdict.fit.height.used,
      required: verdict.fit.height.available,
      unit: 'mm',
    }),
  ];
  return `${rows.map((cells) => cells.map(cellText).join(',')).join('\r\n')}\r\n`;
}

interface Figures {
  readonly between?: Cell;
  readonly metric?: Cell;
  readonly plies?: Cell;
  readonly built?: Cell;
  readonly required?: Cell;
  readonly unit?: Cell;
  readonly grade?: Cell;
  readonly verdict?: Cell;
  readonly section?: Cell;
}

const row = (what: string, f: Figures): readonly Cell[] =>
  [what, f.between, f.metric, f.plies, f.built, f.required, f.unit, f.grade, f.verdict, f.section].map(
    (cell) => cell ?? '',
  );

function pairRows(pair: PairVerdict): readonly (readonly Cell[])[] {
  const between = pair.between.join(' to ');
  const { stress, required } = pair;
  const head = row('pair', {
    between,
    required: pair.needed,
    built: pair.achieved,
    verdict: answerWords(pair.verdict),
  });
  if (required === null) return [head];
  const { test } = required;
  return [
    head,
    row('working voltage rms', { between, built: stress.rms, unit: 'V' }),
    row('working voltage peak', { between, built: stress.peak, unit: 'V' }),
    row('frequency', { between, built: stress.frequency, unit: 'Hz' }),
    row('required withstand', { between, required: stress.withstand, unit: 'V peak' }),
    row('withstand test', { between, required: test.peak, unit: 'V peak' }),
    ...(['creepage', 'clearance'] as const).flatMap((metric) => [
      row('required, basic', { between, metric, required: required[metric].basic, unit: 'mm' }),
      row('required, reinforced', { between, metric, required: required[metric].reinforced, unit: 'mm' }),
    ]),
    ...pair.paths.map((path) =>
      row('weakest path', {
        between,
        metric: path.metric,
        plies: path.plies,
        built: path.length ?? 'no path',
        required: path.required?.reinforced ?? '',
        unit: path.length === null ? '' : 'mm',
        grade: path.grade,
        section: path.section,
      }),
    ),
  ];
}

function cellText(cell: Cell): string {
  if (typeof cell === 'number') return String(cell);
  // where a list is divided by semicolons, what follows one is a cell of its own
  const text = printable(cell ?? '').replace(FORMULA, "$1'");
  return /[",;]/.test(text) ? `"${text.replace(/"/g, '""')}"` : text;
}

/** Before the signs that begin a formula, the wide ones of East Asian fonts too. */
const FORMULA = /((?:^|;)\s*)(?=[=+\-@\uff1d\uff0b\uff0d\uff20])/g;
