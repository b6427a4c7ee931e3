import { describe, expect, it } from 'vitest';

import type { Circuit } from '#model/design.ts';
import type { Supply } from '#model/design/supply.ts';
import type { Role } from '#units/terms.ts';
import { known, leftOut } from '#model/quantity/reading.ts';
import { isOutOfRange } from '#standards/tables/out-of-range.ts';
import { ruleBook } from '#books/shelf.ts';
import { hertz, voltsRms } from '#units/quantity.ts';

const book = ruleBook('iec-62368-1');
if (book === null) throw new Error('no rule book');

const circuit = (role: Role): Circuit => ({ id: role, name: role, role, means: null });
const supply = (kind: 'ac' | 'dc', voltage: number, overvoltageCategory: 1 | 2 | 3 | 4 = 2): Supply => ({
  kind,
  voltage: known(voltsRms(voltage)),
  lowest: leftOut,
  transient: null,
  tolerance: 0.1,
  frequency: known(hertz(50)),
  overvoltageCategory,
  categoryStated: true,
  market: null,
});

function withstand(from: Supply, a: Role, b: Role): number {
  const found = book!.transients(from, circuit(a), circuit(b)).withstand;
  if (isOutOfRange(found)) throw new Error(found.says);
  return found.value;
}

describe('transients', () => {
  it('should bring 2500 V at 240 V, category 2 (three test reports, IEC 60950-1 and IEC 62368-1)', () => {
    expect(withstand(supply('ac', 240), 'mains', 'touchable')).toBe(2500);
  });

  it('should rise with the category and fall with the supply', () => {
    expect(withstand(supply('ac', 240, 3), 'mains', 'earth')).toBe(4000);
    expect(withstand(supply('ac', 120), 'mains', 'earth')).toBe(1500);
  });

  it('should ask it of both halves of a double barrier and of nothing behind the barrier', () => {
    expect(withstand(supply('ac', 240), 'mains', 'isolated')).toBe(2500);
    expect(withstand(supply('ac', 240), 'isolated', 'touchable')).toBe(2500);
    expect(withstand(supply('ac', 240), 'touchable', 'touchable')).toBe(0);
    expect(withstand(supply('ac', 240), 'isolated', 'earth')).toBe(0);
  });

  it('should count a direct supply as the mains of the same peak: 400 V as 283 V', () => {
    expect(withstand(supply('dc', 400), 'mains', 'touchable')).toBe(2500);
    expect(withstand(supply('dc', 450), 'mains', 'touchable')).toBe(4000);
  });

  it('should be without an answer above the last row', () => {
    expect(
      isOutOfRange(book!.transients(supply('ac', 1200), circuit('mains'), circuit('earth')).withstand),
    ).toBe(true);
  });
});
