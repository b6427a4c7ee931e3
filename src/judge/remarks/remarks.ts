// What the verdict leaves out, and what is worth saying although it lowers no grade.

import type { Design } from '#model/design.ts';
import { chamberFits } from '#solver/placing/chamber-fits.ts';
import { placedBuild } from '#solver/section/placement.ts';
import { isRetained } from '#solver/stack/displacement.ts';
import type { Build } from '#solver/section/build.ts';
import type { Heat } from '#stress/heat/heat.ts';
import type { PairOutcome } from '#judge/paths/case-result.ts';
import { lengthRemarks } from './length-remarks.ts';
import type { NotJudged, Remark } from '#judge/verdict/remark.ts';
import { voltageRemarks } from './voltage-remarks.ts';

export function notJudgedOf(
  design: Design,
  pairs: readonly PairOutcome[],
  leads: readonly NotJudged[],
  heat: Heat,
): readonly NotJudged[] {
  const barriers = pairs.filter(({ needed }) => needed !== null);
  // a barrier outside is known by both of its distances
  const stated = ({ between }: PairOutcome) => {
    const entries = design.outside.filter((entry) => entry.between.every((id) => between.includes(id)));
    return [
      entries.some(({ clearance }) => clearance !== null),
      entries.some(({ creepage }) => creepage !== null),
    ].every(Boolean);
  };
  return [
    ...(design.unopened ? [{ what: 'below-the-innermost' } as const] : []),
    ...(barriers.length > 0 && !barriers.every(stated) ? [{ what: 'outside' } as const] : []),
    ...leads,
    ...(design.parts.length === 0 ? [{ what: 'parts-near' } as const] : []),
    ...(heat.hottest === null || heat.limits === null
      ? [{ what: 'heat' } as const]
      : classesLeftOut(design, heat)),
    ...(heat.hottest !== null && heat.condition === 'abnormal'
      ? [{ what: 'heat-in-normal-use' } as const]
      : []),
  ];
}

/** The class of an enamel is in no file, that of a material without a name in no table. */
const classesLeftOut = ({ windings }: Design, { unknown }: Heat): readonly NotJudged[] => [
  { what: 'enamel-class' },
  ...(unknown.length > windings.length ? [{ what: 'unnamed-class' } as const] : []),
];

export function remarksOf(design: Design, build: Build, pairs: readonly PairOutcome[]): readonly Remark[] {
  const barriers = pairs.filter(({ needed }) => needed !== null);
  return [
    ...(barriers.length === 0 ? [{ kind: 'no-barrier' } as const] : []),
    ...lowSupply(design),
    ...looseEnds(build),
    ...doubtfulFits(build),
    ...crossings(design),
    ...lengthRemarks(barriers),
    ...earthedScreens(design),
    ...outermostMains(design),
    ...voltageRemarks(barriers, (id) => design.circuits.find((circuit) => circuit.id === id)?.name || id),
  ];
}

/** Lowest nominal voltage of a public mains, V (IEC 60038, from memory): less is more likely a slip of the pen. */
const LOWEST_MAINS = 100;

function lowSupply({ supply }: Design): readonly Remark[] {
  const { kind, voltage } = supply;
  if (kind !== 'ac' || voltage.value >= LOWEST_MAINS) return [];
  return [{ kind: 'low-supply', voltage: voltage.value }];
}

/** Rule books want end turns held by positive means, even where the build meets with them stretched. */
function looseEnds(build: Build): readonly Remark[] {
  const placed = placedBuild(build);
  return build.layers.flatMap((layer): readonly Remark[] => {
    if (layer.kind !== 'winding') return [];
    const sides = (['left', 'right'] as const).filter((side) => !isRetained(placed, layer, side));
    if (sides.length === 0) return [];
    return [{ kind: 'end-turns', layer: layer.index, winding: layer.winding, sides }];
  });
}

function doubtfulFits(build: Build): readonly Remark[] {
  return chamberFits(build).flatMap((fit) =>
    fit.layers
      .filter((layer) => layer.doubtful)
      .map(({ layer }) => ({ kind: 'fit-doubtful', layer }) as const),
  );
}

function crossings(design: Design): readonly Remark[] {
  return design.windings.flatMap((winding): readonly Remark[] => {
    const { leads } = winding;
    if (leads === 'not-judged' || 'kind' in leads) return [];
    return (['start', 'finish'] as const).flatMap((end): readonly Remark[] => {
      const lead = leads[end];
      if ('kind' in lead || typeof lead.at !== 'string' || typeof lead.exit !== 'string') return [];
      const covered = winding.wire.kind === 'layer-insulated' || winding.wire.kind === 'fully-insulated';
      if (lead.at === lead.exit || !covered || lead.crossTape > 0) return [];
      return [{ kind: 'covered-wire-crossing', winding: winding.id, end }];
    });
  });
}

function earthedScreens(design: Design): readonly Remark[] {
  const earth = new Set(design.circuits.filter(({ role }) => role === 'earth').map(({ id }) => id));
  return design.layers.flatMap((layer, i): readonly Remark[] =>
    layer.kind === 'screen' && layer.circuit !== null && earth.has(layer.circuit)
      ? [{ kind: 'earthed-screen', layer: i }]
      : [],
  );
}

function outermostMains(design: Design): readonly Remark[] {
  const mains = new Set(design.circuits.filter(({ role }) => role === 'mains').map(({ id }) => id));
  return design.former.chambers.flatMap((_, chamber): readonly Remark[] => {
    const windings = design.layers.filter((layer) => layer.kind === 'winding' && layer.chamber === chamber);
    const last = windings.at(-1);
    if (last?.kind !== 'winding') return [];
    const circuit = design.windings.find(({ id }) => id === last.winding)!.circuit;
    if (!mains.has(circuit)) return [];
    return [{ kind: 'mains-outermost', winding: last.winding }];
  });
}
