// Entries of the file in words: no bracket of the file is left in them, whatever two builds differ in.

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { compareFiles } from '#cli/verbs/searching/compare.ts';
import { changedEnds, entryWords } from '#words/mend/entry-words.ts';

const SLEEVE = { material: 'ptfe', wall: '0.4 mm', into: '3 mm' };
const LEAD = { at: 'left', exit: 'left', way: 'slot', sleeve: SLEEVE, bareFrom: '4 mm' };

describe('entries in words', () => {
  it('should tell leads as a winder does, both ends at once where they are alike', () => {
    const lead =
      'from the left end, out left through the slot, sleeve of ptfe, wall 0.4 mm, 3 mm into the window, bare from 4 mm on';
    expect(entryWords({ start: LEAD, finish: LEAD })).toBe(`both ends ${lead}`);
    expect(entryWords({ start: LEAD, finish: { ...LEAD, way: 'riser', sleeve: 'none' } })).toBe(
      `start ${lead}, finish from the left end, out left up the inside of the flange, no sleeve, bare from 4 mm on`,
    );
    expect(entryWords({ start: 'unknown', finish: LEAD })).toBe(`start unknown, finish ${lead}`);
    expect(entryWords({ ...LEAD, way: 'unknown', sleeve: 'unknown' })).toContain(
      'by an unknown way, sleeve unknown',
    );
  });

  it('should tell only the end of the leads that was changed', () => {
    const was = { start: LEAD, finish: LEAD };
    const is = { start: LEAD, finish: { ...LEAD, way: 'top' } };
    expect(changedEnds(was, is)).toEqual([{ finish: LEAD }, { finish: is.finish }]);
    expect(changedEnds('unknown', is)).toEqual(['unknown', is]);
  });

  it('should leave no bracket of the file in what is said of any two demo builds', () => {
    const folder = new URL('../../../static/demos/', import.meta.url);
    const files = readdirSync(folder).map((name) => new URL(name, folder).pathname);
    expect(JSON.stringify(JSON.parse(readFileSync(files[0]!, 'utf8')))).toMatch(/[{}]/);
    for (const file of files.slice(1)) {
      const stdout = compareFiles([files[0]!, file]).out.join('');
      expect(stdout).toContain('What changed:');
      expect(stdout, file).not.toMatch(/[{}[\]"]/);
    }
  });
});
