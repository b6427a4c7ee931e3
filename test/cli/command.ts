// Runs the bundled command line as a child process on real files.

import { spawnSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { buildSync } from 'esbuild';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** A folder of its own for one test file. */
export const newFolder = (): string => mkdtempSync(join(tmpdir(), 'layerwright-'));

/** Bundled anew from the source, so that a test never sees an older build. */
export function bundled(folder: string): string {
  const bundle = {
    bundle: true,
    splitting: true,
    platform: 'node',
    target: 'node20',
    format: 'esm',
  } as const;
  const entryPoints = { layerwright: join(ROOT, 'src/cli/main.ts') };
  const outExtension = { '.js': '.mjs' };
  buildSync({ ...bundle, entryPoints, outdir: folder, outExtension, absWorkingDir: ROOT, logLevel: 'error' });
  return join(folder, 'layerwright.mjs');
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

export function fileIn(folder: string, name: string, content: unknown): string {
  const path = join(folder, name);
  writeFileSync(
    path,
    typeof content === 'string' || Buffer.isBuffer(content) ? content : JSON.stringify(content),
  );
  return path;
}
