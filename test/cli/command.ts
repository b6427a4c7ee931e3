// Runs the bundled command line as a child process on real files.

import { spawnSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { buildSync, type OutputFile } from 'esbuild';
import { answerTo } from '#cli/answer-to.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** A folder of its own for one test file. */
export const newFolder = (): string => mkdtempSync(join(tmpdir(), 'layerwright-'));

let built: readonly OutputFile[] | undefined;

/** Bundled from the source once a worker, so that a test never sees an older build, and laid into this folder. */
export function bundled(folder: string): string {
  built ??= bundle();
  for (const { path, contents } of built) writeFileSync(join(folder, basename(path)), contents);
  return join(folder, 'layerwright.mjs');
}

function bundle(): readonly OutputFile[] {
  const whole = { bundle: true, splitting: true, platform: 'node', target: 'node20', format: 'esm' } as const;
  const entryPoints = { layerwright: join(ROOT, 'src/cli/main.ts') };
  const outExtension = { '.js': '.mjs' };
  const into = {
    outdir: 'dist',
    outExtension,
    absWorkingDir: ROOT,
    logLevel: 'error',
    write: false,
  } as const;
  return buildSync({ ...whole, ...into, entryPoints }).outputFiles;
}

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

export function run(program: string, words: readonly string[], input = ''): Ran {
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...words], {
    encoding: 'utf8',
    input,
    maxBuffer: 1 << 28,
  });
  return { code: status, out: stdout, err: stderr };
}

/** The same line answered in this process: for what does not hang on how the program starts, reads its input and ends. */
export async function answered(...words: readonly string[]): Promise<Ran> {
  const { code, out, err } = await answerTo(words);
  return { code, out: out.join(''), err };
}

export function fileIn(folder: string, name: string, content: unknown): string {
  const path = join(folder, name);
  writeFileSync(
    path,
    typeof content === 'string' || Buffer.isBuffer(content) ? content : JSON.stringify(content),
  );
  return path;
}
