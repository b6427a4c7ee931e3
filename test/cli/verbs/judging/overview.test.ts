import { existsSync, mkdirSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { answered, fileIn, newFolder } from '#test/cli/command.ts';

const folder = newFolder();
afterAll(() => rmSync(folder, { recursive: true }));

const TEST = fileURLToPath(new URL('../../..', import.meta.url));
const demos = fileURLToPath(new URL('../../../../static/demos', import.meta.url));
const demo = (name: string): string =>
  readFileSync(join(name === 'lesson-margin' ? TEST : demos, `${name}.json`), 'utf8');

const builds = join(folder, 'builds');
mkdirSync(join(builds, 'more'), { recursive: true });
for (const name of ['lesson-margin', 'aquarium-light', 'greenhouse-timer'])
  fileIn(builds, `${name}.json`, demo(name));
fileIn(join(builds, 'more'), 'lesson-margin.json', demo('lesson-margin'));
fileIn(builds, 'notes.txt', 'not a design');

describe('overview', () => {
  it('should list every design of a folder, worst first, each with its report', async () => {
    const out = join(folder, 'out');
    expect(await answered('overview', builds, '--out', out)).toEqual({ code: 0, out: '', err: '' });
    const html = readFileSync(join(out, 'index.html'), 'utf8');
    const links = [...html.matchAll(/<a href="([^"]+)"/g)].map(([, address]) => address ?? '');
    expect(links).toEqual(['aquarium-light.html', 'greenhouse-timer.html', 'lesson-margin.html']);
    for (const link of links) expect(readFileSync(join(out, link), 'utf8')).toMatch(/^<!doctype html>/);
    expect(html).toContain('1 meet, 2 fall short, 0 not shown, 0 bad input');
  });

  it('should go on after a bad file, tell of it, and exit 2', async () => {
    const bad = fileIn(folder, 'bad.json', '{ "title": "<script>alert(1)</script>" }');
    const out = join(folder, 'out-bad');
    const good = join(builds, 'lesson-margin.json');
    expect(await answered('overview', bad, good, '--out', out)).toEqual({ code: 2, out: '', err: '' });
    const html = readFileSync(join(out, 'index.html'), 'utf8');
    expect(html).toContain('0 not shown, 1 bad input');
    expect(html.match(/<script/g)?.length).toBe(1);
    expect(readdirSync(out).sort()).toEqual(['index.html', 'lesson-margin.html']);
  });

  it('should keep two files of one name apart', async () => {
    const out = join(folder, 'out-two');
    const twice = [join(builds, 'lesson-margin.json'), join(builds, 'more', 'lesson-margin.json')];
    expect((await answered('overview', ...twice, '--out', out)).code).toBe(0);
    expect(readdirSync(out).sort()).toEqual(['index.html', 'lesson-margin-2.html', 'lesson-margin.html']);
  });

  it('should refuse an empty folder, no folder to write to, and a file in its place', async () => {
    const empty = join(folder, 'empty');
    mkdirSync(empty);
    const file = fileIn(folder, 'taken', 'x');
    for (const words of [
      [empty, '--out', join(folder, 'x')],
      [builds],
      [builds, '--out', join(file, 'in')],
    ]) {
      expect(await answered('overview', ...words)).toMatchObject({ code: 2, out: '' });
    }
    expect(existsSync(join(folder, 'x'))).toBe(false);
  });
});
