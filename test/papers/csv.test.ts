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
    for (const title of ['=1+1', '+1', '-1', '@a', '\t=1', '  =1', '\uff1d1+1']) {
      const row = csvOf(greenhouseDesign(title), verdict).split('\r\n')[1] ?? '';
      expect(row).toMatch(/^build,"?\s*'/);
    }
    const row = csvOf(greenhouseDesign('a; =1+1;b'), verdict).split('\r\n')[1] ?? '';
    expect(row).toMatch(/^build,"a; '=1\+1;b",/);
  });

  it('should hold no control sign but its line ends', () => {
    const csv = csvOf(greenhouseDesign('a\u0000b\u001bc\u009bd\u202ee'), verdict);
    // eslint-disable-next-line no-control-regex -- looked for
    expect(csv.replace(/\r\n/g, '')).not.toMatch(/[\u0000-\u001f\u007f-\u009f\u202a-\u202e]/);
  });

  it('should keep commas and quotes inside one cell', () => {
    const row = csvOf(greenhouseDesign('a, "b"\nc'), verdict);
    expect(row).toContain('build,"a, ""b"" c",');
  });
});
