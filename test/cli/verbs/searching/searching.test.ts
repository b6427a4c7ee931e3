// The verbs that search and set builds side by side: mend, spread, fit, compare, series, by the command line as it is bundled.

import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';

import { answered, bundled, fileIn, newFolder, run, type Ran } from '#test/cli/command.ts';

const folder = newFolder();
const at = (path: string): string => fileURLToPath(new URL(`../../../../${path}`, import.meta.url));
const meets = at('test/lesson-margin.json');
const onePly = at('static/demos/model-railway-controller.json');
const program = bundled(folder);
afterAll(() => rmSync(folder, { recursive: true }));

const told = (...words: readonly string[]): Promise<Ran> => answered(...words);
const data = async (...words: readonly string[]): Promise<Record<string, unknown>> => {
  const { code, out, err } = await told(...words, '--json');
  expect([words[0], code, err]).toEqual([words[0], 0, '']);
  return JSON.parse(out) as Record<string, unknown>;
};

/** The same build with another margin on one side. */
function narrower(): string {
  const doc = JSON.parse(readFileSync(meets, 'utf8')) as {
    layers: { margins: { left: { width: string } } }[];
  };
  doc.layers[0]!.margins.left.width = '1 mm';
  return fileIn(folder, 'narrower.json', JSON.stringify(doc));
}

