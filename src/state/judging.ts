// Reading and judging as the page does it: the ids of the tables, the rules, and a memory of paths that did not change.

import { readDesign } from '#model/read-design.ts';
import { judge } from '#rules/judge.ts';
import { knownIds } from '#rules/known-ids.ts';
import { PathCache } from '#rules/path-cache.ts';
import type { Judging } from './editor.svelte.ts';

export function judging(): Judging {
  const cache = new PathCache();
  return {
    read: (doc) => readDesign(doc, knownIds),
    judge: (design) => judge(design, cache),
  };
}
