// Weak spots are the same whichever way round a file names its circuits: what is merged is merged by side, not by a point
// that depends on the way in which a path was walked.

import { describe, expect, it } from 'vitest';
import type { Verdict } from '#judge/verdict/verdict.ts';
import type { Changes } from '#test/designs.ts';
import { MARGINS, PLIES, verdictWith } from '#test/judge/margin-build.ts';

const CIRCUITS = [
  { id: 'pri', role: 'mains' },
  { id: 'out', role: 'touchable' },
];
const lead = { at: 'right', exit: 'right', way: 'riser', sleeve: null };
const weak: Changes = {
  'windings[1].leads': { start: lead, finish: { ...lead, at: 'left', exit: 'left' } },
  'layers[1]': { ...PLIES, plies: 1 },
  'layers[0].margins': { left: { width: '1 mm' }, right: { width: '1.5 mm', filled: true } },
  'layers[2].margins': MARGINS,
};

const told = ({ weakSpots }: Verdict) =>
  weakSpots.map(({ kind, section, at, layers, metric, length }) => ({
    kind,
    section,
    at,
    layers,
    metric,
    length,
  }));

describe('weak spots', () => {
  it('should not depend on the order of the circuits', () => {
    const spots = told(verdictWith({ ...weak, circuits: CIRCUITS }));
    expect(spots.length).toBeGreaterThan(2);
    expect(told(verdictWith({ ...weak, circuits: CIRCUITS.toReversed() }))).toEqual(spots);
  });

  it('should stand halfway along a path that turns at no flange', () => {
    const [spot] = told(verdictWith({ 'layers[1]': { ...PLIES, plies: 1 } }));
    // straight through the ply of 0.06 mm on the primary's row of 0.23 mm
    expect(spot).toMatchObject({ kind: 'few-plies', at: [expect.any(Number), 0.26] });
  });
});
