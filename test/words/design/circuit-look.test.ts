import { describe, expect, it } from 'vitest';
import type { Circuit } from '#model/design.ts';
import type { Role } from '#units/terms.ts';
import { circuitLooks } from '#words/design/circuit-look.ts';

const circuits = (...roles: Role[]): Circuit[] =>
  roles.map((role, k) => ({ id: `c${k}`, name: '', role, means: null }));

describe('circuitLooks', () => {
  it('should letter the usual circuits as the trade expects', () => {
    const looks = circuitLooks(circuits('mains', 'mains', 'touchable', 'touchable', 'earth', 'isolated'));
    expect(looks.map(({ letter }) => letter)).toEqual(['P', 'A', 'S', 'T', 'E', 'N']);
    expect(looks.map(({ mark }) => mark)).toEqual([
      'slash',
      'dot',
      'two-bars',
      'cross',
      'falling-bars',
      'ring',
    ]);
  });

  it('should keep a role its own first letter whatever comes before', () => {
    const looks = circuitLooks(circuits(...Array<Role>(9).fill('mains'), 'touchable', 'earth', 'isolated'));
    expect(looks.slice(-3).map(({ letter }) => letter)).toEqual(['S', 'E', 'N']);
  });

  it.each(['mains', 'touchable', 'earth', 'isolated'] as const)(
    'should never letter two %s circuits alike',
    (role) => {
      const letters = circuitLooks(circuits(...Array<Role>(32).fill(role))).map(({ letter }) => letter);
      expect(new Set(letters).size).toBe(32);
    },
  );

  it('should name a circuit without a name by its id', () => {
    expect(circuitLooks(circuits('mains'))[0]?.name).toBe('c0');
  });
});
