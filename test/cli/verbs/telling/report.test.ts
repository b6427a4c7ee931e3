import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { escapeText } from '#words/text/escape-text.ts';
import { lengthDown, lengthUp } from '#words/text/number-words.ts';
import type { ToldVerdict } from '#words/told.ts';
import { answered, fileIn, newFolder } from '#test/cli/command.ts';

const folder = newFolder();
afterAll(() => rmSync(folder, { recursive: true }));

const demo = (name: string): string =>
  fileURLToPath(new URL(`../../../../static/demos/${name}.json`, import.meta.url));
const verdictOf = async (file: string): Promise<ToldVerdict> =>
  JSON.parse((await answered('judge', '--json', file)).out) as ToldVerdict;

async function report(file: string, name: string, ...more: readonly string[]): Promise<string> {
  const out = join(folder, name);
  expect(await answered('report', file, '--out', out, ...more)).toEqual({ code: 0, out: '', err: '' });
  return readFileSync(out, 'utf8');
}

/** Every value unknown that may be. */
const UNKNOWN = {
  format: 'layerwright-design/1',
  title: 'Nobody knows',
  origin: 'dissected',
  rules: 'iec-62368-1',
  supply: { kind: 'ac', voltage: '240 V' },
  circuits: [
    { id: 'pri', name: 'Primary', role: 'mains' },
    { id: 'out', name: 'Output', role: 'touchable' },
  ],
  former: {
    height: '4 mm',
    wall: 'unknown',
    flange: 'unknown',
    material: 'unknown',
    chambers: [{ width: '10 mm' }],
  },
  core: { bond: 'unknown', outerGap: 'unknown' },
  windings: ['P', 'S'].map((id, k) => ({
    id,
    circuit: k === 0 ? 'pri' : 'out',
    wire: { kind: 'unknown', conductor: '0.3 mm', grade: 'unknown' },
    leads: { start: 'unknown', finish: 'unknown' },
  })),
  layers: [
    {
      kind: 'winding',
      winding: 'P',
      turns: 20,
      margins: { left: { width: 'unknown' }, right: { width: 'unknown' } },
    },
    { kind: 'tape', material: 'polyester-tape-25', plies: 'unknown' },
    { kind: 'winding', winding: 'S', turns: 9 },
  ],
};

describe('report', () => {
  it.each(['greenhouse-timer', 'garden-robot-dock', 'model-railway-controller', 'headphone-amplifier'])(
    'should tell every figure of the verdict on %s',
    async (name) => {
      const verdict = await verdictOf(demo(name));
      const html = await report(demo(name), `${name}.html`);
      const figures = [
        ...verdict.pairs.flatMap(({ required }) =>
          required === null
            ? []
            : [required.creepage, required.clearance].flatMap((each) =>
                [each.basic, each.reinforced].map(lengthUp),
              ),
        ),
        ...verdict.pairs.flatMap(({ paths }) =>
          paths.flatMap(({ length }) => (length ? [lengthDown(length)] : [])),
        ),
        ...verdict.weakSpots.flatMap(({ says, length }) => [
          says,
          ...(length === null ? [] : [lengthDown(length)]),
        ]),
        // the report names the pair and the interval's end in its own words
        ...verdict.assumptions.flatMap(({ field, counted, kind }) => [
          field,
          kind === 'interval' ? 'worse end of its interval' : counted.replace(/^between \S+ and \S+ /, ''),
        ]),
        ...verdict.remarks.map(({ says }) => says),
        ...verdict.notJudged,
      ];
      expect(figures.length).toBeGreaterThan(10);
      for (const words of figures) expect(html).toContain(escapeText(words));
    },
  );

  it('should attach the design, which gives the same verdict again', async () => {
    await report(demo('greenhouse-timer'), 'again.html');
    expect(await verdictOf(join(folder, 'again.html'))).toEqual(await verdictOf(demo('greenhouse-timer')));
  });

  it('should still tell of a build of which nothing is known', async () => {
    const file = fileIn(folder, 'unknown.json', UNKNOWN);
    expect((await verdictOf(file)).verdict).toBe('not-shown');
    const html = await report(file, 'unknown.html');
    expect(html).toContain('Not shown');
    expect(html.match(/counted as/g)?.length).toBeGreaterThan(5);
    expect(await report(file, 'unknown-winder.html', '--winder')).toContain('An unknown number of plies');
  });

  it('should give the figures as comma-separated values', async () => {
    const lines = (await report(demo('greenhouse-timer'), 'figures.csv')).trimEnd().split('\r\n');
    expect(lines).toContain('weakest path,pri to out,creepage,0,4.83,5.6,mm,basic,,plain');
  });

  it('should refuse what it cannot make', async () => {
    const file = demo('greenhouse-timer');
    for (const words of [
      [file],
      [file, file, '--out', 'x.html'],
      [file, '--out', join(folder, 'x.csv'), '--winder'],
    ])
      expect(await answered('report', ...words)).toMatchObject({ code: 2, out: '' });
  });
});

describe('draw to DXF', () => {
  it('should give the section in millimetres', async () => {
    const out = join(folder, 'section.dxf');
    expect((await answered('draw', demo('greenhouse-timer'), '--out', out)).code).toBe(0);
    expect(readFileSync(out, 'utf8')).toMatch(/^0\r\nSECTION\r\n[\s\S]*POLYLINE[\s\S]*0\r\nEOF\r\n$/);
  });
});
