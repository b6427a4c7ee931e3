// npm start: builds the command line and the page, judges a demo build in the terminal, serves the page and prints its
// address. Ends with the interrupt key.

import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { preview } from 'vite';

const root = fileURLToPath(new URL('..', import.meta.url));
const DEMO = 'static/demos/greenhouse-timer.json';
const PORT = 4317;

function must(command, args) {
  const { status, error } = spawnSync(command, args, {
    cwd: root,
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  if (status !== 0) {
    console.error(`${command} ${args.join(' ')} did not end well${error ? `: ${error.message}` : ''}`);
    process.exit(1);
  }
}

must('npm', ['run', '-s', 'build:cli']);
console.log(`\nlayerwright judge ${DEMO}\n`);
// a demo that falls short exits with 1, which is an answer and no fault
const judged = spawnSync(process.execPath, ['dist/layerwright.js', 'judge', DEMO], {
  cwd: root,
  stdio: 'inherit',
});
if (judged.status === null || judged.status > 1) process.exit(1);

console.log('\nBuilding the page …');
must('npx', ['vite', 'build', '--logLevel', 'error']);
process.chdir(root);
const server = await preview({
  preview: { host: '127.0.0.1', port: PORT, strictPort: false },
  logLevel: 'error',
});
console.log(
  `\nThe page: ${server.resolvedUrls?.local[0] ?? `http://127.0.0.1:${PORT}/`}   (Ctrl+C ends it)\n`,
);
