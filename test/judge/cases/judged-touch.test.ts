// The touch current by the field: the capacitances that it found take the place of the estimate, with all that they may be
// off counted against the build. Made-up capacitances, so that each side of the limit is met.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import { bookOf } from '#books/book-of.ts';
import { judgedTouch, type FieldWindings } from '#judge/cases/judged-touch.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { judgePlain } from '#judge/judging/judge.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import type { Design } from '#model/design.ts';
import { readDesign } from '#model/read/read-design.ts';
import { because } from '#standards/because.ts';
import { farads } from '#units/quantity.ts';

type Json = Record<string, unknown>;

const read = (json: Json): Design => {
  const found = readDesign(json, knownIds);
  if (found.kind === 'bad') throw new Error(JSON.stringify(found.faults));
  return found.design;
};
const file = JSON.parse(readFileSync('static/demos/garden-robot-dock.json', 'utf8')) as Json;
/** No part across the barrier and no converter: only the windings pass a current. */
const bare = read({ ...file, bridges: [], converter: undefined });

const windings = (most: number, least: number | null): FieldWindings => {
  const list = (nano: number) => [
    {
      between: ['pri', 'out'] as const,
      layers: null,
      farads: farads(nano * 1e-9),
      from: 'field' as const,
      because: because('field-capacitance', {
        farads: nano * 1e-9,
        perMetre: null,
        meanTurn: null,
        error: 0,
      }),
    },
  ];
  return { most: list(most), least: least === null ? null : list(least) };
};
const judged = (field: FieldWindings | null, isKnown = true) =>
  judgedTouch(bare, bookOf(bare), field, isKnown)!.touch;

describe('the touch current by the field', () => {
  it('should say where the capacitance of the windings is from', () => {
    expect(judged(null).windings).toBe('estimate');
    expect(judged(windings(0.1, 0.09)).windings).toBe('field');
  });

  it('should grow with what was found', () => {
    expect(judged(windings(2, 1.9)).rms).toBeGreaterThan(1.9 * judged(windings(1, 0.9)).rms);
  });

  // 264 V at 50 Hz (and what it may be more) through 20 nF passes over 1.6 mA, more than any limit for what may be touched
  it('should fall short only where the least that it may be is too much, and all is known', () => {
    expect(judged(windings(20, 19)).verdict).toBe('falls-short');
    expect(judged(windings(20, 0.1)).verdict).toBe('not-shown');
    expect(judged(windings(20, null)).verdict).toBe('not-shown');
    expect(judged(windings(20, 19), false).verdict).toBe('not-shown');
    expect(judged(windings(0.1, 0.09)).verdict).toBe('meets');
  });

  it('should never be better than the most that it may be allows', () => {
    for (const most of [0.01, 0.1, 1, 2, 3, 5, 8, 20]) {
      const { verdict, rms, limit } = judged(windings(most, 0.001));
      expect(verdict, `${most} nF`).toBe(rms <= limit ? 'meets' : 'not-shown');
    }
  });

  it('should enter the verdict of the whole, its spots and its words', () => {
    const plain = judgePlain(bare, new PathCache());
    const found = judgePlain(bare, new PathCache(), bookOf(bare), windings(20, 0.1));
    const touched = ({ verdict }: typeof plain) =>
      verdict.weakSpots.filter(({ kind }) => kind === 'touch-current');
    expect(touched(plain)).toEqual([]);
    expect(touched(found)).toMatchObject([{ verdict: 'not-shown', cause: { windings: 'field' } }]);
    expect(found.verdict.verdict).not.toBe('meets');
    expect(found.verdict.pairs).toEqual(plain.verdict.pairs);
  });
});
