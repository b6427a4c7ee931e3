import { readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { tagsOf } from '#test/papers/well-formed.ts';
import { cases } from '#test/cases/read-cases.ts';
import { bundled, fileIn, newFolder, run } from './command.ts';

const folder = newFolder();
const program = bundled(folder);
afterAll(() => rmSync(folder, { recursive: true }));

const file = (id: string): string =>
  fileIn(folder, `${id}.json`, cases.find((known) => known.id === id)?.design);

describe('draw', () => {
  it.each(['no-margins', 'two-chambers', 'floating-screen-1-1', 'lead-slot-bare', 'core-floating'])(
    'should draw %s as one well-formed picture',
    (id) => {
      const out = join(folder, `${id}.svg`);
      expect(run(program, ['draw', file(id), '--out', out])).toEqual({ code: 0, out: '', err: '' });
      expect(tagsOf(readFileSync(out, 'utf8').trim())[0]).toBe('svg');
    },
  );

  it('should draw to standard output, stretched and in black', () => {
    const { code, out } = run(program, [
      'draw',
      file('no-margins'),
      '--out',
      '-',
      '--stretch',
      '4',
      '--black',
    ]);
    expect(code).toBe(0);
    expect(out).toContain('drawn 4 times as high as wide');
    expect(out).not.toContain('#a8124e');
  });

  it('should refuse a section that is not there and name those that are', () => {
    const { code, out, err } = run(program, [
      'draw',
      file('no-margins'),
      '--out',
      '-',
      '--section',
      'nowhere',
    ]);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain('"plain"');
  });

  it('should leave what was there where it cannot write', () => {
    const out = join(folder, 'kept.svg');
    writeFileSync(out, 'before');
    expect(run(program, ['draw', join(folder, 'gone.json'), '--out', out]).code).toBe(2);
    expect(readFileSync(out, 'utf8')).toBe('before');
    const nowhere = run(program, ['draw', file('no-margins'), '--out', join(folder, 'no', 'such.svg')]);
    expect(nowhere).toMatchObject({ code: 2, out: '' });
    expect(nowhere.err).toContain('no such folder');
    expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([]);
  });

  it('should render hostile text harmless', () => {
    const design = { ...(cases[0]?.design as object), title: '<script>alert(1)</script>&"\'\u202e' };
    const { out } = run(program, ['draw', fileIn(folder, 'hostile.json', design), '--out', '-']);
    expect(tagsOf(out.trim())).not.toContain('script');
  });
});

describe('schema', () => {
  it('should print the JSON Schema of the design file', () => {
    const { code, out } = run(program, ['schema']);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ type: 'object', $schema: expect.stringContaining('2020-12') });
  });
});
