// Times the judging of builds, warmed up, medians: printed as rows of what, reading, wanted.

import { readFileSync } from 'node:fs';
import { readDesign } from '#model/read/read-design.ts';
import type { Design } from '#model/design.ts';
import { judge } from '#judge/judging/judge.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import { sandwich } from './builds.ts';
import { deciding } from './deciding.ts';
import { mending } from './mending.ts';
import { stressing } from './stressing.ts';
import { held, yardstick } from './yardstick.ts';

function designOf(json: unknown): Design {
  const read = readDesign(json, knownIds);
  if (read.kind === 'bad') throw new Error(JSON.stringify(read.faults));
  return read.design;
}

const median = (times: number[]): number => times.sort((a, b) => a - b)[times.length >> 1]!;

/** Milliseconds of one judging, another width of chamber each time. */
function judging(layers: number, runs: number): number {
  const designs = Array.from({ length: runs }, (_, i) => designOf(sandwich(layers, i)));
  return median(designs.map((design) => timed(() => judge(design))));
}

function timed(work: () => unknown): number {
  const before = performance.now();
  work();
  return performance.now() - before;
}

/** One figure of a demo changed at every step, what was solved before at hand, as on the page. */
function follows(file: string, runs: number): number {
  const text = readFileSync(file, 'utf8');
  const cache = new PathCache();
  const times = Array.from({ length: runs }, (_, i) => {
    const json = JSON.parse(text);
    json.layers[0].margins.left.width = `${3 + (i % 20) * 0.05} mm`;
    return timed(() => judge(designOf(json), cache));
  });
  return median(times);
}

judging(12, 40);
const twelve = judging(12, 40);
const forty = judging(40, 8);
const hundred = judging(100, 2);
const stick = yardstick();
const layers = 100 / 12;
const rows: readonly (readonly [string, string, string])[] = [
  ['yardstick: a million heap operations', `${stick.toFixed(0)} ms`, ''],
  ['judge, 12 layers, 3 circuits, 6 leads', held(twelve, 1, stick), '<= 16 ms, aim 5'],
  ['judge, 40 layers', held(forty, 0, stick), '<= 150 ms'],
  [
    'cost from 12 to 100 layers',
    `x ${(hundred / twelve).toFixed(0)}`,
    `<= x ${(layers * layers).toFixed(0)} (the square of the layers)`,
  ],
  [
    'read and judge the demo after a change',
    held(follows('static/demos/greenhouse-timer.json', 60), 1, stick),
    '<= 16 ms with the redraw',
  ],
  ['stress, 4 windings, 3 variants', held(stressing(200), 1, stick), '<= 5 ms'],
];
const decided = deciding('static/demos/flea-market-drill.json');
console.log(JSON.stringify([...rows, decided, ...mending()]));
