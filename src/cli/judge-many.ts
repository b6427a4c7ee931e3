// Many files: one line each and a summary, or an array in the order given; one bad file does not stop the rest.
// From some dozens of files up the work is shared among the processor's cores.

import { realpathSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import { judgeItem, type JudgeItem, type JudgeOrder } from './judge-item.ts';
import type { ExitCode, Outcome } from './outcome.ts';

/** Below this many files starting another thread costs more than it saves. */
const SHARED_FROM = 40;
const MOST_THREADS = 8;
/** Judging makes and drops much: with more room for what is young, a tenth of the time is saved. */
const YOUNG_MB = 192;

export async function judgeMany(files: readonly string[], order: JudgeOrder): Promise<Outcome> {
  const items = await itemsOf(files, order);
  const code = items.map(codeOf).reduce((a, b) => (a > b ? a : b), 0);
  if (!order.json) return { code, out: [...items.map(({ text }) => text), `\n${summary(items)}\n`], err: '' };
  // piece by piece, because the whole of a thousand verdicts is longer than one text may be
  const pieces = items.map(({ text }, k) => `${text}${k === items.length - 1 ? '' : ','}\n`);
  return { code, out: ['[\n', ...pieces, ']\n'], err: '' };
}

async function itemsOf(files: readonly string[], order: JudgeOrder): Promise<readonly JudgeItem[]> {
  const threads = Math.min(availableParallelism(), MOST_THREADS);
  const alone = files.length < SHARED_FROM || threads < 2 || files.includes('-');
  if (alone) return files.map((file) => judgeItem(file, order));
  const shares = Array.from({ length: threads }, (_, k) => files.filter((_, n) => n % threads === k));
  const done = await Promise.all(shares.map((share) => inThread(share, order)));
  return files.flatMap((_, n) => done[n % threads]?.[Math.floor(n / threads)] ?? []);
}

/** The program itself once more, in a thread of its own: there `main.ts` goes to `judge-share.ts`. */
function inThread(files: readonly string[], order: JudgeOrder): Promise<readonly JudgeItem[]> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(realpathSync(process.argv[1] ?? ''), {
      workerData: { files, order },
      resourceLimits: { maxYoungGenerationSizeMb: YOUNG_MB },
    });
    worker.once('message', resolve);
    worker.once('error', reject);
    worker.once('exit', () => reject(new Error('a thread ended without an answer')));
  });
}

function summary(items: readonly JudgeItem[]): string {
  const count = (answer: JudgeItem['answer']): number =>
    items.filter((item) => item.answer === answer).length;
  const parts = [
    `${count('meets')} meet`,
    `${count('falls-short')} fall short`,
    `${count('not-shown')} not shown`,
    `${count('bad')} bad input`,
  ];
  return `${items.length} files: ${parts.join(', ')}`;
}

const codeOf = ({ answer }: JudgeItem): ExitCode => (answer === 'bad' ? 2 : answer === 'meets' ? 0 : 1);
