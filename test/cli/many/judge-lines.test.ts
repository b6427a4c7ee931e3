import { rmSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { inputLines } from '#cli/files/input-lines.ts';
import { cases } from '#test/cases/read-cases.ts';
import { bundled, fileIn, newFolder, run } from '#test/cli/command.ts';

const folder = newFolder();
const program = bundled(folder);
afterAll(() => rmSync(folder, { recursive: true }));

const [first, second] = ['margins-3-3', 'no-margins'].map((wanted) => {
  const found = cases.find(({ id }) => id === wanted);
  if (found === undefined) throw new Error(`no case ${wanted}`);
  return JSON.stringify(found.design);
});

describe('judge --jsonl', () => {
  const lines = [first, '', '{', second, JSON.stringify({ format: 1 })].join('\n');
  const linesOf = (out: string) =>
    out
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line) as { title?: string; line?: number; error?: { says: string } });

  it('should write one verdict for each design, in order, with what was bad in its place', () => {
    const { code, out, err } = run(program, ['judge', '--jsonl'], lines);
    const found = linesOf(out);
    expect(found.map(({ title, line }) => title ?? line)).toEqual(['margins-3-3', 3, 'no-margins', 5]);
    for (const { error } of found) if (error !== undefined) expect(error.says).toMatch(/expected/);
    expect([code, err]).toEqual([2, '']);
  });

  it('should give what judge --json gives, from a file too, and exit as for many files', () => {
    const file = fileIn(folder, 'two.jsonl', `${first}\n${second}\n`);
    const found = run(program, ['judge', '--jsonl', file]);
    const each = [first, second].map((design, k) => fileIn(folder, `${k}.json`, design!));
    expect(linesOf(found.out)).toEqual(JSON.parse(run(program, ['judge', '--json', ...each]).out));
    expect(found.code).toBe(1);
    expect(run(program, ['judge', '--jsonl'], first).code).toBe(0);
  });

  it('should refuse what goes with many files only, and a file that is not there', () => {
    for (const words of [['--json'], ['--explain'], ['a', 'b'], ['gone.jsonl'], ['--rules', 'no-such-book']])
      expect(run(program, ['judge', '--jsonl', ...words])).toMatchObject({ code: 2, out: '' });
  });
});

describe('inputLines', () => {
  async function read(...chunks: readonly string[]) {
    async function* bytes() {
      for (const chunk of chunks) yield Buffer.from(chunk, 'latin1');
    }
    const found = [];
    for await (const line of inputLines(bytes())) found.push(line);
    return found;
  }

  it('should put lines together however they come', async () => {
    expect(await read('a', 'b\nc', '\n\n', 'd')).toEqual([
      { number: 1, text: 'ab' },
      { number: 2, text: 'c' },
      { number: 4, text: 'd' },
    ]);
  });

  it('should pass over a line that is longer than any design, and hold no more than that of it', async () => {
    const chunk = 'x'.repeat(500_000);
    const found = await read('a\n', chunk, chunk, chunk, chunk, chunk, '\nb\n', '\xff\n');
    expect(found.map(({ number }) => number)).toEqual([1, 2, 3, 4]);
    expect(found[1]!.text).toMatchObject({ says: 'line 2 is 2500000 bytes; expected at most 2 MB.' });
    expect(found[3]!.text).toMatchObject({ found: 'no UTF-8 text' });
  });
});
