// Random layers of a design file, on a coarse grid so that equal coordinates and touching corners are frequent.

import * as fc from 'fast-check';

export const steps = (from: number, to: number, step: number): fc.Arbitrary<number> =>
  fc
    .integer({ min: 0, max: Math.round((to - from) / step) })
    .map((n) => Number((from + n * step).toFixed(3)));

export const often = <T>(usual: T, other: fc.Arbitrary<T>): fc.Arbitrary<T> =>
  fc.oneof({ arbitrary: fc.constant(usual), weight: 3 }, { arbitrary: other, weight: 1 });

const margin = (widest: number) =>
  fc.record(
    {
      width: fc.oneof(fc.constant(0), fc.constant(0.5), steps(0, widest, 0.05)),
      filled: fc.boolean(),
      height: fc.constantFrom(0.05, 0.1, 0.3, 0.5),
      moulded: often(false, fc.constant(true)),
    },
    { requiredKeys: ['width', 'filled'] },
  );

const margins = (widest: number) => fc.record({ left: margin(widest), right: margin(widest) });

const inset = fc.record({
  left: fc.oneof(fc.constant(0), steps(0, 0.8, 0.05)),
  right: fc.oneof(fc.constant(0), steps(0, 0.8, 0.05)),
});

/** Winding ids are filled in by number, so that a split winding comes about by itself. */
const winding = (windings: number) =>
  fc.record(
    {
      kind: fc.constant('winding' as const),
      winding: fc.nat({ max: windings - 1 }).map((n) => `W${n}`),
      turns: fc.integer({ min: 1, max: 20 }),
      strands: often(1, fc.constant(2)),
      spread: often(true, fc.constant(false)),
      margins: margins(1),
      extent: fc.record({ from: steps(0, 1, 0.05), to: steps(1.6, 2.5, 0.05) }),
    },
    { requiredKeys: ['kind', 'winding', 'turns', 'margins'] },
  );

export const plyThickness = fc.constantFrom(0.05, 0.05, 0.1, 0.2, 0.4, 0.45);

const tape = fc.record(
  {
    kind: fc.constant('tape' as const),
    material: fc.constant('polyester-tape-25'),
    plyThickness,
    plies: fc.integer({ min: 1, max: 4 }),
    plyWithstand: fc.constant('5 kV'),
    inset,
    margins: margins(0.5),
    bonded: often(false, fc.constant(true)),
    cemented: often(false, fc.constant(true)),
    turnUp: fc.constantFrom(0.3, 1),
  },
  { requiredKeys: ['kind', 'material', 'plyThickness', 'plies'] },
);

const side = fc.constantFrom('left' as const, 'right' as const);

export const sleeve = fc.oneof(
  fc.constant(null),
  fc.record({
    wall: fc.constantFrom(0.05, 0.1, 0.2, 0.4, 0.45),
    into: fc.oneof(fc.constant(0), fc.constant(3), steps(0, 2, 0.05)),
  }),
);

export const lead = fc
  .record(
    {
      at: side,
      over: often(false, fc.constant(true)),
      way: fc.constantFrom('slot', 'riser', 'top'),
      sleeve,
      bareFrom: fc.constant(9),
      crossTape: fc.nat({ max: 2 }),
      apart: fc.constant(3),
    },
    { requiredKeys: ['at', 'over', 'way', 'sleeve', 'bareFrom'] },
  )
  .map(({ over, ...rest }) => ({ ...rest, exit: over === (rest.at === 'left') ? 'right' : 'left' }));

export const link = fc.record({ side, way: fc.constant('riser'), sleeve });

const screen = fc.record(
  {
    kind: fc.constant('screen' as const),
    circuit: fc.constantFrom('pri', 'gnd'),
    thickness: fc.constantFrom(0.05, 0.1),
    overlap: fc.record({ material: fc.constant('polyester-tape-25'), plies: fc.constant(1), plyThickness }),
    inset,
    margins: margins(0.5),
    lead: fc.oneof(fc.constant('not-judged' as const), lead),
  },
  { requiredKeys: ['kind', 'thickness', 'lead'] },
);

export const layer = (windings: number, chambers: number) =>
  fc.tuple(
    fc.oneof(
      { arbitrary: winding(windings), weight: 5 },
      { arbitrary: tape, weight: 4 },
      { arbitrary: screen, weight: 1 },
    ),
    fc.nat({ max: chambers - 1 }),
  );
