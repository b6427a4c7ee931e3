import { describe, expect, it } from 'vitest';
import { csvOf } from '#papers/csv.ts';
import { greenhouseDesign, greenhouseVerdict as verdict } from './greenhouse.ts';

const lines = csvOf(greenhouseDesign(), verdict).split('\r\n');

describe('csvOf', () => {
  it('should give every line as many cells as the head', () => {
    const cells = (line: string) => line.replace(/"(?:[^"]|"")*"/g, '').split(',').length;
    for (const line of lines.slice(0, -1)) expect(cells(line)).toBe(cells(lines[0] ?? ''));
  });

  it('should hold every length and every asked figure', () => {
    expect(lines).toContain('weakest path,pri to out,creepage,0,4.83,5.6,mm,basic,,plain');
    expect(lines).toContain('"required, reinforced",pri to out,creepage,,,5.6,mm,,,');
    expect(lines.filter((line) => line.startsWith('"weak spot')).length).toBe(3);
  });

  it('should never start a cell with what a spreadsheet runs', () => {
    for (const title of ['=1+1', '+1', '-1', '@a', '\t=1']) {
      const row = csvOf(greenhouseDesign(title), verdict).split('\r\n')[1] ?? '';
      expect(row).toMatch(/^build,"?'/);
    }
  });

  it('should keep commas, quotes and line ends inside one cell', () => {
    const row = csvOf(greenhouseDesign('a, "b"\nc'), verdict);
    expect(row).toContain('build,"a, ""b""\nc",');
  });
});
