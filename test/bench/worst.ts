// Times the ten worst shapes, each once and cold: rows of what, reading, wanted. With a number, that one alone.

import { readDesign } from '#model/read/read-design.ts';
import { judge } from '#judge/judging/judge.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { worstShapes } from './worst-shapes.ts';

const [, , only] = process.argv;
const rows = worstShapes.flatMap((json, k) => {
  if (only !== undefined && Number(only) !== k) return [];
  const read = readDesign(json, knownIds);
  if (read.kind === 'bad') throw new Error(`${String(json['title'])}: ${read.faults[0]?.says}`);
  const before = process.cpuUsage();
  const { verdict } = judge(read.design);
  const { user, system } = process.cpuUsage(before);
  const reading = `${((user + system) / 1e6).toFixed(1)} s of processor time, ${verdict.verdict}`;
  return [[String(json['title']), reading, '<= 10 s']];
});
console.log(JSON.stringify(rows));
