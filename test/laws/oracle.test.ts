// Lay-out and path finder against a second, slow implementation written from the specification alone (test/oracle):
// dividers, third parts, windings side by side and closed joints included. Puncturing a solid at its very edge is allowed
// here and not there, so that with plies punctured our length may be the smaller one.

import { describe, expect, it } from 'vitest';
import { mm } from '#units/quantity.ts';
import { compare, type Compared } from '#test/oracle/compare.ts';
import { closedOnly } from '#test/oracle/closed-only.ts';
import { openOnly } from '#test/oracle/open-only.ts';
import { sideBySide } from '#test/oracle/side-by-side.ts';

const SEED = Number(process.env['ORACLE_SEED'] ?? 20261125);
/** Through air the oracle takes minutes for some builds, of the other seed too; these are done in seconds. */
const AIR_SEED = Number(process.env['ORACLE_SEED'] ?? 1);
/** How many times as many builds; more than one where there is time. */
const TIMES = Number(process.env['LAW_RUNS'] ?? 1);

describe('path finder against the oracle', () => {
  it('should find the same surface paths in random builds', () => {
    const found = compare({
      ...{ metric: 'creepage', builds: 24 * TIMES, seed: SEED, tolerance: mm(0.001) },
      change: openOnly,
    });
    expect(missed(found), `seed ${SEED}`).toEqual([]);
    expect(found.compared).toBeGreaterThan(1000);
    expect(found.differences.length / found.compared).toBeLessThan(0.005);
  });

  it('should find the same surface paths past windings side by side', () => {
    const found = compare({
      ...{ metric: 'creepage', builds: 30 * TIMES, seed: SEED, tolerance: mm(0.001) },
      change: (file) => openOnly(sideBySide(file)),
    });
    expect(missed(found), `seed ${SEED}`).toEqual([]);
    expect(found.compared).toBeGreaterThan(300);
    expect(found.differences.length / found.compared).toBeLessThan(0.005);
  });

  it('should find the same ways along and through closed joints', () => {
    const found = compare({
      ...{ metric: 'creepage', builds: 24 * TIMES, seed: SEED, tolerance: mm(0.001) },
      change: closedOnly,
    });
    expect(missed(found), `seed ${SEED}`).toEqual([]);
    expect(found.compared).toBeGreaterThan(300);
    expect(found.differences.length / found.compared).toBeLessThan(0.005);
  });

  it('should find the ways that were once missed: behind turned edges, straight through compound', () => {
    const found = compare({
      ...{ metric: 'creepage', builds: 60, seed: 7, only: [40, 51], tolerance: mm(0.001) },
      change: closedOnly,
    });
    expect(missed(found)).toEqual([]);
    expect(found.compared).toBeGreaterThan(800);
  });

  it('should find the same ways through air in random builds', () => {
    const found = compare({
      ...{ metric: 'clearance', builds: 3 * TIMES, seed: AIR_SEED, tolerance: mm(0.02) },
      ...{ spacing: mm(0.15), change: openOnly },
    });
    expect(missed(found), `seed ${AIR_SEED}`).toEqual([]);
    expect(found.compared).toBeGreaterThan(40);
    expect(found.differences.length / found.compared).toBeLessThan(0.03);
  });
});

/** Where ours is longer: a path was missed. */
const missed = ({ differences }: Compared): readonly string[] =>
  differences
    .filter(({ ours, theirs }) => ours > theirs)
    .map(({ section, piece, plies }) => `${section}: ${piece.between.join(' to ')}, ${plies} plies`);
