// Times the search for the figures that would decide a build of which half is open, in processor time, from a cold memory.

import { readFileSync } from 'node:fs';
import { decidingFigure } from '#judge/decide/deciding-figure.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { judge } from '#judge/judging/judge.ts';
import { pairAnswers } from '#judge/judging/pair-answers.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import { readDesign } from '#model/read/read-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';

/** Seconds for all open figures. */
const ASKED = 3;

export function deciding(file: string): readonly [string, string, string] {
  const doc = JSON.parse(readFileSync(file, 'utf8')) as DesignFile;
  const read = readDesign(doc, knownIds);
  if (read.kind === 'bad') throw new Error(JSON.stringify(read.faults));
  const { assumptions } = judge(read.design).verdict;
  const open = assumptions.filter(({ kind }) => kind === 'unknown' || kind === 'interval');
  const cache = new PathCache();
  const before = process.cpuUsage();
  for (const one of open) {
    const search = decidingFigure(doc, one, (tried) => {
      const now = readDesign(tried, knownIds);
      return now.kind === 'bad' ? null : { pairs: pairAnswers(now.design, cache) };
    });
    while (search.next().done !== true);
  }
  const { user, system } = process.cpuUsage(before);
  const seconds = (user + system) / 1e6;
  return [
    `what would decide, ${open.length} open figures`,
    `${seconds.toFixed(1)} s of processor, ${(seconds / ASKED).toFixed(2)} of what is asked`,
    `<= ${ASKED} s`,
  ];
}
