// Many files, shared among the processor's cores: each thread is handed its next file when it is done with the last. A thread
// that ends over a file (memory, a crash) costs that file only. On a terminal it tells how far it is.

import { realpathSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import { itemOf } from './file-job.ts';
import { fileJob, type ItemOf, type JobName, type OrderOf } from './file-jobs.ts';
import { progress } from './progress.ts';

/** Below this many files starting another thread costs more than it saves. */
const SHARED_FROM = 24;
const MOST_THREADS = 8;
/** Judging makes and drops much: with more room for what is young, a tenth of the time is saved. */
const YOUNG_MB = 192;

/** What a thread is started with. */
export interface ThreadOrder {
  readonly job: JobName;
  readonly order: OrderOf<JobName>;
}

export type ToFileThread = { readonly file: string; readonly place: number };
export type FromFileThread = { readonly place: number; readonly item: ItemOf<JobName> };

/** The items in the order of the files. */
export async function itemsOf<J extends JobName>(
  files: readonly string[],
  job: J,
  order: OrderOf<J>,
): Promise<readonly ItemOf<J>[]> {
  const threads = Math.min(availableParallelism(), MOST_THREADS);
  const tell = progress(files.length);
  const isAlone = files.length < SHARED_FROM || threads < 2 || files.includes('-');
  const items = isAlone
    ? await itemsHere(files, job, order, tell)
    : await itemsShared(files, job, order, threads, tell);
  tell(null);
  return items;
}

type Tell = (done: number | null) => void;

async function itemsHere<J extends JobName>(
  files: readonly string[],
  name: J,
  order: OrderOf<J>,
  tell: Tell,
): Promise<readonly ItemOf<J>[]> {
  const job = await fileJob(name);
  return files.map((file, place) => {
    tell(place);
    return itemOf(job, file, place, order);
  });
}

async function itemsShared<J extends JobName>(
  files: readonly string[],
  name: J,
  order: OrderOf<J>,
  threads: number,
  tell: Tell,
): Promise<readonly ItemOf<J>[]> {
  const job = await fileJob(name);
  const items: ItemOf<J>[] = [];
  let next = 0;
  let done = 0;
  const keep = (place: number, item: ItemOf<J>): void => {
    items[place] = item;
    tell(++done);
  };
  /** Resolves when no file is left for it; where it ends over one, another goes on. */
  const runThread = (): Promise<void> =>
    new Promise((resolve) => {
      let place = next++;
      const worker = newThread({ job: name, order });
      const hand = (): void => {
        const file = files[place];
        if (file === undefined) void worker.terminate().then(() => resolve());
        else worker.postMessage({ file, place } satisfies ToFileThread);
      };
      const fail = (error: unknown): void => {
        worker.removeAllListeners();
        const file = files[place];
        if (file === undefined) return resolve();
        keep(place, job.fault(file, error, order));
        resolve(runThread());
      };
      worker.on('message', ({ item }: FromFileThread) => {
        keep(place, item as ItemOf<J>);
        place = next++;
        hand();
      });
      worker.once('error', fail);
      worker.once('exit', () => fail(new Error('its thread ended')));
      hand();
    });
  await Promise.all(Array.from({ length: Math.min(threads, files.length) }, runThread));
  return items;
}

/** The program itself once more, in a thread of its own: there `main.ts` goes to `file-thread.ts`. */
const newThread = (order: ThreadOrder): Worker =>
  new Worker(realpathSync(process.argv[1] ?? ''), {
    workerData: order,
    resourceLimits: { maxYoungGenerationSizeMb: YOUNG_MB },
  });
