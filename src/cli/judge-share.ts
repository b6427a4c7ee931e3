// A share of many files, judged in a thread of its own.

import { parentPort, workerData } from 'node:worker_threads';
import { judgeItem, type JudgeOrder } from './judge-item.ts';

export function judgeShare(): void {
  const { files, order } = workerData as { readonly files: readonly string[]; readonly order: JudgeOrder };
  parentPort?.postMessage(files.map((file) => judgeItem(file, order)));
}
