// How well a derivation is confirmed: by the weakest of all that it cites, in one order of words.

import { describe, expect, it } from 'vitest';
import { because, type Cite, type Confirmed, weakestConfirmed } from '#standards/because.ts';

const cite = (confirmed: Confirmed): Cite => ({
  standard: 'IEC 62368-1',
  edition: '3 (2018)',
  clause: '5.4.2',
  table: null,
  file: 'creepage',
  cell: confirmed,
  confirmed,
  sources: [],
});

/** Weakest first. */
const ORDER: readonly Confirmed[] = [
  'memory',
  'secondary',
  'house-rule',
  'derived',
  'stated',
  'user',
  'published',
  'two-sources',
];

describe('weakestConfirmed', () => {
  it.each(ORDER.slice(1).map((better, i) => [ORDER[i]!, better] as const))(
    'should hold %s for weaker than %s, whichever is cited first and however deep',
    (weaker, better) => {
      const deep = because('test', {}, [], [because('test', {}, [cite(weaker)])]);
      expect(weakestConfirmed(because('test', {}, [cite(better)], [deep]))).toBe(weaker);
      const other = because('test', {}, [], [because('test', {}, [cite(better)])]);
      expect(weakestConfirmed(because('test', {}, [cite(weaker)], [other]))).toBe(weaker);
    },
  );

  it('should be stated where nothing is cited', () => {
    expect(weakestConfirmed(because('test', {}))).toBe('stated');
  });
});
