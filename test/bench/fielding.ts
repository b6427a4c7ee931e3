// Times the field of every demo and of a section of twelve layers, in a process of its own: the first look, cold and warm,
// the fine answer, what it may be off by, the memory that it took. Processor time, rows of what, reading, wanted.

import { readFileSync, readdirSync } from 'node:fs';

import { meshOf } from '#field/mesh/triangulate.ts';
import { refined } from '#field/mesh/refine.ts';
import { System } from '#field/solve/system.ts';
import { finished } from '#field/solve/finished.ts';
import { COARSE, FINE, fieldOf, type FieldOptions } from '#judge/field/field-of.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { study } from '#judge/study.ts';
import { readDesign } from '#model/read/read-design.ts';
import { box, disc, section } from '#test/field/draw.ts';
import { sandwich } from './builds.ts';

const FOLDER = 'static/demos';

interface Reading {
  readonly name: string;
  readonly cold: number;
  readonly coarse: number;
  readonly fine: number;
  readonly error: number;
  readonly points: number;
}

function readingOf(name: string, json: unknown): Reading {
  const read = readDesign(json, knownIds);
  if (read.kind === 'bad') throw new Error(JSON.stringify(read.faults));
  const studied = study(read.design);
  void studied.stress;
  const solve = (options: FieldOptions) => {
    const before = process.cpuUsage();
    const { report } = finished(fieldOf(read.design, studied, options));
    const { user, system } = process.cpuUsage(before);
    return { took: (user + system) / 1000, report };
  };
  const [cold, ...warm] = Array.from({ length: 8 }, () => solve(COARSE).took) as [number, ...number[]];
  const { took, report } = solve(FINE);
  const coarse = warm.slice(-5).toSorted((a, b) => a - b)[2]!;
  return { name, cold, coarse, fine: took, error: report.error ?? 1, points: report.points };
}

const demos = readdirSync(FOLDER).filter((file) => file.endsWith('.json'));
const readings = [
  ...demos.map((file) =>
    readingOf(file.replace('.json', ''), JSON.parse(readFileSync(`${FOLDER}/${file}`, 'utf8'))),
  ),
  readingOf('twelve layers', sandwich(12)),
];
const worst = (of: (one: Reading) => number): Reading =>
  readings.reduce((a, b) => (of(b) > of(a) ? b : a), readings[0]!);
const each = readings.map(({ name, coarse, fine, error, points }) => [
  `field, ${name}`,
  `first look ${coarse.toFixed(0)} ms, fine ${(fine / 1000).toFixed(1)} s (x ${(fine / coarse).toFixed(0)}), ` +
    `off by ${(100 * error).toFixed(2)} %, ${points} points`,
  '',
]);
const [coarse, fine, error] = [
  worst((one) => one.coarse),
  worst((one) => one.fine),
  worst((one) => one.error),
];
/** At a wire over a plane: how fast its charge settles as the triangles are halved, twice. */
function orderOfConvergence(): number {
  const wire = section([-20, -1, 20, 20], [box([-20, -1, 20, 0], 1), disc([0, 0.25], 0.2, 0)]);
  const found = meshOf(wire, { around: 12, spacing: 1.5 });
  let { mesh } = found;
  const [a, b, c] = [0, 1, 2].map((step) => {
    if (step > 0) ({ mesh } = refined(mesh, found.map));
    const system = new System(mesh, null);
    return system.electrodeCharges(system.solve(Float64Array.of(1, 0), null), 2)[0]!;
  }) as [number, number, number];
  return Math.log2((a - b) / (b - c));
}

console.log(
  JSON.stringify([
    ...each,
    ['field, order of convergence of a capacitance', orderOfConvergence().toFixed(2), '2'],
    ['field, first look, the slowest', `${coarse.coarse.toFixed(0)} ms, ${coarse.name}`, '<= 300 ms'],
    ['field, the very first look of a process', `${readings[0]!.cold.toFixed(0)} ms`, ''],
    ['field, fine, the slowest', `${(fine.fine / 1000).toFixed(1)} s, ${fine.name}`, '<= 5 s'],
    ['field, off by, the most', `${(100 * error.error).toFixed(2)} %, ${error.name}`, '<= 1 %'],
    [
      'field, most memory of the process',
      `${(process.resourceUsage().maxRSS / 1000).toFixed(0)} MB`,
      '<= 500 MB',
    ],
  ]),
);
