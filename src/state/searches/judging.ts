// Reading and judging as the page does it: the ids of the tables, the rules, and a memory of paths that did not change.

import { readDesign } from '#model/read/read-design.ts';
import { judge } from '#judge/judging/judge.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { sketch } from '#judge/judging/sketch.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import type { Judging } from '#state/document/editor.svelte.ts';

export function judging(): Judging {
  const cache = new PathCache();
  return {
    read: (doc) => readDesign(doc, knownIds),
    judge: (design) => judge(design, cache),
    sketch,
  };
}
