// The draws of a spread, shared among threads: the same answer however many there are.

import { realpathSync } from 'node:fs';
import { Worker } from 'node:worker_threads';
import { fileJudge } from '#judge/judging/judge-files.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { sharesOfDraws } from '#spread/shares-of-draws.ts';
import { EMPTY, joined, type SpreadPart } from '#spread/spread-part.ts';
import { spreadPart, type SpreadOptions } from '#spread/spread.ts';
import { progress } from './progress.ts';

/** What a thread is started with. */
export interface SpreadOrder {
  readonly doc: DesignFile;
  readonly options: SpreadOptions;
  readonly numbers: readonly [number, number];
}

/** The draws made so far, or all of them with what was found. */
export type FromSpreadThread =
  { readonly kind: 'told'; readonly count: number } | { readonly kind: 'done'; readonly part: SpreadPart };

export async function drawnBy(threads: number, doc: DesignFile, options: SpreadOptions): Promise<SpreadPart> {
  const shares = sharesOfDraws(options.draws, threads);
  const tell = progress(options.draws, 'draws');
  const counts = shares.map(() => 0);
  const told = (i: number, count: number): void => {
    counts[i] = count;
    tell(counts.reduce((a, b) => a + b));
  };
  const parts =
    shares.length === 1
      ? [drawnHere({ doc, options, numbers: shares[0]! }, (count) => told(0, count))]
      : await Promise.all(
          shares.map((numbers, i) => drawnThere({ doc, options, numbers }, (count) => told(i, count))),
        );
  tell(null);
  return parts.reduce(joined, EMPTY);
}

export function drawnHere({ doc, options, numbers }: SpreadOrder, told: (count: number) => void): SpreadPart {
  const search = spreadPart(doc, fileJudge(), options, numbers);
  for (;;) {
    const step = search.next();
    if (step.done === true) return step.value;
    told(step.value.count);
  }
}

/** The program itself once more, in a thread of its own: there `main.ts` goes to `spread-thread.ts`. */
const drawnThere = (order: SpreadOrder, told: (count: number) => void): Promise<SpreadPart> =>
  new Promise((resolve, reject) => {
    const worker = new Worker(realpathSync(process.argv[1] ?? ''), { workerData: order });
    worker.on('message', (word: FromSpreadThread) => {
      if (word.kind === 'told') told(word.count);
      else resolve(word.part);
    });
    worker.once('error', reject);
    worker.once('exit', () => reject(new Error('a thread that draws ended')));
  });
