// One file under an editor, by its name: once at once, then whenever it was written. Editors that put a new file in its place are seen
// too, for its folder is watched. What comes in one breath counts as one.

import { watch } from 'node:fs';
import { basename, dirname } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';

/** An editor empties a file before it fills it. */
const SETTLED_MS = 60;

export async function* savesOf(file: string): AsyncGenerator<string> {
  let written = (): void => undefined;
  let next = new Promise<void>((resolve) => (written = resolve));
  const watcher = watch(dirname(file), (_, name) => {
    if (name === null || name === basename(file)) written();
  });
  try {
    for (;;) {
      yield file;
      await next;
      await pause(SETTLED_MS);
      next = new Promise<void>((resolve) => (written = resolve));
    }
  } finally {
    watcher.close();
  }
}
