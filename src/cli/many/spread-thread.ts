// One of the threads that the draws of a spread are shared among.

import { parentPort, workerData } from 'node:worker_threads';
import { drawnHere, type FromSpreadThread, type SpreadOrder } from './spread-threads.ts';

export function spreadThread(): void {
  const say = (word: FromSpreadThread): void => parentPort?.postMessage(word);
  say({ kind: 'done', part: drawnHere(workerData as SpreadOrder, (count) => say({ kind: 'told', count })) });
}
