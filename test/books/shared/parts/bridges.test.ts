import { describe, expect, it } from 'vitest';

import type { Bridge } from '#model/design/outside.ts';
import { known, leftOut } from '#model/quantity/reading.ts';
import { ruleBook } from '#books/shelf.ts';
import type { BridgeQuestion } from '#books/shared/parts/bridge-grade.ts';
import { mm, voltsRms } from '#units/quantity.ts';

const book = ruleBook('iec-62368-1')!;

const part = (over: Partial<Bridge>): Bridge => ({
  id: 'X',
  kind: 'capacitor',
  between: ['pri', 'out'],
  capacitance: null,
  resistance: null,
  safetyClass: leftOut,
  rated: null,
  inSeries: 1,
  clearance: null,
  creepage: null,
  throughInsulation: null,
  approval: leftOut,
  working: null,
  ...over,
});

const asked = (over: Partial<BridgeQuestion> = {}): BridgeQuestion => ({
  barrier: true,
  rms: voltsRms(250),
  mains: voltsRms(240),
  category: 2,
  required: {
    clearance: { basic: mm(1.5), reinforced: mm(3) },
    creepage: { basic: mm(2.5), reinforced: mm(5) },
  },
  isBest: () => false,
  ...over,
});

const grade = (over: Partial<Bridge>, more: Partial<BridgeQuestion> = {}) => {
  const { grade, unsafe } = book.part(part(over), asked(more));
  return unsafe === null ? grade : `${grade}: ${unsafe}`;
};

const opto = (clearance: number, creepage: number, over: Partial<Bridge> = {}) =>
  part({ kind: 'optocoupler', clearance: known(mm(clearance)), creepage: known(mm(creepage)), ...over });

