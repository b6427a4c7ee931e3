// `spread FILE`: the share of pieces that meet when they are wound by this drawing.

import { availableParallelism } from 'node:os';
import { fileJudge } from '#judge/judging/judge-files.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { PLACEMENT, type Placement } from '#spread/placement.ts';
import { MEASURED, spreadOf, type Spread, type SpreadOptions } from '#spread/spread.ts';
import { drawnBy } from '#cli/many/spread-threads.ts';
import { spreadLines } from '#words/mend/spread-words.ts';
import { printable } from '#words/text/printable.ts';
import { readArguments } from '#cli/line/arguments.ts';
import { faultLines, loadDesign } from '#cli/files/load-design.ts';
import { done, refused, type Outcome } from '#cli/line/outcome.ts';

const MOST_DRAWS = 1_000_000;
const MOST_THREADS = 8;
/** What the placement model counts, and the most of it, mm. */
const PLACED = { margin: 10, tape: 10, sleeve: 10, 'forgotten-ply': 1e9 } as const;

const OPTIONS = {
  draws: 'value',
  seed: 'value',
  measured: 'value',
  json: 'switch',
  margin: 'value',
  tape: 'value',
  sleeve: 'value',
  'forgotten-ply': 'value',
  threads: 'value',
} as const;

export async function spreadFile(words: readonly string[]): Promise<Outcome> {
  const given = readArguments(words, OPTIONS);
  if (given.kind === 'wrong') return refused(`spread: ${given.says}.`);
  const [file, ...more] = given.files;
  if (file === undefined || more.length > 0)
    return refused('spread: name one design file, or - for standard input.');
  const options = optionsOf(given.options);
  if (typeof options === 'string') return refused(`spread: ${options}.`);
  const threads = Number(given.options.get('threads') ?? Math.min(availableParallelism(), MOST_THREADS));
  if (!Number.isInteger(threads) || threads < 1 || threads > MOST_THREADS)
    return refused(`spread: --threads is a whole number from 1 to ${MOST_THREADS}.`);
  const loaded = loadDesign(file);
  if (loaded.kind === 'bad') return refused(faultLines(file, loaded.faults));
  const doc = JSON.parse(loaded.text) as DesignFile;
  const found = spreadOf(doc, fileJudge(), options, await drawnBy(threads, doc, options));
  if (given.options.has('json')) return done(`${JSON.stringify(spreadData(found), null, 2)}\n`);
  return done(`${spreadLines(found, doc, options.placement).map(printable).join('\n')}\n`);
}

function optionsOf(given: ReadonlyMap<string, string>): SpreadOptions | string {
  const draws = Number(given.get('draws') ?? 1000);
  const seed = Number(given.get('seed') ?? 1);
  const measured = Number(given.get('measured') ?? MEASURED);
  if (!Number.isInteger(draws) || draws < 1 || draws > MOST_DRAWS)
    return `--draws is a whole number from 1 to ${MOST_DRAWS}`;
  if (!Number.isInteger(seed) || seed < 0) return '--seed is a whole number from 0 up';
  if (!Number.isInteger(measured) || measured < 0) return '--measured is a whole number from 0 up';
  const figures = Object.entries(PLACED).map(([name, most]) => {
    const known = name === 'forgotten-ply' ? PLACEMENT.forgottenPly : PLACEMENT[name as 'margin'];
    const value = Number(given.get(name) ?? known);
    return {
      name,
      most,
      value,
      isRight: value >= 0 && value <= most && (name !== 'forgotten-ply' || value !== 1),
    };
  });
  const wrong = figures.find(({ isRight }) => !isRight);
  if (wrong !== undefined)
    return wrong.name === 'forgotten-ply'
      ? '--forgotten-ply is how many layers one is forgotten in, from 2 up, or 0 for never'
      : `--${wrong.name} is a length in mm from 0 to ${wrong.most}`;
  const [margin, tape, sleeve, forgottenPly] = figures.map(({ value }) => value) as [
    number,
    number,
    number,
    number,
  ];
  const placement: Placement = { margin, tape, sleeve, forgottenPly };
  return { draws, seed, measured, placement };
}

const spreadData = ({ seed, draws, share, interval, worstCase, deciding, distances, rare }: Spread) => ({
  format: 'layerwright-spread/1',
  seed,
  draws,
  share,
  interval,
  worstCase: worstCase.verdict,
  worst: (worstCase.judged?.pairs ?? []).map(({ between, metric, length, required }) => ({
    between,
    metric,
    length,
    required,
  })),
  deciding,
  distances: distances.map(({ between, metric, required, draws: measured, least, most, quantiles }) => ({
    between,
    metric,
    required,
    draws: measured,
    least,
    most,
    quantiles,
  })),
  rare,
});
