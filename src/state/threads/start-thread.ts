// Starts a thread beside the page. A page from the disk has no script of its own to load it from: there the whole of the
// thread's script lies in the page (see start-thread-inline.ts, which stands in for this file in that build).

import type { WorkerLike } from './thread.ts';

export const startThread = (): WorkerLike =>
  new Worker(new URL('./thread-worker.ts', import.meta.url), { type: 'module' });
