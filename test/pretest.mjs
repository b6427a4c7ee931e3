// All that has to hold before the tests run: a browser, types, rules and form of the source, and what the tests drive, built.
// As many steps at once as there are cores, the longest first; what a step says is told when it is over. A step that fails
// fails the whole, after all have run.
import { spawn } from 'node:child_process';
import { availableParallelism } from 'node:os';

const STEPS = [
  'eslint .',
  'svelte-check --tsconfig ./tsconfig.json',
  'node test/browser.mjs',
  'vite build --logLevel warn',
  'prettier --check --log-level warn .',
  'npm run -s build:types',
];

/** Null where it went well. */
const failed = (step) =>
  new Promise((resolve) => {
    const start = performance.now();
    const child = spawn(step, { shell: true, stdio: ['ignore', 'pipe', 'pipe'] });
    const said = [];
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (piece) => said.push(piece));
    child.on('close', (code) => {
      const seconds = Math.round((performance.now() - start) / 1000);
      console.log(`${code === 0 ? 'done' : 'FAILED'}: ${step}, ${seconds} s`);
      process.stdout.write(Buffer.concat(said));
      resolve(code === 0 ? null : step);
    });
  });

const waiting = [...STEPS];
const faults = [];
async function work() {
  for (let step = waiting.shift(); step !== undefined; step = waiting.shift()) {
    const fault = await failed(step);
    if (fault !== null) faults.push(fault);
  }
}
await Promise.all(Array.from({ length: availableParallelism() }, work));
if (faults.length > 0) {
  console.error(`Not in order: ${faults.join('; ')}.`);
  process.exitCode = 1;
}
