import { spawn } from 'node:child_process';
import { rmSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { cases } from '#test/cases/read-cases.ts';
import { bundled, fileIn, newFolder } from './command.ts';

const folder = newFolder();
const program = bundled(folder);
afterAll(() => rmSync(folder, { recursive: true }));

describe('a reader that closes the pipe early', () => {
  it('should end the command line quietly', async () => {
    const files = cases.slice(0, 12).map(({ id, design }) => fileIn(folder, `${id}.json`, design));
    const child = spawn(process.execPath, [program, 'judge', '--json', ...files], {
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let err = '';
    child.stderr.on('data', (piece: Buffer) => (err += piece.toString()));
    child.stdout.once('data', () => child.stdout.destroy());
    const code = await new Promise((resolve) => child.once('close', resolve));
    expect(err).toBe('');
    expect([0, 1]).toContain(code);
  });
});
