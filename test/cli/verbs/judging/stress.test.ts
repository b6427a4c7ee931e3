import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { answered, bundled, fileIn, newFolder, run } from '#test/cli/command.ts';

const folder = newFolder();
const program = bundled(folder);
afterAll(() => rmSync(folder, { recursive: true }));

const DOCK = join(import.meta.dirname, '../../../../static/demos/garden-robot-dock.json');

describe('stress', () => {
  it('should tell stress in words', async () => {
    const { code, out, err } = await answered('stress', DOCK);
    expect([code, err]).toEqual([0, '']);
    for (const title of [
      'Working voltages',
      'Bridging parts',
      'Touch current',
      'Test plan',
      'Heat',
      'Cautions',
    ]) {
      expect(out).toMatch(new RegExp(`^${title}$`, 'm'));
    }
    expect(out).toContain('CX1, Primary to Output: unsafe bridge');
  });

  it('should print one object with --json, the same every time, and read standard input', async () => {
    const { code, out } = await answered('stress', '--json', DOCK);
    expect(code).toBe(0);
    const sheet = JSON.parse(out);
    expect(sheet).toMatchObject({ format: 'layerwright-stress/1', title: 'Charging dock of a garden robot' });
    expect(sheet.pairs).toHaveLength(3);
    expect(run(program, ['stress', '--json', '-'], readFileSync(DOCK, 'utf8')).out).toBe(out);
  });

  it('should refuse bad converter data with the field, and print nothing else', async () => {
    const design = JSON.parse(readFileSync(DOCK, 'utf8'));
    design.converter.duty = 1.2;
    const { code, out, err } = await answered('stress', fileIn(folder, 'bad.json', design));
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('converter.duty');
  });

  it.each([[[]], [['a.json', 'b.json']], [['--rules', 'x', DOCK]], [[join(folder, 'missing.json')]]])(
    'should refuse %j',
    async (words) => {
      const { code, out, err } = await answered('stress', ...words);
      expect([code, out]).toEqual([2, '']);
      expect(err).not.toBe('');
    },
  );
});