describe('gradeOfBridge', () => {
  it('should take a capacitor by its class', () => {
    expect(grade({ safetyClass: 'Y1' })).toBe('reinforced');
    expect(grade({ safetyClass: 'Y2' })).toBe('supplementary');
    expect(grade({ safetyClass: 'Y2', inSeries: 2 })).toBe('double');
    expect(grade({ safetyClass: 'Y4' }, { rms: voltsRms(140), mains: voltsRms(120) })).toBe('supplementary');
  });

  it('should find X-class and unclassed capacitors across a barrier unsafe, alone and in series', () => {
    for (const safetyClass of ['X1', 'X2', 'none'] as const) {
      expect(grade({ safetyClass })).toBe('none: class');
      expect(grade({ safetyClass, inSeries: 2 })).toBe('none: class');
      expect(grade({ safetyClass }, { barrier: false })).not.toContain(':');
    }
  });

  it('should count an unknown class as no safety part at worst and as Y1 at best', () => {
    expect(grade({})).toBe('none: class');
    expect(grade({}, { isBest: () => true })).toBe('reinforced');
  });

  it('should find a rating below the working voltage unsafe, and one just at it not', () => {
    expect(grade({ safetyClass: 'Y1', rated: known(voltsRms(239.9)) })).toBe('none: rating');
    expect(grade({ safetyClass: 'Y1', rated: known(voltsRms(239.9)) }, { isBest: () => true })).toBe(
      'none: rating',
    );
    expect(grade({ safetyClass: 'Y1', rated: known(voltsRms(250)) })).toBe('reinforced');
    expect(book.part(part({ safetyClass: 'Y1' }), asked()).ratingAssumed).toBe(true);
  });

  it('should ask between the mains and the working voltage what stands at the part', () => {
    const rated = known(voltsRms(245));
    const at = (rms: number) => ({
      rms: known(voltsRms(rms)),
      peak: null,
      frequency: null,
      basis: 'measured' as const,
    });
    expect(grade({ safetyClass: 'Y1', rated })).toBe('none: rating');
    expect(grade({ safetyClass: 'Y1', rated }, { isBest: () => true })).toBe('reinforced');
    expect(grade({ safetyClass: 'Y1', rated, working: at(244) })).toBe('reinforced');
    expect(grade({ safetyClass: 'Y1', rated, working: at(246) }, { isBest: () => true })).toBe(
      'none: rating',
    );
  });

  it('should hold a capacitor to the distances that the file gives of it', () => {
    const y1 = (clearance: number, creepage: number | null = null) =>
      book.part(
        part({
          safetyClass: 'Y1',
          clearance: known(mm(clearance)),
          creepage: creepage === null ? null : known(mm(creepage)),
        }),
        asked(),
      );
    expect([y1(3, 5).grade, y1(3, 5).short]).toEqual(['reinforced', null]);
    expect(y1(3).grade).toBe('reinforced');
    expect(y1(2.9).grade).toBe('supplementary');
    expect(y1(0.5, 4)).toMatchObject({
      grade: 'functional',
      short: { metric: 'clearance', length: mm(0.5), required: mm(3) },
    });
  });

  it('should not take a class to be rated for more than any of its parts: Y4 ends at 150 V', () => {
    expect(grade({ safetyClass: 'Y4' })).toBe('none: rating');
    const mains = voltsRms(120);
    expect(grade({ safetyClass: 'Y4' }, { rms: voltsRms(150), mains })).toBe('supplementary');
    expect(grade({ safetyClass: 'Y4' }, { rms: voltsRms(150.1), mains })).toBe('none: rating');
  });

  it('should let one Y1 carry reinforced only up to 300 V mains in category 2', () => {
    expect(grade({ safetyClass: 'Y1' }, { mains: voltsRms(300) })).toBe('reinforced');
    expect(grade({ safetyClass: 'Y1' }, { mains: voltsRms(301) })).toBe('supplementary');
    expect(grade({ safetyClass: 'Y1', inSeries: 2 }, { mains: voltsRms(301) })).toBe('double');
    expect(grade({ safetyClass: 'Y1' }, { category: 3 })).toBe('supplementary');
    expect(grade({ safetyClass: 'Y2' }, { category: 3 })).toBe('functional');
  });

  it('should give an optocoupler its approval as far as the distances round it reach', () => {
    const of = (bridge: Bridge, more: Partial<BridgeQuestion> = {}) => book.part(bridge, asked(more)).grade;
    expect(of(opto(7, 7, { approval: 'reinforced' }))).toBe('reinforced');
    expect(of(opto(7, 4.9, { approval: 'reinforced' }))).toBe('basic');
    expect(of(opto(1.4, 7, { approval: 'reinforced' }))).toBe('functional');
    expect(of(opto(7, 7, { approval: 'basic' }))).toBe('basic');
    const inside = (thick: number) => ({ throughInsulation: known(mm(thick)) });
    expect(of(opto(7, 7, { approval: 'none', ...inside(0.4) }))).toBe('basic');
    expect(of(opto(7, 7, inside(0.4)))).toBe('basic');
    // without approval the least thickness inside is asked as well; with it that is the certificate's matter
    expect(of(opto(7, 7, { approval: 'none', ...inside(0.399) }))).toBe('functional');
    expect(of(opto(7, 7, { approval: 'none' }))).toBe('functional');
    expect(of(opto(7, 7, { approval: 'reinforced', ...inside(0.2) }))).toBe('reinforced');
    expect(of(opto(7, 7), { isBest: () => true })).toBe('reinforced');
    expect(of(part({ kind: 'optocoupler', approval: 'reinforced' }))).toBe('functional');
    expect(of(part({ kind: 'optocoupler', approval: 'reinforced' }), { isBest: () => true })).toBe(
      'reinforced',
    );
  });

  it('should find one resistor without approval unsafe, a chain basic, an approved chain its grade', () => {
    const round = { kind: 'resistor', clearance: known(mm(6)), creepage: known(mm(6)) } as const;
    expect(grade({ ...round })).toBe('none: single-part');
    expect(grade({ ...round, inSeries: 2 })).toBe('basic');
    expect(grade({ ...round, inSeries: 2, rated: known(voltsRms(200)) })).toBe('none: rating');
    expect(grade({ ...round, inSeries: 2, approval: 'reinforced' })).toBe('reinforced');
  });

  it('should never get worse by a better class', () => {
    const order = ['none', 'functional', 'basic', 'supplementary', 'double', 'reinforced'];
    const rank = (over: Partial<Bridge>) => order.indexOf(book.part(part(over), asked()).grade);
    for (const inSeries of [1, 2, 3]) {
      const ranks = (['none', 'X2', 'X1', 'Y4', 'Y2', 'Y1'] as const).map((safetyClass) =>
        rank({ safetyClass, inSeries }),
      );
      expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
    }
  });
});
