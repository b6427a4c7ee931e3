// No grade without its reason: what a pair that meets rests on is printed with its row and how well it is known, and the
// verdict says the weakest of it.

import { describe, expect, it } from 'vitest';
import { judge } from '#judge/judging/judge.ts';
import { because, citesOf, judgedLater } from '#standards/because.ts';
import { workedSheet } from '#words/derivation/derivation-table.ts';
import type { Changes } from '#test/designs.ts';
import { designWith } from '#test/judge/margin-build.ts';

function told(changes: Changes) {
  const { verdict } = judge(designWith(changes));
  const [pair] = verdict.pairs;
  if (pair === undefined) throw new Error('no pair');
  return { pair, restsOn: verdict.restsOn, rows: workedSheet(pair.because) };
}

describe('reasons of a pair that meets', () => {
  // three plies of the table's film: 3 600 V rms x 0.6 = 3 054 V peak, any two of them 6 108 of 4 000
  const build = told({ 'layers[1]': { kind: 'tape', material: 'polyester-tape-25', plies: 3 } });

  it('should hold a build that meets', () => {
    expect(build.pair.verdict).toBe('meets');
  });

  it('should print the row of the film that its plies stand by, and how well it is known', () => {
    const film = build.rows.find(({ text }) => text.includes('25 µm film'));
    expect(film).toMatchObject({ label: 'withstands', value: '3054 V peak' });
    expect(film?.confirmed).not.toBeNull();
  });

  it('should tell the plies against the levels that are asked, and the rule that counts them', () => {
    expect(build.rows.map(({ label }) => label)).toEqual(expect.arrayContaining(['plies', 'rule', 'solid']));
    expect(citesOf(build.pair.because).map(({ clause }) => clause)).toContain('5.4.4.6');
  });

  it('should be among what the verdict rests on: no better than its weakest figure', () => {
    const confirmed = citesOf(build.pair.because).map((cite) => cite.confirmed);
    expect(confirmed).toContain('memory');
    expect(build.restsOn).toBe('memory');
  });
});

describe('judgedLater', () => {
  it('should work its derivation out when it is first asked for, and once', () => {
    let times = 0;
    const found = judgedLater(1, () => {
      times++;
      return because('stress', {});
    });
    expect(times).toBe(0);
    expect(found.because).toBe(found.because);
    expect(times).toBe(1);
  });
});
