import { chmodSync, mkdirSync, rmSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { cases } from '#test/cases/read-cases.ts';
import { complaints, isAt, refusalOf } from '#test/cases/complaints.ts';
import { answered, bundled, fileIn, newFolder, run } from '#test/cli/command.ts';

const folder = newFolder();
const program = bundled(folder);
afterAll(() => rmSync(folder, { recursive: true }));

const design = (id: string): Record<string, unknown> => {
  const found = cases.find((known) => known.id === id);
  if (found === undefined) throw new Error(`no case ${id}`);
  return found.design as Record<string, unknown>;
};
const good = fileIn(folder, 'good.json', design('margins-3-3'));
const short = fileIn(folder, 'short.json', design('no-margins'));
const judge = (...words: readonly string[]) => answered('judge', ...words);
/** By a process of its own: its exit code, and threads for many files. */
const judgeApart = (...words: readonly string[]) => run(program, ['judge', ...words]);

describe('judge', () => {
  it('should exit 0 where a build meets and 1 where it falls short', () => {
    expect(judgeApart(good).code).toBe(0);
    expect(judgeApart(short).code).toBe(1);
  });

  it('should say in words what it found, with its caution', async () => {
    const { out, err } = await judge(short);
    expect(err).toBe('');
    expect(out).toMatch(/^no-margins\nFalls short, IEC 62368-1, 2018/);
    expect(out).toContain('Caution: ');
  });

  it('should print one object for one file and an array for several', async () => {
    expect(JSON.parse((await judge('--json', good)).out)).toMatchObject({
      format: 'layerwright-verdict/1',
      verdict: 'meets',
    });
    const both = JSON.parse((await judge('--json', short, good)).out);
    expect(both.map((each: { title: string }) => each.title)).toEqual(['no-margins', 'margins-3-3']);
  });

  it('should answer every known case alike through the command line', () => {
    const files = cases.map(({ id, design: build }) => fileIn(folder, `case-${id}.json`, build));
    const verdicts = JSON.parse(judgeApart('--json', ...files).out);
    const answered = cases.map((known, k) =>
      verdicts[k].error
        ? [known.id, isAt(refusalOf(known) ?? [], verdicts[k].error.field) ? [] : [verdicts[k].error.says]]
        : [known.id, complaints(known, verdicts[k], '')],
    );
    expect(answered).toEqual(cases.map(({ id }) => [id, []]));
  });

  it('should judge by the rule books that are named, side by side where there are several', async () => {
    const one = JSON.parse((await judge(good, '--json', '--rules', 'iec-60335-1')).out);
    expect(one).toMatchObject({ format: 'layerwright-verdict/1', rules: { id: 'iec-60335-1' } });
    const two = await judge(good, '--json', '--rules', 'iec-62368-1', '--rules=iec-60335-1');
    expect(JSON.parse(two.out)).toMatchObject([
      { format: 'layerwright-verdict/1', rules: { id: 'iec-62368-1' } },
      { format: 'layerwright-verdict/1', rules: { id: 'iec-60335-1' } },
    ]);
    expect((await judge(good, '--rules', 'all')).out).toContain('Where they part');
  });

  it('should name the rule books that there are where one is misspelt', async () => {
    const { code, err } = await judge(good, '--rules', 'iec-62368-1', '--rules', 'iec-60335');
    expect(code).toBe(2);
    expect(err).toContain('there is no rule book iec-60335; there is iec-62368-1, iec-60664-1');
  });

  it('should judge many files by several rule books, file by file and book by book', async () => {
    const books = ['--rules', 'iec-62368-1', '--rules', 'iec-60335-1'];
    const bad = fileIn(folder, 'untitled.json', { ...design('margins-3-3'), origin: 'guessed' });
    const { code, out } = await judge(good, bad, short, ...books, '--json');
    expect(
      JSON.parse(out).map((each: { title?: string; rules?: { id: string }; file?: string }) =>
        each.file === undefined ? [each.title, each.rules?.id] : each.file === bad,
      ),
    ).toEqual([
      ['margins-3-3', 'iec-62368-1'],
      ['margins-3-3', 'iec-60335-1'],
      true,
      true,
      ['no-margins', 'iec-62368-1'],
      ['no-margins', 'iec-60335-1'],
    ]);
    expect(code).toBe(2);
    const words = await judge(good, short, ...books);
    expect(words.out.match(/^Caution: /gm)).toHaveLength(2);
    expect(words.out.trimEnd().split('\n').at(-1)).toMatch(/^2 files: /);
  });

  it('should read standard input', () => {
    const { code, out } = run(program, ['judge', '-'], JSON.stringify(design('margins-3-3')));
    expect(code).toBe(0);
    expect(out).toContain('margins-3-3');
  });

  it('should print one line for each of many files, and a summary', async () => {
    const { code, out } = await judge(good, short);
    const lines = out.trimEnd().split('\n');
    expect(lines[0]).toMatch(/^meets\s+.*good\.json/);
    expect(lines[1]).toMatch(/^falls short\s+.*short\.json/);
    expect(lines.at(-1)).toBe('2 files: 1 meet, 1 fall short, 0 not shown, 0 bad input');
    expect(code).toBe(1);
  });

  it('should keep the order of many files when the work is shared', () => {
    const names = Array.from({ length: 47 }, (_, k) => `build ${k}`);
    const files = names.map((title, k) =>
      fileIn(
        folder,
        `many-${k}.json`,
        k === 11 ? '{' : { ...design(k % 2 ? 'no-margins' : 'margins-3-3'), title },
      ),
    );
    const { code, out } = judgeApart('--json', ...files);
    const titles = (JSON.parse(out) as { title?: string }[]).map(({ title }) => title ?? 'bad');
    expect(titles).toEqual(names.map((name, k) => (k === 11 ? 'bad' : name)));
    expect(code).toBe(2);
    expect(judgeApart(...files).out).toContain('47 files: 24 meet, 22 fall short, 0 not shown, 1 bad input');
  });

  it('should go on after a bad file and exit 2', async () => {
    const bad = fileIn(folder, 'bad.json', { ...design('margins-3-3'), rules: 'no-such-book' });
    const words = await judge(good, bad, short);
    expect(words.code).toBe(2);
    expect(words.out).toMatch(/bad input\s+.*bad\.json/);
    expect(words.out).toContain('3 files: 1 meet, 1 fall short, 0 not shown, 1 bad input');
    const array = JSON.parse((await judge('--json', good, bad, short)).out);
    expect(array[1]).toMatchObject({ file: bad, error: { field: 'rules', found: '"no-such-book"' } });
    expect(array[1].error.says.length).toBeGreaterThan(0);
    expect(array[2].verdict).toBe('falls-short');
  });

  it('should print the worked sheet of the worst pair, or of the one named', async () => {
    const worst = await judge('--explain', short);
    expect(worst.out).toContain('How the figures were found');
    expect(worst.out).toMatch(/table\s+17, clause 5\.4\.3/);
    expect((await judge(short, '--explain', 'out,pri')).out).toContain(
      'Creepage asked: basic 2.5, reinforced 5.0 mm',
    );
    expect(await judge(short, '--explain', 'out,nobody')).toMatchObject({ code: 2, out: '' });
  });

  it('should take a rule book that stands in for that of the file', async () => {
    expect((await judge(good, '--rules', 'iec-62368-1')).code).toBe(0);
    expect(await judge(good, '--rules', 'no-such-book')).toMatchObject({ code: 2, out: '' });
  });
});

describe('bad input', () => {
  const base = design('margins-3-3');
  const [layer, ...layers] = base['layers'] as Record<string, unknown>[];
  const [winding, ...windings] = base['windings'] as Record<string, unknown>[];
  const former = base['former'] as Record<string, unknown>;
  const withLayer = (more: object): object => ({ ...base, layers: [{ ...layer, ...more }, ...layers] });
  const deep = (depth: number): unknown => (depth === 0 ? 1 : { a: deep(depth - 1) });
  const text = JSON.stringify(base);

  const bad: readonly (readonly [name: string, content: unknown, says: RegExp])[] = [
    ['not JSON', '{ "format": ', /JSON/],
    ['an empty file', '', /empty/],
    ['a wrong unit', { ...base, former: { ...former, wall: '0.8 kg' } }, /former\.wall.*0\.8 kg/],
    [
      'a negative width',
      { ...base, former: { ...former, chambers: [{ width: '-3 mm' }] } },
      /chambers\[0\]\.width/,
    ],
    ['NaN', text.replace('"0.8 mm"', 'NaN'), /JSON/],
    ['1e999', text.replace('"0.8 mm"', '1e999'), /former\.wall|1e999|Infinity/],
    ['an unknown rule book', { ...base, rules: 'no-such-book' }, /rules.*no-such-book/],
    [
      'an unknown material',
      { ...base, former: { ...former, material: 'cheese' } },
      /former\.material.*cheese/,
    ],
    ['a doubled id', { ...base, windings: [winding, winding, ...windings] }, /windings\[1\]\.id/],
    ['a dangling winding', withLayer({ winding: 'Q' }), /layers\[0\]\.winding.*Q/],
    [
      'a dangling circuit',
      { ...base, windings: [{ ...winding, circuit: 'gone' }, ...windings] },
      /windings\[0\]\.circuit.*gone/,
    ],
    ['10 000 layers', { ...base, layers: Array(10_000).fill(layer) }, /layers.*400/],
    ['a string of 10 MB', { ...base, notes: 'x'.repeat(10_000_000) }, /2 MB/],
    ['a key __proto__', text.replace('"format"', '"__proto__":{"a":1},"format"'), /__proto__/],
    ['deep nesting', { ...base, notes: deep(200) }, /nest|deep/],
    [
      'a margin wider than the chamber',
      withLayer({ margins: { left: { width: '13 mm', filled: true } } }),
      /layers\[0\]\.margins/,
    ],
    ['zero chambers', { ...base, former: { ...former, chambers: [] } }, /former\.chambers/],
    ['no turns', withLayer({ turns: 0 }), /layers\[0\]\.turns/],
    ['a turn and a half', withLayer({ turns: 1.5 }), /layers\[0\]\.turns/],
    ['a key that nobody knows', { ...base, colour: 'blue' }, /colour/],
    ['bytes that are no text', Buffer.from([0xff, 0xfe, 0x00]), /no UTF-8 text/],
  ];

  it.each(bad)('should refuse %s in a sentence and print nothing else', async (name, content, says) => {
    const file = fileIn(folder, `bad ${name.replace(/\W/g, ' ')}.json`, content);
    for (const words of [[file], ['--json', file], ['--explain', file]]) {
      const { code, out, err } = await answered('judge', ...words);
      expect({ code, out }).toEqual({ code: 2, out: '' });
      expect(err).toMatch(says);
      expect(err).toMatch(/expected/);
      expect(err).not.toMatch(/\n\s+at /);
    }
  });

  it('should refuse a missing file, a directory and a link to itself', async () => {
    const loop = join(folder, 'loop.json');
    symlinkSync(loop, loop);
    mkdirSync(join(folder, 'a folder'));
    for (const [name, says] of [
      ['gone.json', /no such file/],
      ['good.json/inside.json', /no such file/],
      ['a folder', /a directory/],
      ['loop.json', /leads to itself/],
    ] as const) {
      const { code, out, err } = await judge(join(folder, name));
      expect({ name, code, out }).toEqual({ name, code: 2, out: '' });
      expect(err).toMatch(says);
    }
  });

  it.skipIf(process.getuid?.() === 0)('should refuse a file that may not be read', async () => {
    const file = fileIn(folder, 'locked.json', base);
    chmodSync(file, 0o000);
    expect(await judge(file)).toMatchObject({ code: 2, out: '' });
  });

  it('should tell every fault of a file', async () => {
    const file = fileIn(folder, 'two faults.json', withLayer({ turns: 0, winding: 5 }));
    const { err } = await judge(file);
    expect(err.trimEnd().split('\n').length).toBe(2);
  });
});

describe('the command line itself', () => {
  const wrong: readonly (readonly [string, readonly string[]])[] = [
    ['no verb', []],
    ['an unknown verb', ['guess']],
    ['no file', ['judge']],
    ['an unknown option', ['judge', '--loud', good]],
    ['an option twice', ['judge', '--json', '--json', good]],
    ['a switch with a value', ['judge', '--json=yes', good]],
    ['an option without its value', ['judge', good, '--rules']],
    ['standard input twice', ['judge', '-', '-']],
    ['draw without a place to write', ['draw', good]],
    ['draw with two files', ['draw', good, short, '--out', '-']],
    ['schema with arguments', ['schema', good]],
  ];

  it.each(wrong)('should refuse %s with exit 2 and say so', async (_, words) => {
    const { code, out, err } = await answered(...words);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err.length).toBeGreaterThan(10);
    expect(err).not.toMatch(/\n\s+at /);
  });

  it('should list only verbs that there are', async () => {
    const { code, out } = await answered('help');
    expect(code).toBe(0);
    const names = [...out.matchAll(/^ {2}(\w+)/gm)].map(([, name]) => name ?? '');
    expect(names.length).toBeGreaterThanOrEqual(3);
    for (const name of names) expect((await answered(name, '--help')).out).toContain(name);
  });

  it('should take a file whose name begins with dashes after --', async () => {
    expect((await answered('judge', '--', '--json')).err).toContain('no such file');
  });
});
