// Times the field of a section of twelve layers and of the demo: the first look, the fine answer and what it is off by,
// and the memory that it takes.

import { readFileSync } from 'node:fs';

import { finished } from '#field/solve/finished.ts';
import { COARSE, FINE, fieldOf } from '#judge/field/field-of.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { study } from '#judge/study.ts';
import { readDesign } from '#model/read/read-design.ts';
import { sandwich } from './builds.ts';

export function fielding(): readonly (readonly [string, string, string])[] {
  const twelve = solverOf(sandwich(12));
  const demo = solverOf(JSON.parse(readFileSync('static/demos/greenhouse-timer.json', 'utf8')));
  demo(true);
  const coarse = demo(true);
  const fine = twelve(false);
  const memory = process.memoryUsage().rss / 1e6;
  return [
    ['field of the demo, first look', `${coarse.took.toFixed(0)} ms`, '<= 300 ms'],
    ['field of 12 layers, fine', `${(fine.took / 1000).toFixed(1)} s`, '<= 5 s'],
    ['may be off by', `${(100 * (fine.error ?? 1)).toFixed(2)} %`, '<= 1 %'],
    ['memory of it all', `${memory.toFixed(0)} MB`, '<= 500 MB'],
  ];
}

function solverOf(json: unknown) {
  const read = readDesign(json, knownIds);
  if (read.kind === 'bad') throw new Error(JSON.stringify(read.faults));
  const studied = study(read.design);
  void studied.stress;
  return (isQuick: boolean) => {
    const before = performance.now();
    const { report } = finished(fieldOf(read.design, studied, isQuick ? COARSE : FINE));
    return { took: performance.now() - before, error: report.error };
  };
}
