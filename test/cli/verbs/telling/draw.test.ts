import { existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { tagsOf } from '#test/papers/well-formed.ts';
import { cases } from '#test/cases/read-cases.ts';
import { answered, bundled, fileIn, newFolder, run } from '#test/cli/command.ts';

const folder = newFolder();
const program = bundled(folder);
afterAll(() => rmSync(folder, { recursive: true }));

const file = (id: string): string =>
  fileIn(folder, `${id}.json`, cases.find((known) => known.id === id)?.design);

describe('draw', () => {
  it.each(['no-margins', 'two-chambers', 'floating-screen-1-1', 'lead-slot-bare', 'core-floating'])(
    'should draw %s as one well-formed picture',
    async (id) => {
      const out = join(folder, `${id}.svg`);
      expect(await answered('draw', file(id), '--out', out)).toEqual({ code: 0, out: '', err: '' });
      expect(tagsOf(readFileSync(out, 'utf8').trim())[0]).toBe('svg');
    },
  );

  it('should draw pixels with words on them', async () => {
    const inside = mkdtempSync(join(process.cwd(), 'node_modules', '.layerwright-'));
    try {
      const out = join(folder, 'no-margins.png');
      // the rasteriser is found from where the program lies
      const ran = run(bundled(inside), ['draw', file('no-margins'), '--out', out]);
      expect(ran).toEqual({ code: 0, out: '', err: '' });
      const png = readFileSync(out);
      expect(png.subarray(0, 8)).toEqual(Buffer.from('89504e470d0a1a0a', 'hex'));
      // twice the SVG's own width and height
      const [, width = '', height = ''] = /width="(\d+)" height="(\d+)"/.exec(
        (await answered('draw', file('no-margins'), '--out', '-')).out,
      )!;
      expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([2 * Number(width), 2 * Number(height)]);
    } finally {
      rmSync(inside, { recursive: true });
    }
  });

  it('should say what is missing for pixels, and write nothing', () => {
    const out = join(folder, 'nothing.png');
    const { code, err } = run(program, ['draw', file('no-margins'), '--out', out]);
    expect({ code, exists: existsSync(out) }).toEqual({ code: 2, exists: false });
    expect(err).toContain('@resvg/resvg-js is not installed');
  });

  it('should draw to standard output, stretched and in black', async () => {
    const { code, out } = await answered(
      'draw',
      file('no-margins'),
      '--out',
      '-',
      '--stretch',
      '4',
      '--black',
    );
    expect(code).toBe(0);
    expect(out).toContain('drawn 4 times as high as wide');
    expect(out).not.toContain('#a8124e');
  });

  it('should refuse a section that is not there and name those that are', async () => {
    const { code, out, err } = await answered(
      'draw',
      file('no-margins'),
      '--out',
      '-',
      '--section',
      'nowhere',
    );
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain('"plain"');
  });

  it('should leave what was there where it cannot write', async () => {
    const out = join(folder, 'kept.svg');
    writeFileSync(out, 'before');
    expect((await answered('draw', join(folder, 'gone.json'), '--out', out)).code).toBe(2);
    expect(readFileSync(out, 'utf8')).toBe('before');
    const nowhere = await answered('draw', file('no-margins'), '--out', join(folder, 'no', 'such.svg'));
    expect(nowhere).toMatchObject({ code: 2, out: '' });
    expect(nowhere.err).toContain('no such folder');
    expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([]);
  });

  it('should render hostile text harmless', async () => {
    const design = { ...(cases[0]?.design as object), title: '<script>alert(1)</script>&"\'\u202e' };
    const { out } = await answered('draw', fileIn(folder, 'hostile.json', design), '--out', '-');
    expect(tagsOf(out.trim())).not.toContain('script');
  });
});

describe('schema', () => {
  it('should print the JSON Schema of the design file', async () => {
    const { code, out } = await answered('schema');
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ type: 'object', $schema: expect.stringContaining('2020-12') });
  });
});
