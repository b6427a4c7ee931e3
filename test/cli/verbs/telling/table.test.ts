// What the command line tells of the tables, and the plot that it writes.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { tableOf } from '#cli/verbs/telling/table.ts';
import { newFolder } from '#test/cli/command.ts';

const told = (...words: readonly string[]): string => tableOf(words).out.join('');

describe('the verb table', () => {
  it('should list the tables of a book and print every cell with how well it is known', () => {
    expect(told()).toMatch(/^creepage +table 17, creepage, 360 cells, two sources to published$/m);
    expect(told('creepage')).toContain('  250 V rms, PD 2, IIIb: 2.5 mm (two sources)');
    expect(told('national-altitude')).toContain('  china, altitude: 5000 m (second-hand copy)');
    expect(told('creepage', '--rules', 'iec-61558-2-16')).toContain('(memory)');
  });

  it('should name those that exist where book, table or column is misspelt', () => {
    expect(tableOf(['--rules', 'iec-60665-1'])).toMatchObject({
      code: 2,
      err: expect.stringContaining(
        'there is no rule book iec-60665-1; there is iec-62368-1, iec-60664-1',
      ) as string,
    });
    expect(tableOf(['crepage']).err).toContain('has no table crepage; there is clearance-by-peak');
    expect(tableOf(['creepage', '--column', 'IV', '--out', '-']).err).toContain('there is I, II, IIIa, IIIb');
    expect(tableOf(['mains-transient', '--out', '-']).err).toContain('holds no lengths by a voltage');
    expect(tableOf(['creepage', '--at', 'much', '--out', '-']).err).toContain(
      '--at is a voltage in V, not much',
    );
  });

  it('should write the plot as a vector drawing in black and white, with the points of a build', () => {
    const out = join(newFolder(), 'plot.svg');
    const build = 'static/demos/greenhouse-timer.json';
    expect(tableOf(['creepage', '--build', build, '--out', out]).code).toBe(0);
    const svg = readFileSync(out, 'utf8');
    expect(svg).toContain('<title>IEC 62368-1, table 17: creepage</title>');
    expect(svg).toContain('A Primary to Output, 4.83 mm: 0.77 short');
    const colours = new Set(svg.match(/#[0-9a-f]{6}/g));
    for (const colour of colours) expect(colour).toMatch(/^#(..)\1\1$/);
  });
});
