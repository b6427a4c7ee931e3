// Laws of the spread: the worst case never rises by a wider interval, no certified share lies above a count of whole
// judgements, rare failures are found at the rate that arithmetic gives.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import { fileJudge } from '#judge/judging/judge-files.ts';
import { editDesign } from '#model/edit/edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { coordinatesOf } from '#spread/coordinates.ts';
import { EXACT, PLACEMENT } from '#spread/placement.ts';
import { rareOf } from '#spread/rare.ts';
import { spread } from '#spread/spread.ts';
import { finished } from '#field/solve/finished.ts';
import { worstPiece } from '#spread/worst-piece.ts';

const lesson = JSON.parse(
  readFileSync(new URL('../lesson-margin.json', import.meta.url), 'utf8'),
) as DesignFile;
const judge = fileJudge();
const SLEEVE = { material: 'ptfe', wall: '0.5 mm', into: '3 mm', withstand: '5 kV' };
const LEAD = { at: 'left', exit: 'left', way: 'slot', sleeve: SLEEVE };
const sleeved = editDesign(lesson, 'windings[0].leads', { start: LEAD, finish: LEAD });

describe('laws of the spread', () => {
  it('should never have a better worst case with a wider interval', () => {
    const worstAt = (margin: number, tape: number): number => {
      const placement = { ...EXACT, margin, tape };
      const worst = judge.measured(worstPiece(lesson, coordinatesOf(lesson, placement)));
      return Math.min(...worst!.pairs.flatMap(({ length }) => (length === null ? [] : [length])));
    };
    const lengths = [0, 0.1, 0.2, 0.4].map((half) => worstAt(half, half));
    // 3 + 3 x 0.06 + 3 as drawn; two margins narrower by 0.1 each take 0.2, and the tape more
    expect(lengths[0]).toBeCloseTo(6.18, 6);
    expect(lengths[1]!).toBeLessThanOrEqual(5.98 + 1e-9);
    for (const [i, length] of lengths.slice(1).entries()) expect(length).toBeLessThanOrEqual(lengths[i]!);
  });

  it.each([
    [
      'margins',
      lesson,
      [0, 1, 2, 3].map((i) => `layers[${i < 2 ? 0 : 2}].margins.${i % 2 ? 'left' : 'right'}.width`),
    ],
    [
      'a sleeve and the margin it runs through',
      sleeved,
      ['windings[0].leads.start.sleeve.into', 'layers[0].margins.left.width'],
    ],
  ] as const)(
    'should tell the exact worst beside the share, never raised by a wider interval of the file: %s',
    (_, doc, fields) => {
      const found = [0, 0.1, 0.3, 0.6].map((half) => {
        const file = fields.reduce(
          (edited, field) => editDesign(edited, field, { value: '3 mm', plusMinus: `${half} mm` }),
          doc,
        );
        return finished(spread(file, judge, { seed: 1, draws: 20, measured: 20, placement: EXACT }));
      });
      const worst = found.map(({ worstCase: { judged } }) =>
        Math.min(...judged!.pairs.map(({ length }) => length ?? Infinity)),
      );
      for (const [i, length] of worst.slice(1).entries())
        expect(length).toBeLessThanOrEqual(worst[i]! + 1e-9);
      expect(worst.at(-1)!).toBeLessThan(worst[0]!);
      for (const [i, { distances, worstCase, share }] of found.entries()) {
        // no drawn piece lies below it, and none fails where it holds
        for (const { least } of distances) expect(least).toBeGreaterThanOrEqual(worst[i]! - 1e-6);
        if (worstCase.verdict === 'meets') expect(share).toBe(1);
      }
    },
  );

  it('should count margins of an unfilled side as an interval of the file', () => {
    const open = editDesign(lesson, 'layers[2].margins.left.filled', false);
    const worst = worstPiece(open, coordinatesOf(open, { ...EXACT, margin: 0.2 }));
    const layer = worst.layers[2];
    expect(layer?.kind === 'winding' && layer.margins?.left?.width).toEqual({
      value: '3 mm',
      plusMinus: '0.2 mm',
    });
  });

  it('should find rare failures at the rate that arithmetic gives', () => {
    const coordinates = coordinatesOf(lesson, { ...EXACT, margin: 0.2 });
    const [first, second] = coordinates;
    // both of two even spreads of 0.4 within 0.01 of their worse ends: (0.01 / 0.4)^2
    const holdsAt = (values: readonly number[]): boolean =>
      values[0]! > first!.worse + 0.01 || values[1]! > second!.worse + 0.01;
    const deciding = [first!.field, second!.field];
    const input = { coordinates, deciding, worstHolds: false, count: 10_000, meets: 10_000, holdsAt };
    const shares = Array.from({ length: 60 }, (_, seed) => rareOf({ ...input, seed })!.share);
    const mean = shares.reduce((sum, share) => sum + share, 0) / shares.length;
    expect(mean).toBeGreaterThan(0.000625 / 2);
    expect(mean).toBeLessThan(0.000625 * 2);
  });

  it('should say that none fails where the worst piece holds, and leave what counting finds to counting', () => {
    const coordinates = coordinatesOf(lesson, PLACEMENT);
    const input = { coordinates, deciding: [], seed: 1, count: 1000, holdsAt: () => true };
    expect(rareOf({ ...input, worstHolds: true, meets: 1000 })).toMatchObject({ share: 0, atMost: 0 });
    expect(rareOf({ ...input, worstHolds: false, meets: 990 })).toBeNull();
  });
});
