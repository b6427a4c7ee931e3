// Random design files that are valid and leave nothing open that shapes a section: what the oracle and the solver are
// compared on. Lengths come from coarse grids so that coincidences are frequent.

import * as fc from 'fast-check';
import { linkGaps } from '#model/check/link-gaps.ts';
import { layer, lead, link, often, plyThickness, steps } from './arbitrary-layer.ts';

const CIRCUITS = [
  { id: 'pri', name: 'Primary', role: 'mains' },
  { id: 'out', name: 'Output', role: 'touchable' },
  { id: 'aux', name: 'Auxiliary', role: 'mains' },
  { id: 'gnd', name: 'Earth', role: 'earth' },
];

const cover = fc.constantFrom(0.05, 0.1);

const wire = fc
  .tuple(
    fc.constantFrom('bare', 'enamelled', 'enamelled', 'fully-insulated', 'layer-insulated', 'litz'),
    steps(0.25, 0.5, 0.05),
    cover,
    fc.constantFrom(1, 2, 3),
  )
  .map(([kind, overall, thickness, layers]) => {
    const size = (metal: number) => ({ kind, conductor: Number(metal.toFixed(3)), overallDiameter: overall });
    switch (kind) {
      case 'bare':
        return size(overall);
      case 'fully-insulated':
        return { ...size(overall - 2 * thickness), grade: 4 };
      case 'layer-insulated':
        return { ...size(overall - 2 * thickness), insulationLayers: layers, approval: 'wire-annex' };
      default:
        return { ...size(overall - 0.05), grade: 1 };
    }
  });

const leads = fc.oneof(
  { arbitrary: fc.constant('not-judged' as const), weight: 2 },
  { arbitrary: fc.record({ start: lead, finish: lead }), weight: 1 },
);

const wall = fc.oneof(
  fc.constantFrom(0.2, 0.4, 0.8),
  fc.record({
    plies: fc.integer({ min: 1, max: 3 }),
    plyThickness,
    material: fc.constant('polyester-tape-25'),
    plyWithstand: fc.constant('5 kV'),
  }),
);

const former = (chambers: number) =>
  fc.record({
    height: steps(1, 4, 0.25),
    wall,
    flange: fc.constantFrom(0.2, 0.4, 0.8),
    material: fc.constant('phenolic'),
    split: often(false, fc.constant(true)),
    chambers: fc.array(fc.record({ width: steps(3, 4.5, 0.5) }), {
      minLength: chambers,
      maxLength: chambers,
    }),
    dividers: fc.array(fc.constantFrom(0.2, 0.4, 0.8), { minLength: chambers - 1, maxLength: chambers - 1 }),
  });

const core = fc.record({
  bond: fc.constant('floating'),
  outerGap: fc.constantFrom(0, 0, 0.1, 0.5),
  wrap: often<object | null>(
    null,
    fc.record({
      material: fc.constant('polyester-tape-25'),
      plies: fc.integer({ min: 1, max: 2 }),
      plyThickness,
      plyWithstand: fc.constant('5 kV'),
    }),
  ),
});

const surroundings = fc.oneof(
  { arbitrary: fc.constant({}), weight: 6 },
  { arbitrary: fc.constant({ proof: 'tested' }), weight: 2 },
  { arbitrary: fc.constant({ impregnation: 'potted' }), weight: 1 },
  { arbitrary: fc.constant({ impregnation: 'potted', proof: 'tested' }), weight: 1 },
);

const parts = fc
  .tuple(fc.constantFrom(1, 1, 1, 2, 3), fc.integer({ min: 1, max: 4 }))
  .chain(([chambers, windings]) =>
    fc.record({
      surroundings,
      former: former(chambers),
      core,
      windings: fc.array(
        fc.record({
          circuit: fc.constantFrom('pri', 'out', 'aux', 'gnd'),
          wire,
          anchored: often(false, fc.constant(true)),
          leads,
          links: fc.array(link, { minLength: 8, maxLength: 8 }),
        }),
        { minLength: windings, maxLength: windings },
      ),
      layers: fc.array(layer(windings, chambers), { minLength: 2, maxLength: 8 }),
    }),
  );

/** A design file as JSON; every one is accepted by the reader. */
export const arbitraryDesign: fc.Arbitrary<object> = parts.map(({ layers, windings, ...rest }) => {
  const file = layers.map(([read, chamber], i) => named({ ...read, chamber }, i));
  return {
    format: 'layerwright-design/1',
    title: 'Invented at random',
    origin: 'proposed',
    rules: 'iec-62368-1',
    supply: { kind: 'ac', voltage: '240 V' },
    circuits: CIRCUITS,
    ...rest,
    windings: windings.map((winding, i) => {
      const id = `W${i}`;
      return { ...winding, id, links: winding.links.slice(0, linkGaps(file, id).length) };
    }),
    layers: file,
    evidence: [{ id: 'E1', kind: 'photo', says: 'edges and ends', fields: shownFields(file, windings) }],
  };
});

/** A floating screen has an id and no lead; a bonded one has its circuit. */
function named<T extends { readonly kind: string; readonly circuit?: string; readonly chamber: number }>(
  read: T,
  index: number,
): T {
  if (read.kind !== 'screen' || read.circuit !== undefined) return read;
  return { ...read, id: `screen-${index}`, lead: undefined };
}

function shownFields(
  layers: readonly object[],
  windings: readonly { readonly anchored: boolean }[],
): string[] {
  return [
    ...layers.flatMap((l, i) => ('turnUp' in l ? [`layers[${i}].turnUp`] : [])),
    ...windings.flatMap((w, i) => (w.anchored ? [`windings[${i}].anchored`] : [])),
  ];
}
