// `judge --junit` for build servers, and `judge --watch` under an editor.

import { spawn, type ChildProcess } from 'node:child_process';
import { copyFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { answered, bundled, fileIn, newFolder } from '#test/cli/command.ts';

const DEMO = 'static/demos/greenhouse-timer.json';

let folder: string;
let program: string;
let child: ChildProcess | null = null;

beforeAll(() => {
  folder = newFolder();
  program = bundled(folder);
}, 120_000);

afterAll(() => {
  child?.kill();
});

/** Waits for what was printed to hold so many lines that begin with the verdict. */
async function verdicts(text: () => string, count: number): Promise<void> {
  for (;;) {
    if ((text().match(/^(Meets|Falls short|Not shown), IEC/gm) ?? []).length >= count) return;
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}

describe('judge --junit', () => {
  it('should give a suite a file and a case a pair, failing where the verdict does', async () => {
    const bad = fileIn(folder, 'bad & wrong.json', '{ "format": 1 }');
    const { code, out } = await answered('judge', '--junit', DEMO, bad);
    expect(code).toBe(2);
    const said = JSON.parse((await answered('judge', '--json', DEMO)).out) as {
      pairs: { verdict: string }[];
    };
    const [, tests, failures] =
      /<testsuite name="static[^"]*" tests="(\d+)" failures="(\d+)" errors="0">/.exec(out)!;
    expect(Number(tests)).toBe(said.pairs.length + 1);
    // the whole build falls short too
    expect(Number(failures)).toBe(said.pairs.filter(({ verdict }) => verdict !== 'meets').length + 1);
    expect(out.match(/<failure type="(falls-short|not-shown)"/g)).toHaveLength(Number(failures));
    expect(out).toMatch(/<testsuite name="[^"]*bad &amp; wrong.json" tests="1" failures="0" errors="1">/);
    expect(out).toMatch(/^<\?xml version="1.0" encoding="UTF-8"\?>\n<testsuites>\n[\s\S]*<\/testsuites>\n$/);
  }, 120_000);

  it('should print nothing for a single bad file, and refuse what does not go together', async () => {
    const bad = fileIn(folder, 'bad.json', '{}');
    expect(await answered('judge', '--junit', bad)).toMatchObject({ code: 2, out: '' });
    expect(await answered('judge', '--junit', '--json', DEMO)).toMatchObject({ code: 2, out: '' });
  }, 120_000);
});

describe('judge --watch', () => {
  it('should judge again whenever the file is written or put in place, bad input in between or not', async () => {
    const file = join(folder, 'under-an-editor.json');
    copyFileSync(DEMO, file);
    child = spawn(process.execPath, [program, 'judge', file, '--watch']);
    let out = '';
    let err = '';
    child.stdout!.on('data', (piece: Buffer) => (out += piece.toString()));
    child.stderr!.on('data', (piece: Buffer) => (err += piece.toString()));
    await verdicts(() => out, 1);
    writeFileSync(file, '{ "format": ');
    while (!err.includes('no JSON')) await new Promise((resolve) => setTimeout(resolve, 20));
    copyFileSync(DEMO, join(folder, 'new.json'));
    renameSync(join(folder, 'new.json'), file);
    await verdicts(() => out, 2);
    expect(child.exitCode).toBeNull();
    expect(await answered('judge', join(folder, 'not there'), '--watch')).toMatchObject({ code: 2 });
  }, 120_000);
});
