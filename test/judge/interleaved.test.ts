// Two judgings in turns: whenever one asks for paths, the other is judged from beginning to end. Both come out as they do
// alone, so that nothing but what they are handed is shared.

import { describe, expect, it } from 'vitest';
import { judgePlain } from '#judge/judging/judge.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import type { Design } from '#model/design.ts';
import { readDesign } from '#model/read/read-design.ts';
import doorbell from '#demos/doorbell-camera.json' with { type: 'json' };
import dock from '#demos/garden-robot-dock.json' with { type: 'json' };
import pump from '#demos/pond-pump-control.json' with { type: 'json' };

function designOf(file: unknown): Design {
  const read = readDesign(file, knownIds);
  if (read.kind === 'bad') throw new Error(JSON.stringify(read.faults));
  return read.design;
}

/** Judges another design while it is asked for paths, some of the times. */
class Interrupted extends PathCache {
  times = 0;
  readonly #midway: () => void;

  constructor(midway: () => void) {
    super();
    this.#midway = midway;
  }

  override pieces(...asked: Parameters<PathCache['pieces']>): ReturnType<PathCache['pieces']> {
    if (this.times++ % 20 === 0) this.#midway();
    return super.pieces(...asked);
  }
}

describe('two judgings', () => {
  it.each([
    ['a dock', dock, doorbell],
    ['a doorbell', doorbell, pump],
  ])('should come out as they do alone when run in turns: %s', (_, one, other) => {
    const [first, second] = [designOf(one), designOf(other)];
    const alone = judgePlain(first, new PathCache()).verdict;
    const between: string[] = [];
    const cache = new Interrupted(() =>
      between.push(JSON.stringify(judgePlain(second, new PathCache()).verdict)),
    );
    expect(judgePlain(first, cache).verdict).toEqual(alone);
    expect(cache.times).toBeGreaterThan(20);
    expect(new Set(between).size).toBe(1);
  });
});