describe('mend', () => {
  it('should tell the way a winder would take first, with its reason, its cost and how it holds', async () => {
    const { code, out } = await told('mend', onePly, '--top', '1');
    expect(code).toBe(0);
    expect(out).toContain('1. More plies, the first: no width, nothing else has to be bought');
    expect(out).toContain('plies, layer 2: 1 -> 3');
    expect(out).toMatch(/wound by hand [\d.]+ % of pieces meet/);
    expect(out).toContain('limits next: Primary to Output');
  });

  it('should give the whole mended build as data', async () => {
    const { format, proposals, none } = await data('mend', onePly, '--top', '1');
    expect([format, none]).toEqual(['layerwright-mend/1', null]);
    const [first] = proposals as { design: { layers: { plies?: number }[] }; share: number; why: string }[];
    expect(first?.design.layers[1]?.plies).toBe(3);
    expect(first?.share).toBeGreaterThan(0.9);
    expect(first?.why).toContain('nothing else has to be bought');
  });

  it('should write a report of each way before and after: drawing, what changed, path, grade and fit', async () => {
    const out = join(folder, 'ways.html');
    expect(await told('mend', onePly, '--top', '1', '--out', out)).toMatchObject({ code: 0, err: '' });
    const html = readFileSync(out, 'utf8');
    for (const words of ['as found', 'way 1', 'What changed', 'Pair by pair', 'What it did'])
      expect(html).toContain(words);
    expect(html.match(/<svg [^>]*viewBox="0 0 328 /g)).toHaveLength(2);
    expect(html).toContain('plies, layer 2: 1 -&gt; 3');
    expect(html).toMatch(/ basic.*falls short.*through one ply.* reinforced.*meets.*along the margin/s);
    expect(html).toContain('>1.52 mm</td><td class="figure" data-head="way 1">1.64 mm</td>');
    expect(html).toMatch(/Wound by hand [\d.]+ % of pieces meet/);
    expect((await told('mend', onePly, '--json', '--out', out)).code).toBe(2);
  });

  it('should say that nothing needs mending', async () => {
    expect((await told('mend', meets)).out).toBe('Nothing needs mending: the build meets what is asked.\n');
  });
});

describe('spread', () => {
  it('should tell the same for the same seed on one, two and four threads', () => {
    const by = (threads: number): unknown =>
      JSON.parse(
        run(program, ['spread', narrower(), '--draws', '200', '--threads', String(threads), '--json']).out,
      );
    const one = by(1);
    expect(one).toMatchObject({
      format: 'layerwright-spread/1',
      seed: 1,
      draws: 200,
      worstCase: 'falls-short',
    });
    expect(by(2)).toEqual(one);
    expect(by(4)).toEqual(one);
  });

  it('should be the judgement itself where nothing wanders', async () => {
    const still = ['--margin', '0', '--tape', '0', '--sleeve', '0', '--forgotten-ply', '0', '--draws', '3'];
    expect(await data('spread', meets, ...still)).toMatchObject({ share: 1, worstCase: 'meets' });
    expect(await data('spread', narrower(), ...still)).toMatchObject({ share: 0, worstCase: 'falls-short' });
  });
});

describe('fit', () => {
  it('should tell rows and copper', async () => {
    const { format, windings, rows } = await data('fit', meets);
    expect(format).toBe('layerwright-fit/1');
    expect((rows as unknown[]).length).toBeGreaterThan(1);
    expect((windings as { ohmsCold: number }[])[0]?.ohmsCold).toBeGreaterThan(0);
    expect((await told('fit', meets)).out).toMatch(/ohm/);
  });
});

describe('compare', () => {
  it('should write both to one scale, with what was changed and what it did to path, grade and fit', async () => {
    const out = join(folder, 'compared.html');
    expect(await told('compare', meets, narrower(), '--out', out)).toMatchObject({ code: 0, err: '' });
    const html = readFileSync(out, 'utf8');
    const sizes = [...html.matchAll(/viewBox="(0 0 328 \d+)"/g)].map(([, size]) => size);
    expect(sizes).toHaveLength(2);
    expect(new Set(sizes).size).toBe(1);
    expect(html).toContain('left margin, layer 1: 3 mm -&gt; 1 mm');
    expect(html).toContain('left to a full window');
  });

  it('should tell what changed and what it did', async () => {
    const { format, changed } = await data('compare', narrower(), meets);
    expect(format).toBe('layerwright-compare/1');
    expect((changed as { field: string }[]).map(({ field }) => field)).toEqual([
      'layers[0].margins.left.width',
    ]);
    expect((await told('compare', narrower(), meets)).out).toMatch(/falls short.*meets/s);
  });
});

describe('series', () => {
  it('should judge every line of a table', async () => {
    const table = fileIn(folder, 'widths.csv', 'layers[0].margins.left.width\n1 mm\n2 mm\n3 mm\n');
    const { fields, rows } = await data('series', meets, table);
    expect(fields).toEqual(['layers[0].margins.left.width']);
    const limits = (rows as { verdict: string; limiting: { length: number } | null }[]).map(
      ({ verdict, limiting }) => [verdict, limiting?.length],
    );
    // 3 mm of the output's margin, 0.18 of tape, and what the line gives
    expect(limits).toEqual([
      ['falls-short', 4.18],
      ['meets', 5.18],
      ['meets', 6.18],
    ]);
  });

  it('should say of a line that no build can be made of what is wrong, and judge the others', async () => {
    const table = fileIn(folder, 'half.csv', 'name,layers[1].plies\nfine,3\nwrong,many\n');
    const { code, out, err } = await told('series', meets, table);
    expect(code).toBe(2);
    expect(out).toMatch(/^fine: 3: meets/m);
    expect(err).toMatch(/wrong: cannot be read: layers\[1\]\.plies/);
  });

  it('should refuse a table of a field that is not there, naming it', async () => {
    const table = fileIn(folder, 'wrong.csv', 'layers[9].plies\n3\n');
    const { code, out, err } = await told('series', meets, table);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('layers[9].plies');
  });
});

describe('a wrong command line', async () => {
  it.each([
    ['mend', ['mend'], 'mend: name one design file'],
    ['mend --top', ['mend', meets, '--top', '0'], 'mend: --top is a whole number from 1 to 20.'],
    ['spread --draws', ['spread', meets, '--draws', '1.5'], 'spread: --draws is a whole number'],
    [
      'spread --threads',
      ['spread', meets, '--threads', '0'],
      'spread: --threads is a whole number from 1 to 8.',
    ],
    [
      'spread --margin',
      ['spread', meets, '--margin', '-1'],
      'spread: --margin is a length in mm from 0 to 10',
    ],
    ['fit', ['fit', meets, meets], 'fit: name one design file'],
    ['compare', ['compare', meets], 'compare: name two design files.'],
    ['series', ['series', meets], 'series: name one design file and one table'],
  ] as const)('should be refused with what was expected: %s', async (_, words, says) => {
    const { code, out, err } = await told(...words);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(says);
  });

  it.each(['mend', 'spread', 'fit'])('should name the place in a bad file: %s', async (verb) => {
    const doc = JSON.parse(readFileSync(meets, 'utf8')) as { layers: { plies?: unknown }[] };
    doc.layers[1]!.plies = 'three';
    const { code, err } = await told(verb, fileIn(folder, 'bad.json', JSON.stringify(doc)));
    expect(code).toBe(2);
    expect(err).toContain('layers[1].plies');
  });
});
