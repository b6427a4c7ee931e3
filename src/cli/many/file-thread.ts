// One of the threads that many files are shared among: does its job with each file that it is handed.

import { parentPort, workerData } from 'node:worker_threads';
import { itemOf } from './file-job.ts';
import { fileJob } from './file-jobs.ts';
import type { FromFileThread, ThreadOrder, ToFileThread } from './file-threads.ts';

export async function fileThread(): Promise<void> {
  const { job: name, order } = workerData as ThreadOrder;
  const job = await fileJob(name);
  parentPort?.on('message', ({ file, place }: ToFileThread) =>
    parentPort?.postMessage({ place, item: itemOf(job, file, place, order) } satisfies FromFileThread),
  );
}
