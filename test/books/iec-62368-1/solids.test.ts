import { describe, expect, it } from 'vitest';

import { weakestConfirmed } from '#standards/because.ts';
import { tablesOf } from '#books/iec-62368-1/tables.ts';
import { AS_FILED } from '#standards/tables/reader.ts';
import type { Book } from '#books/questions/book.ts';
import { ruleBook } from '#books/shelf.ts';
import type { Role } from '#units/terms.ts';
import { inMm } from '#units/quantity.ts';

const { rules, solids } = tablesOf(AS_FILED);

const book = { ...(ruleBook('iec-62368-1') as Book), ...solids };
const ROLES: readonly Role[] = ['mains', 'touchable', 'earth', 'isolated'];

describe('solid insulation', () => {
  it('should ask 0.4 mm of one layer, seen twice', () => {
    expect(inMm(book.leastThickness().value)).toBe(0.4);
    expect(weakestConfirmed(book.leastThickness().because)).toBe('two-sources');
  });

  it('should ask two plies alone or any two of three, the latter from memory for reinforced', () => {
    expect(book.plyRule('reinforced').value).toEqual({ alone: 2, anyTwo: 3 });
    expect(weakestConfirmed(book.plyRule('reinforced').because)).toBe('memory');
    expect(weakestConfirmed(book.plyRule('supplementary').because)).toBe('published');
    expect(book.bondedPlies.value).toEqual({ two: 2, threeOrMore: 1.5, mandrelLeast: 5000 });
  });

  it('should keep the house rule apart from the standard', () => {
    expect(book.filmShare.value).toBe(0.6);
    expect(book.filmShare.because.cites[0]?.confirmed).toBe('house-rule');
    expect(book.proofFactor.value).toBe(1.6);
  });

  it('should grade certified wires by their layers', () => {
    expect([1, 2, 3].map((n) => book.wireLayers(n as 1 | 2 | 3).value)).toEqual([
      'basic',
      'basic and supplementary',
      'reinforced',
    ]);
  });

  it('should grade capacitors by class, an unclassed one as nothing', () => {
    const grades = (['Y1', 'Y2', 'Y4', 'X1', 'X2', 'none', 'unknown'] as const).map(
      (safetyClass) => book.capacitorGrade(safetyClass).value,
    );
    expect(grades).toEqual(['reinforced', 'basic', 'basic', 'functional', 'functional', 'none', 'none']);
  });
});

describe('needed grade', () => {
  it('should hold in either order of the roles', () => {
    for (const a of ROLES)
      for (const b of ROLES) expect(book.neededGrade(a, b).value).toBe(book.neededGrade(b, a).value);
  });

  it('should ask four pairs and nothing of the others', () => {
    expect(book.neededGrade('touchable', 'mains').value).toBe('reinforced');
    expect(book.neededGrade('mains', 'earth').value).toBe('basic');
    expect(book.neededGrade('mains', 'isolated').value).toBe('basic');
    expect(book.neededGrade('touchable', 'isolated').value).toBe('supplementary');
    const asked = ROLES.flatMap((a) => ROLES.map((b) => book.neededGrade(a, b).value)).filter(Boolean);
    expect(asked.length).toBe(8);
  });
});

describe('limits on people and heat', () => {
  it('should give touch currents in amperes', () => {
    expect(book.touchCurrentLimits.normal.value).toEqual({ rms: 0.0005, peak: 0.000707, dc: 0.002 });
    expect(book.touchCurrentLimits.singleFault.value).toEqual({ rms: 0.005, peak: 0.00707, dc: 0.025 });
    expect(book.touchCurrentLimits.protectiveConductor.value).toBe(0.005);
    expect(weakestConfirmed(book.touchCurrentLimits.normal.because)).toBe('memory');
  });

  it('should know temperatures of listed classes only', () => {
    expect(book.insulationTemperature(130)?.value).toBe(120);
    expect(book.windingTemperatureOverload(130, 'firstHour')?.value).toBe(225);
    expect(book.insulationTemperature(131)).toBeNull();
    expect(book.thermocoupleAllowance.value).toBe(10);
  });

  it('should cite rules in words by id and throw on one that is not there', () => {
    expect(rules('floating-conductor').because().cites[0]).toMatchObject({
      clause: 'annex O, 5.4.2, 5.4.3',
      confirmed: 'two-sources',
    });
    expect(() => rules('no-rule')).toThrow('no-rule');
  });
});
