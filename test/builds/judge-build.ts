// Reads a published build of this folder, changes what a check asks for, and judges it.

import { readFileSync } from 'node:fs';
import { judge } from '#judge/judging/judge.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import type { PairVerdict } from '#judge/verdict/pair.ts';
import { changed, designOf, type Changes } from '#test/designs.ts';

export function judgeBuild(name: string, changes: Changes = {}): Verdict {
  const file: unknown = JSON.parse(readFileSync(new URL(`${name}.json`, import.meta.url), 'utf8'));
  return judge(designOf(changed(file, changes))).verdict;
}

export function barrierOf(verdict: Verdict): PairVerdict {
  const [pair] = verdict.pairs;
  if (!pair) throw new Error(`${verdict.title} has no pair`);
  return pair;
}
