// A second book judged with, to prove the questions: no file of the judge knows which book it asks. Figures by the tables'
// own rows and the readings of reference/books.md: a line between the rows of table 16, reinforced by the next step of the
// impulse and then raised, 16.3 by formula above 250 V.

import { describe, expect, it } from 'vitest';
import { ruleBook } from '#books/shelf.ts';
import type { Answered, Both } from '#books/questions/required.ts';
import { judgePlain } from '#judge/judging/judge.ts';
import { requiredFor } from '#judge/grade/required.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import type { PairVerdict } from '#judge/verdict/pair.ts';
import { citesOf } from '#standards/because.ts';
import { workingVoltages } from '#stress/voltages/working-voltage.ts';
import { workedSheet } from '#words/derivation/derivation-table.ts';
import type { Changes } from '#test/designs.ts';
import { designWith } from '#test/judge/margin-build.ts';

const iec603351 = ruleBook('iec-60335-1')!;

function asked(changes: Changes = {}) {
  const design = designWith(changes);
  const [a, b] = design.circuits;
  const entering = iec603351.transients(design.supply, a!, b!);
  return requiredFor(iec603351, design, workingVoltages(design)[0]!, entering, 'reinforced', 'patient');
}

const both = (pair: Both<Answered<number>>, unit = 1e6) =>
  [pair.basic, pair.reinforced].map((one) => ('kind' in one ? one.kind : one.value / unit));

const voltage = (rms: number, peak: number, frequency = '65 kHz'): Changes => ({
  workingVoltages: [{ between: ['pri', 'out'], rms, peak, frequency }],
});

describe('what IEC 60335-1 asks', () => {
  it.each([
    ['at 240 V, category 2: 1.5, and 3.0 by the next step', voltage(250, 339), [1.5, 3]],
    [
      'at 120 V: 0.5, and 1.5 by the step to 2 500 V',
      { 'supply.voltage': '120 V', ...voltage(120, 169) },
      [0.5, 1.5],
    ],
    // 500 - 339.41 = 160.59: 1.5 + 160.59 / 1 500 x 1.5 = 1.6606; 3 + 160.59 / 2 000 x 2.5 = 3.2007
    ['raised by what the peak has above the rated one', voltage(250, 500), [1.67, 3.21]],
    ['at 5 000 m: x 1.48', { 'surroundings.altitude': '5000 m', ...voltage(250, 339) }, [2.22, 4.44]],
    [
      'in degree 3 of pollution',
      { 'surroundings.pollutionDegree': 3, 'supply.voltage': '120 V', ...voltage(120, 169) },
      [0.8, 1.5],
    ],
  ] as const)('should be clearance %s', (_, changes, figures) => {
    expect(both(asked(changes).clearance)).toEqual(figures);
  });

  it.each([
    ['the row of 250 V, and twice it', voltage(250, 339), [2.5, 5]],
    ['the range up to 400 V from one volt more on', voltage(251, 339), [4, 8]],
    ['the row of 125 V', { 'supply.voltage': '120 V', ...voltage(125, 169) }, [1.5, 3]],
  ] as const)('should be creepage by %s', (_, changes, figures) => {
    expect(both(asked(changes).creepage('IIIb'))).toEqual(figures);
  });

  it('should never ask less of a surface than of the air', () => {
    // group I, 250 V: 1.3, twice 2.6; the air 1.5 and 3.0
    expect(both(asked(voltage(250, 339)).creepage('I'))).toEqual([1.5, 3]);
  });

  it.each([
    ['1 250 and 3 000 V rms up to 250 V', voltage(240, 339), [1250, 3000]],
    [
      '2 500 V rms for reinforced up to 150 V',
      { 'supply.voltage': '120 V', ...voltage(120, 169) },
      [1250, 2500],
    ],
    ['1.2 x 320 + 950 and 2.4 x 320 + 2 400 V rms above', voltage(320, 500), [1334, 3168]],
  ] as const)('should test at %s', (_, changes, figures) => {
    expect(both(asked(changes).test, Math.SQRT2).map(Number).map(Math.round)).toEqual(figures);
  });
});

function judged(changes: Changes): PairVerdict {
  const { verdict } = judgePlain(designWith(changes), new PathCache(), iec603351);
  expect(verdict.rules.id).toBe('iec-60335-1');
  const [pair] = verdict.pairs;
  if (pair === undefined) throw new Error('no pair');
  return pair;
}

/** With a former's wall that is strong by this book, and the core out of reach. */
const plies = (count: number, more: object = {}): Changes => ({
  'former.wall': '2.5 mm',
  'former.flange': '2.5 mm',
  'core.outerGap': '9 mm',
  ...voltage(250, 339),
  'layers[1]': { kind: 'tape', plyThickness: '0.06 mm', plyWithstand: '5 kV', plies: count, ...more },
});

describe('a build judged by IEC 60335-1', () => {
  it('should meet with three layers that each stand the test', () => {
    expect(judged(plies(3))).toMatchObject({ verdict: 'meets', achieved: 'reinforced' });
  });

  it('should fall short with the two that are enough for the default book, and with layers bonded to one', () => {
    expect(judged(plies(2)).verdict).toBe('falls-short');
    expect(judged(plies(3, { bonded: true })).achieved).toBe('basic');
  });

  it('should fall short by its own creepage: 4.0 a range higher, where 6 mm of margins is under 8', () => {
    const pair = judged({ ...plies(3), ...voltage(260, 367) });
    expect(pair).toMatchObject({ verdict: 'falls-short', limiting: { metric: 'creepage', required: 8 } });
  });

  it('should cite its own clauses, and print its own rules', () => {
    const pair = judged(plies(3));
    const cites = citesOf(pair.because).filter(({ standard }) => standard === 'IEC 60335-1');
    expect(cites.map(({ clause }) => clause)).toContain('29.3.2');
    expect(workedSheet(pair.required!.clearance.because).map(({ label }) => label)).toContain('next step');
  });
});
