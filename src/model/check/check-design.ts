// What the schema cannot see: every id named exists and stands once, and figures that only make sense together do.

import type { BadInput } from '#model/faults/bad-input.ts';
import { badField } from '#model/faults/bad-field.ts';
import { oneOf, checkSheet, type Keys, type KnownIds } from './check-ids.ts';
import { checkContradictions } from './check-contradictions.ts';
import { checkLayers } from './check-layers.ts';
import { checkWindings } from './check-windings.ts';
import type { Design } from '#model/design.ts';
import type { BulkCapacitor } from '#model/design/voltages.ts';
import type { Supply } from '#model/design/supply.ts';
import { isKnown } from '#model/quantity/reading.ts';

/** Ids that mean something of their own where a conductor is named. */
const RESERVED: readonly string[] = ['core', 'floating', 'unknown'];

export function checkDesign(design: Design, known: KnownIds): readonly BadInput[] {
  return [
    ...oneOf(['rules'], design.rules, known.rules, 'rule book'),
    ...oneOf(['supply', 'market'], design.supply.market, known.markets, 'market'),
    ...checkIds(design),
    ...checkReferences(design),
    ...checkSupply(design.supply),
    ...checkFormer(design, known),
    ...checkWindings(design, known),
    ...checkLayers(design, known),
    ...checkContradictions(design),
  ];
}

/** Circuits, parts and screens share one name space, since `between` may name any of them. */
function checkIds(design: Design): readonly BadInput[] {
  const screens = design.layers.flatMap((layer, i) =>
    layer.kind === 'screen' && layer.id !== null ? [{ keys: ['layers', i, 'id'] as Keys, id: layer.id }] : [],
  );
  const of = (list: 'circuits' | 'parts' | 'windings' | 'bridges' | 'evidence') =>
    design[list].map(({ id }, i) => ({ keys: [list, i, 'id'] as Keys, id }));
  return [
    ...doubled([...of('circuits'), ...of('parts'), ...screens], RESERVED),
    ...doubled(of('windings')),
    ...doubled(of('bridges')),
    ...doubled(of('evidence')),
  ];
}

function doubled(
  entries: readonly { readonly keys: Keys; readonly id: string }[],
  reserved: readonly string[] = [],
): readonly BadInput[] {
  const seen = new Set<string>();
  return entries.flatMap(({ keys, id }) => {
    // names that every object has would be found in any table keyed by id
    if (reserved.includes(id) || id in Object.prototype)
      return [badField(keys, id, 'another id: this word has a meaning of its own')];
    if (seen.has(id)) return [badField(keys, id, 'an id that no other entry has')];
    seen.add(id);
    return [];
  });
}

function checkReferences(design: Design): readonly BadInput[] {
  const circuits = design.circuits.map(({ id }) => id);
  const screens = design.layers.flatMap((layer) =>
    layer.kind === 'screen' && layer.id !== null ? [layer.id] : [],
  );
  const conductors = ['core', ...design.parts.map(({ id }) => id), ...screens];
  return [
    ...checkVoltages(design, circuits),
    ...checkConverter(design, circuits),
    ...checkParts(design, circuits, conductors),
    ...design.outside.flatMap(({ between }, i) =>
      pair(
        ['outside', i, 'between'],
        between,
        [...circuits, ...conductors],
        'circuit, screen, part or the core',
      ),
    ),
    ...design.bridges.flatMap(({ between }, i) =>
      pair(['bridges', i, 'between'], between, circuits, 'circuit'),
    ),
  ];
}

const checkVoltages = ({ workingVoltages }: Design, circuits: readonly string[]): readonly BadInput[] =>
  workingVoltages.flatMap(({ between, rms, peak }, i) => [
    ...pair(['workingVoltages', i, 'between'], between, circuits, 'circuit'),
    ...(rms === null && peak === null
      ? [badField(['workingVoltages', i, 'rms'], undefined, 'a voltage, rms or peak or both')]
      : []),
  ]);

function checkConverter(
  { converter, supply, windings }: Design,
  circuits: readonly string[],
): readonly BadInput[] {
  if (!converter) return [];
  const ids = windings.map(({ id }) => id);
  return [
    ...outputs(['converter', 'outputs'], converter.outputs, circuits),
    ...(converter.bulk ? bulk(converter.bulk, supply) : []),
    ...converter.variants.flatMap((variant, i) => [
      ...outputs(['converter', 'variants', i, 'outputs'], variant.outputs, circuits),
      ...Object.keys(variant.turns).flatMap((id) =>
        oneOf(['converter', 'variants', i, 'turns', id], id, ids, 'winding'),
      ),
    ]),
  ];
}

/** What the core and the parts outside are bonded to and touch. */
function checkParts(
  { core: { bond }, parts }: Design,
  circuits: readonly string[],
  conductors: readonly string[],
): readonly BadInput[] {
  const bonds = ['floating', ...circuits];
  const expected = 'circuit, or "floating"';
  return [
    ...(typeof bond === 'string' ? oneOf(['core', 'bond'], bond, bonds, expected) : []),
    ...parts.flatMap((part, i) => [
      ...oneOf(['parts', i, 'bond'], part.bond, bonds, expected),
      ...part.touches.flatMap((id, j) =>
        oneOf(
          ['parts', i, 'touches', j],
          id,
          conductors.filter((other) => other !== part.id),
          'core, screen or other part',
        ),
      ),
    ]),
  ];
}

const checkSupply = ({ voltage, lowest }: Supply): readonly BadInput[] =>
  isKnown(lowest) && lowest.value > voltage.value
    ? [badField(['supply', 'lowest'], `${lowest.value} V`, `at most the highest marked, ${voltage.value} V`)]
    : [];

function bulk({ lowestMains, efficiency }: BulkCapacitor, { kind, voltage }: Supply): readonly BadInput[] {
  const at: Keys = ['converter', 'bulk'];
  if (kind === 'dc') return [badField(at, kind, 'none with a direct supply: nothing is rectified')];
  return [
    ...(lowestMains.value > voltage.value
      ? [badField([...at, 'lowestMains'], lowestMains.value, `at most the supply's ${voltage.value} V`)]
      : []),
    ...(efficiency === 0
      ? [badField([...at, 'efficiency'], 0, 'a number above 0, up to 1, 0.8 being 80 %')]
      : []),
  ];
}

const pair = (
  keys: Keys,
  [a, b]: readonly [string, string],
  ids: readonly string[],
  what: string,
): readonly BadInput[] => [
  ...oneOf([...keys, 0], a, ids, what),
  ...oneOf([...keys, 1], b, ids, what),
  ...(a === b ? [badField([...keys, 1], b, 'another id than the first')] : []),
];

const outputs = (keys: Keys, list: readonly { readonly circuit: string }[], circuits: readonly string[]) =>
  list.flatMap(({ circuit }, i) => oneOf([...keys, i, 'circuit'], circuit, circuits, 'circuit'));

function checkFormer({ former, core }: Design, known: KnownIds): readonly BadInput[] {
  const { material, wall, chambers, dividers } = former;
  return [
    ...(typeof material === 'string'
      ? oneOf(['former', 'material'], material, known.formers, "former's material")
      : []),
    ...(wall.kind === 'plies' ? checkSheet(['former', 'wall'], wall, known) : []),
    ...(core.wrap ? checkSheet(['core', 'wrap'], core.wrap, known) : []),
    ...(dividers.length === chambers.length - 1
      ? []
      : [badField(['former', 'dividers'], dividers, `one fewer than chambers: ${chambers.length - 1}`)]),
  ];
}
