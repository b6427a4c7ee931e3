// The two threads beside the page: one judges the build on the sheet and nothing else, so that it is always free for the
// hand; the other runs errands, which may take long. Each is started with its first question.

import { startThread } from './start-thread.ts';
import { Thread } from './thread.ts';

export interface Threads {
  readonly judging: Thread;
  readonly errands: Thread;
}

/** Longer than any build within the format's limits should take. */
const SILENT_MS = 30_000;

export function threads(): Threads {
  const world = { start: startThread, silentMs: SILENT_MS };
  return { judging: new Thread(world), errands: new Thread(world) };
}
