// What metal joins counts as one conductor, through however many parts; two circuits that it joins have nothing between.

import { describe, expect, it } from 'vitest';
import { metalTies } from '#judge/conductors/metal-ties.ts';
import type { Changes } from '#test/designs.ts';
import { designWith, pairOf, verdictWith } from '#test/judge/margin-build.ts';

const parts = (...list: readonly object[]): Changes => ({ parts: list });
const tied = (changes: Changes, conductor: string, coreTo: string | null = null) =>
  metalTies(designWith(changes), coreTo).nameOf(conductor);

describe('metal ties', () => {
  it('should leave what floats alone under its own name', () => {
    expect(tied(parts({ id: 'band', touches: [] }), 'band')).toBe('band');
    expect(tied({}, 'core')).toBe('core');
  });

  it('should call what floats together by the core', () => {
    const both = parts({ id: 'band', touches: ['core'] }, { id: 'clip', touches: ['band'] });
    expect([tied(both, 'band'), tied(both, 'clip'), tied(both, 'core')]).toEqual(['core', 'core', 'core']);
    expect(tied(both, 'clip', 'pri')).toBe('pri');
  });

  it('should follow a bond through parts that touch', () => {
    const chain = parts({ id: 'a', bond: 'out', touches: ['b'] }, { id: 'b', touches: ['core'] });
    expect([tied(chain, 'b'), tied(chain, 'core')]).toEqual(['out', 'out']);
  });

  it('should keep circuits apart by name, and name those that are joined', () => {
    const bridge = designWith(parts({ id: 'band', bond: 'out', touches: ['core'] }));
    const { nameOf, joined } = metalTies(bridge, 'pri');
    expect([nameOf('pri'), nameOf('out')]).toEqual(['pri', 'out']);
    expect(joined).toEqual([['pri', 'out']]);
  });
});

describe('judging what metal joins', () => {
  it('should judge a core bound through two parts as one that is bound', () => {
    const bound = pairOf(verdictWith({ ...parts(), 'core.bond': 'out' }));
    const through = pairOf(
      verdictWith(parts({ id: 'a', bond: 'out', touches: ['b'] }, { id: 'b', touches: ['core'] })),
    );
    expect(through.achieved).toBe(bound.achieved);
    expect(through.limiting?.length).toBe(bound.limiting?.length);
  });

  it.each([
    [
      'a bound core and a part bound elsewhere',
      { ...parts({ id: 'b', bond: 'out', touches: ['core'] }), 'core.bond': 'pri' },
    ],
    [
      'two parts that touch',
      parts({ id: 'a', bond: 'pri', touches: ['b'] }, { id: 'b', bond: 'out', touches: [] }),
    ],
  ])('should find nothing between circuits joined by %s', (_, changes) => {
    const verdict = verdictWith(changes);
    expect(pairOf(verdict)).toMatchObject({ achieved: 'none', verdict: 'falls-short' });
    expect(verdict.weakSpots[0]?.kind).toBe('touching');
  });
});
