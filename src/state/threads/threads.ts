// The threads beside the page: one judges the build on the sheet and nothing else, so that it is always free for the hand;
// another runs errands, which may take long; more share what can be shared, as far as the machine has cores. Each is
// started with its first question.

import { startThread } from './start-thread.ts';
import { Thread } from './thread.ts';

export interface Threads {
  readonly judging: Thread;
  readonly errands: Thread;
  /** Those that share a long errand, the one of errands first. */
  readonly sharing: readonly Thread[];
}

const MOST_SHARING = 4;
/** Longer than any build within the format's limits should take. */
const SILENT_MS = 30_000;

export function threads(): Threads {
  const world = { start: startThread, silentMs: SILENT_MS };
  const errands = new Thread(world);
  const cores = typeof navigator === 'undefined' ? 1 : navigator.hardwareConcurrency || 1;
  const more = Math.min(MOST_SHARING, cores) - 1;
  const sharing = [errands, ...Array.from({ length: more }, () => new Thread(world))];
  return { judging: new Thread(world), errands, sharing };
}
