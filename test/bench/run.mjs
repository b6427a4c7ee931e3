// `npm run bench`: what the tool costs, as a table. Readings depend on the machine; they are told, never tested.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';

const work = mkdtempSync(join(tmpdir(), 'bench-'));
const entryPoints = ['judging', 'fielding', 'worst'].map((part) => `test/bench/${part}.ts`);
const outExtension = { '.js': '.mjs' };
await build({
  entryPoints,
  outExtension,
  bundle: true,
  platform: 'node',
  format: 'esm',
  outdir: work,
  logLevel: 'warning',
});
const told = (part) => JSON.parse(node(join(work, `${part}.mjs`)).stdout);
// one part alone: `npm run bench -- field`
const rows =
  process.argv[2] === 'field'
    ? told('fielding')
    : [...told('judging'), ...told('fielding'), ...worst(), ...commandLine()];
rmSync(work, { recursive: true });
print(rows);

function node(...words) {
  const run = spawnSync(process.execPath, words, { encoding: 'utf8', maxBuffer: 1 << 28 });
  if (run.status === null || run.status > 1) throw new Error(run.stderr);
  return run;
}

/** Each of the ten worst shapes in a process of its own, given up where it goes on too long. */
function worst() {
  const timeout = 120_000;
  return Array.from({ length: 10 }, (_, k) => {
    const words = [join(work, 'worst.mjs'), String(k)];
    const run = spawnSync(process.execPath, words, { encoding: 'utf8', timeout });
    if (run.status === 0) return JSON.parse(run.stdout)[0];
    return [
      `worst shape ${k}`,
      run.signal === null ? run.stderr : `no end within ${timeout / 1000} s`,
      '<= 10 s',
    ];
  });
}

function commandLine() {
  const command = 'dist/layerwright.js';
  const demo = 'static/demos/greenhouse-timer.json';
  const cold = Array.from({ length: 7 }, () => timed(() => node(command, 'judge', demo)));
  const design = JSON.parse(readFileSync(demo, 'utf8'));
  const files = Array.from({ length: 1000 }, (_, i) => {
    design.former.chambers[0].width = `${(12 + i * 0.001).toFixed(3)} mm`;
    const file = join(work, `${i}.json`);
    writeFileSync(file, JSON.stringify(design));
    return file;
  });
  const many = timed(() => node(command, 'judge', ...files));
  return [
    ['judge one file from a cold start', `${median(cold).toFixed(0)} ms`, '<= 400 ms'],
    ['judge 1 000 files in one call', `${(many / 1000).toFixed(1)} s`, '<= 15 s'],
  ];
}

function timed(action) {
  const before = performance.now();
  action();
  return performance.now() - before;
}

function median(times) {
  return times.sort((a, b) => a - b)[times.length >> 1];
}

function print(table) {
  const widths = [0, 1, 2].map((i) => Math.max(...table.map((row) => row[i].length)));
  for (const row of table) console.log(row.map((cell, i) => cell.padEnd(widths[i])).join('  '));
}
