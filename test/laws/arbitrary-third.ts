// Random builds of three and four circuits with windings and screens of a third between two others: one chamber, a tape
// between every two layers, lengths about those that the rule book asks for, so that a third part often decides.

import * as fc from 'fast-check';
import { linkGaps } from '#model/check/link-gaps.ts';
import { often, steps } from '#test/oracle/arbitrary-layer.ts';

const CIRCUITS = [
  { id: 'pri', name: 'Primary', role: 'mains' },
  { id: 'out', name: 'Output', role: 'touchable' },
  { id: 'aux', name: 'Auxiliary', role: 'mains' },
  { id: 'gnd', name: 'Earth', role: 'earth' },
];

const width = fc.oneof(fc.constantFrom(0, 0.5, 2.5, 3, 5, 6.5), steps(0, 7, 0.5));

const margin = fc.record(
  {
    width,
    filled: fc.boolean(),
    height: fc.constantFrom(0.1, 0.3, 0.6),
    moulded: often(false, fc.constant(true)),
  },
  { requiredKeys: ['width', 'filled'] },
);
const margins = fc.record({ left: margin, right: margin });

const side = fc.constantFrom('left' as const, 'right' as const);

const sleeve = fc.oneof(
  { arbitrary: fc.constant(null), weight: 2 },
  {
    arbitrary: fc.record({ wall: fc.constantFrom(0.1, 0.3, 0.4, 0.5), into: fc.constantFrom(0, 1, 3, 7) }),
    weight: 1,
  },
);

const lead = fc
  .record({
    at: side,
    over: often(false, fc.constant(true)),
    way: fc.constantFrom('slot', 'riser'),
    sleeve,
    bareFrom: fc.constant(9),
  })
  .map(({ over, ...rest }) => ({ ...rest, exit: over === (rest.at === 'left') ? 'right' : 'left' }));

const leads = fc.oneof(
  { arbitrary: fc.constant('not-judged' as const), weight: 5 },
  { arbitrary: fc.record({ start: lead, finish: lead }), weight: 1 },
);

const wire = fc
  .tuple(
    fc.constantFrom('enamelled', 'enamelled', 'layer-insulated', 'fully-insulated'),
    fc.constantFrom(0.3, 0.4),
    fc.constantFrom(1, 2, 3),
  )
  .map(([kind, overallDiameter, insulationLayers]) => {
    const size = { kind, conductor: Number((overallDiameter - 0.1).toFixed(3)), overallDiameter };
    if (kind === 'layer-insulated') return { ...size, insulationLayers, approval: 'wire-annex' };
    return { ...size, grade: kind === 'enamelled' ? 1 : 4 };
  });

const inset = fc.record({ left: width, right: width });

const tape = fc.record(
  {
    kind: fc.constant('tape' as const),
    material: fc.constant('polyester-tape-25'),
    plyThickness: fc.constantFrom(0.05, 0.1),
    plies: fc.integer({ min: 1, max: 3 }),
    plyWithstand: fc.constant('5 kV'),
    inset: often({ left: 0, right: 0 }, inset),
  },
  { requiredKeys: ['kind', 'material', 'plyThickness', 'plies', 'inset'] },
);

const winding = (at: number) =>
  fc.record({
    kind: fc.constant('winding' as const),
    winding: fc.constant(`W${at}`),
    turns: fc.integer({ min: 1, max: 24 }),
    spread: often(true, fc.constant(false)),
    margins,
  });

const screen = fc.record(
  {
    kind: fc.constant('screen' as const),
    circuit: fc.constantFrom('gnd', 'pri'),
    thickness: fc.constant(0.05),
    margins,
    lead: fc.oneof(
      { arbitrary: fc.constant('not-judged' as const), weight: 2 },
      { arbitrary: lead, weight: 1 },
    ),
  },
  { requiredKeys: ['kind', 'thickness', 'margins', 'lead'] },
);

/** Between the outer two circuits lies at least one more; the last may be the first one's other half. */
const orders = fc.constantFrom(
  ['pri', 'gnd', 'out'],
  ['pri', 'aux', 'out'],
  ['out', 'aux', 'pri'],
  ['pri', 'out', 'aux', 'gnd'],
  ['pri', 'gnd', 'out', 'aux'],
  ['pri', 'gnd', 'out', 'pri'],
  ['aux', 'screen', 'out', 'pri'],
  ['pri', 'screen', 'out', 'aux'],
  ['pri', 'screen', 'out', 'gnd'],
);

const parts = orders.chain((order) =>
  fc.record({
    order: fc.constant(order),
    former: fc.record({
      height: fc.constantFrom(5, 8),
      wall: fc.constantFrom(0.4, 0.8),
      flange: fc.constantFrom(0.4, 0.8),
      material: fc.constant('phenolic'),
      split: often(false, fc.constant(true)),
      chambers: fc.tuple(fc.record({ width: fc.constantFrom(16, 18) })),
      dividers: fc.constant([]),
    }),
    core: fc.record({ bond: fc.constant('floating'), outerGap: fc.constantFrom(0, 0.5) }),
    wires: fc.array(fc.record({ wire, anchored: often(false, fc.constant(true)), leads }), {
      minLength: order.length,
      maxLength: order.length,
    }),
    layers: fc.tuple(...order.map((circuit, at) => (circuit === 'screen' ? screen : winding(at)))),
    tapes: fc.array(tape, { minLength: order.length, maxLength: order.length }),
  }),
);

/** A design file as JSON, leaving nothing open that shapes a section. */
export const arbitraryThird: fc.Arbitrary<object> = parts.map(({ order, wires, layers, tapes, ...rest }) => {
  // both halves of a primary are one winding
  const first = order.indexOf('pri');
  const idAt = (at: number) => (order[at] === 'pri' ? `W${first}` : `W${at}`);
  const file = layers.flatMap((layer, at) => [
    layer.kind === 'winding'
      ? { ...layer, winding: idAt(at) }
      : 'circuit' in layer
        ? layer
        : { ...layer, id: `screen-${at}`, lead: undefined },
    tapes[at]!,
  ]);
  const wound = order.flatMap((circuit, at) =>
    circuit === 'screen' || idAt(at) !== `W${at}`
      ? []
      : [{ id: `W${at}`, circuit, ...wires[at]!, links: linkGaps(file as never, `W${at}`).map(() => LINK) }],
  );
  return {
    format: 'layerwright-design/1',
    title: 'Invented at random',
    origin: 'proposed',
    rules: 'iec-62368-1',
    supply: { kind: 'ac', voltage: '240 V' },
    circuits: CIRCUITS,
    surroundings: {},
    ...rest,
    windings: wound,
    layers: file,
    evidence: [
      {
        id: 'E1',
        kind: 'photo',
        says: 'ends taped down',
        fields: wound.flatMap(({ anchored }, w) => (anchored ? [`windings[${w}].anchored`] : [])),
      },
    ],
  };
});

const LINK = { side: 'right', way: 'riser', sleeve: null };
