// Whole sections solved here and by a general-purpose finite-element package: deviation and time of both in one run, the
// time that the processor worked for each, so that a busy machine tells the same. `npm run bench:field [BUILD...]`.
// Skipped where FreeFem++ is not installed.

import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import type { FieldSection } from '#field/field-section.ts';
import { finished } from '#field/solve/finished.ts';
import { at } from '#field/solve/capacitance.ts';
import { solveField, type SolvedField } from '#field/solve/solve-field.ts';
import { FINE } from '#judge/field/field-of.ts';
import { drawnField } from '#judge/drawn-field/drawn-field.ts';
import { fieldCases } from '#judge/field/field-cases.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { study } from '#judge/study.ts';
import { readDesign } from '#model/read/read-design.ts';
import { finiteElementScript, stoodBack } from '#papers/finite-elements.ts';

const BUILDS = ['label-printer', 'greenhouse-timer', 'garden-robot-dock'];
const POINTS = [48];
/** Capacitances under this part of the largest are left out of the comparison. */
const TRIFLE = 0.02;

function main(): void {
  if (spawnSync('FreeFem++', ['-h']).error !== undefined) {
    console.log('skipped: FreeFem++ is not installed (Debian: freefem++)');
    return;
  }
  const asked = process.argv.slice(2);
  for (const name of asked.length > 0 ? asked : BUILDS) compare(name);
}

function compare(name: string): void {
  const { section, volts } = drawnOf(name);
  finished(solveField({ section, states: [], ...FINE }));
  const before = process.cpuUsage();
  const answer = finished(solveField({ section, states: [], ...FINE }));
  const { user, system } = process.cpuUsage(before);
  const own = (user + system) / 1000;
  if (answer.kind !== 'solved') throw new Error(answer.kind);
  for (const around of POINTS) {
    const other = byPackage(section, volts, around);
    const off = (100 * deviation(answer, other.matrix)).toFixed(2);
    const ratio = (other.took / own).toFixed(1);
    console.log(
      `${name}: ${around} points round a wire there (${other.unknowns} unknowns, P2), ${answer.mesh.x.length} points here: ` +
        `deviation ${off} %, ${(other.took / 1000).toFixed(1)} s of the processor against ${(own / 1000).toFixed(1)} s, ${ratio} times`,
    );
  }
}

function drawnOf(name: string): { readonly section: FieldSection; readonly volts: Float64Array } {
  const json: unknown = JSON.parse(readFileSync(`static/demos/${name}.json`, 'utf8'));
  const read = readDesign(json, knownIds);
  if (read.kind === 'bad') throw new Error(name);
  const studied = study(read.design);
  const drawn = drawnField(read.design, studied.sections[0]!, studied.turns.get('plain') ?? [], null);
  return {
    section: stoodBack(drawn.section),
    volts: fieldCases(read.design, drawn, studied.stress.pairs)[0]!.electrodes,
  };
}

function byPackage(section: FieldSection, volts: Float64Array, around: number) {
  const folder = mkdtempSync(join(tmpdir(), 'field-'));
  const file = join(folder, 'section.edp');
  writeFileSync(file, finiteElementScript(section, volts, around));
  const { stdout } = spawnSync('sh', ['-c', 'FreeFem++ -nw -v 0 "$0"; times', file], {
    encoding: 'utf8',
    maxBuffer: 1 << 26,
  });
  // the last line tells what the processor worked for the shell's children: 1m2.345s 0m0.678s
  const spans = [
    ...stdout
      .trimEnd()
      .split('\n')
      .at(-1)!
      .matchAll(/(\d+)m([\d.]+)s/g),
  ];
  const took = spans.reduce(
    (sum, [, minutes, seconds]) => sum + 60e3 * Number(minutes) + 1e3 * Number(seconds),
    0,
  );
  rmSync(folder, { recursive: true });
  const matrix = [...stdout.matchAll(/^C (\d+) (\d+) (\S+)$/gm)].map(
    ([, i, k, value]) => [Number(i), Number(k), Number(value)] as const,
  );
  if (matrix.length === 0) throw new Error(`no answer for ${folder}: ${stdout.slice(-600)}`);
  return { matrix, took, unknowns: /unknowns (\d+)/.exec(stdout)?.[1] ?? '?' };
}

function deviation(answer: SolvedField, matrix: readonly (readonly [number, number, number])[]): number {
  const between = matrix.filter(([i, k]) => i !== k);
  const most = Math.max(...between.map(([, , value]) => Math.abs(value)));
  return Math.max(
    ...between
      .filter(([, , value]) => Math.abs(value) > TRIFLE * most)
      .map(([i, k, value]) => Math.abs(at(answer.capacitance, i, k) / value - 1)),
  );
}

main();
