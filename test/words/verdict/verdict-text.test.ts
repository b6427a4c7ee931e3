import { describe, expect, it } from 'vitest';
import { verdictLine, verdictText } from '#words/verdict/verdict-text.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import { greenhouseDesign, greenhouseVerdict as verdict } from '#test/papers/greenhouse.ts';

const design = greenhouseDesign();
const text = verdictText(design, verdict);

describe('verdictText', () => {
  it('should open with title, answer, edition and how far it reaches', () => {
    const [title, answer, why] = text.split('\n');
    expect(title).toBe('Wall supply of a greenhouse irrigation timer');
    expect(answer).toBe('Falls short, IEC 62368-1, 2018; inside the winding window only');
    expect(why).toContain('begins 1.65 mm from the left flange');
  });

  it('should tell the worst pair first and the asked-for nothing last', () => {
    expect(text.indexOf('Primary to Output: falls short')).toBeLessThan(text.indexOf('nothing is asked'));
  });

  it('should tell the path piece by piece', () => {
    expect(text).toContain(
      '3.00 along the margin, 0.18 up the tape edges at the flange, 1.65 back along the margin',
    );
  });

  it('should number the weak spots and mark the unknowns that decide', () => {
    expect(text).toMatch(/1 narrow margin \(Primary to Output; plain; 4\.83 of 5\.6 mm\)/);
    expect(text).toContain(
      '? workingVoltages: counted as at the least that the mains puts there, 240 V rms; decides a pair (240 V: meets), the whole at its best: meets',
    );
  });

  it('should end with what is not judged, what rests on memory, and the caution', () => {
    expect(text).toContain('Not judged\n  pins and wiring outside');
    expect(text).toContain('rests on a table figure marked memory');
    expect(text.trimEnd().split('\n').at(-1)).toMatch(/^Caution: .*discharge the bulk capacitor/);
  });

  it.each(['meets', 'falls-short', 'not-shown'] as const)(
    'should never call a build that %s safe',
    (answer) => {
      const pairs = verdict.pairs.map((pair) => ({ ...pair, verdict: answer }));
      const words = verdictText(design, { ...verdict, verdict: answer, pairs }).toLowerCase();
      expect(words).not.toMatch(/\bsafe\b|complian|\bpass(es|ed)?\b/);
    },
  );

  it('should say nothing of the window where everything is judged', () => {
    expect(verdictText(design, { ...verdict, notJudged: [] })).not.toContain('inside the winding window');
  });

  it('should keep control signs of a file away from the terminal', () => {
    const hostile: Verdict = { ...verdict, title: 'a\u001b[31m\u202eb', weakSpots: [] };
    // eslint-disable-next-line no-control-regex -- looked for
    expect(verdictText(design, hostile)).not.toMatch(/[\u001b\u202e]/);
  });
});

describe('verdictLine', () => {
  it('should put verdict, file, title and reason on one line', () => {
    const line = verdictLine('a.json', design, verdict);
    expect(line).toBe(
      'falls short  a.json  Wall supply of a greenhouse irrigation timer; ' +
        'Primary to Output: falls short, basic of reinforced, creepage 4.83 of 5.6 mm',
    );
  });
});
