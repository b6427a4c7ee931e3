// Stands in for start-thread.ts where the page is one file: the thread's whole script lies in the page and runs from a blob.

import InlineThread from './thread-worker.ts?worker&inline';
import type { WorkerLike } from './thread.ts';

export const startThread = (): WorkerLike => new InlineThread();
