// What the verdict leaves out, and what is worth saying although it lowers no grade.

import type { Design } from '#model/design.ts';
import { chamberFits } from '#solver/placing/lay-out.ts';
import { placedBuild } from '#solver/section/placement.ts';
import { isRetained } from '#solver/stack/displacement.ts';
import type { Build } from '#solver/section/build.ts';
import type { Heat } from '#stress/heat/heat.ts';
import type { PairOutcome } from '#judge/paths/case-result.ts';
import { lengthRemarks } from './length-remarks.ts';
import type { Remark } from '#judge/verdict/verdict.ts';
import { voltageRemarks } from './voltage-remarks.ts';

export function notJudgedOf(
  design: Design,
  pairs: readonly PairOutcome[],
  leads: readonly string[],
  heat: Heat,
): readonly string[] {
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
    ...(design.unopened ? ['what lies below the innermost layer listed'] : []),
    ...(barriers.length > 0 && !barriers.every(stated) ? ['pins and wiring outside'] : []),
    ...leads,
    ...(design.parts.length === 0 ? ['parts near the coil'] : []),
    ...(heat.hottest === null || heat.limits === null ? ['heat'] : classesLeftOut(design, heat)),
    ...(heat.hottest !== null && heat.condition === 'abnormal' ? ['heat in normal use'] : []),
  ];
}

/** The class of an enamel is in no file, that of a material without a name in no table. */
const classesLeftOut = ({ windings }: Design, { unknown }: Heat): readonly string[] => [
  'class of the enamel',
  ...(unknown.length > windings.length ? ['class of materials that are not named'] : []),
];

export function remarksOf(design: Design, build: Build, pairs: readonly PairOutcome[]): readonly Remark[] {
  const barriers = pairs.filter(({ needed }) => needed !== null);
  const noBarrier: Remark = {
    kind: 'no-barrier',
    says: 'There is no barrier in this file: nothing above functional insulation is asked.',
  };
  return [
    ...(barriers.length === 0 ? [noBarrier] : []),
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
  const says = `The supply is ${voltage.value} V: no public mains is that low (from memory); is a digit missing?`;
  return [{ kind: 'low-supply', says }];
}

/** Rule books want end turns held by positive means, even where the build meets with them stretched. */
function looseEnds(build: Build): readonly Remark[] {
  const placed = placedBuild(build);
  return build.layers.flatMap((layer) => {
    if (layer.kind !== 'winding') return [];
    const sides = (['left', 'right'] as const).filter((side) => !isRetained(placed, layer, side));
    if (sides.length === 0) return [];
    const where = sides.length === 2 ? 'both ends' : `the ${sides[0]} end`;
    return [
      {
        kind: 'end-turns',
        says: `Layer ${layer.index + 1}: ${where} of ${layer.winding} not held; end turns are to be held by positive means.`,
      },
    ];
  });
}

function doubtfulFits(build: Build): readonly Remark[] {
  return chamberFits(build).flatMap((fit) =>
    fit.layers
      .filter((layer) => layer.doubtful)
      .map((layer) => ({
        kind: 'fit-doubtful',
        says: `Layer ${layer.layer + 1}: a row is full to the last turn; the helix needs one turn's width to return.`,
      })),
  );
}

function crossings(design: Design): readonly Remark[] {
  return design.windings.flatMap((winding) => {
    const { leads } = winding;
    if (leads === 'not-judged' || 'kind' in leads) return [];
    return (['start', 'finish'] as const).flatMap((end) => {
      const lead = leads[end];
      if ('kind' in lead || typeof lead.at !== 'string' || typeof lead.exit !== 'string') return [];
      const covered = winding.wire.kind === 'layer-insulated' || winding.wire.kind === 'fully-insulated';
      if (lead.at === lead.exit || !covered || lead.crossTape > 0) return [];
      return [
        {
          kind: 'covered-wire-crossing',
          says: `${winding.id} ${end}: covered wire crosses another under tension; some laboratories ask for a sleeve or tape there, others accept it for certified wire.`,
        },
      ];
    });
  });
}

function earthedScreens(design: Design): readonly Remark[] {
  const earth = new Set(design.circuits.filter(({ role }) => role === 'earth').map(({ id }) => id));
  return design.layers.flatMap((layer, i) =>
    layer.kind === 'screen' && layer.circuit !== null && earth.has(layer.circuit)
      ? [
          {
            kind: 'earthed-screen',
            says: `Layer ${i + 1}: an earthed screen must cover the windings' full width, with its ends insulated and its lead fixed.`,
          },
        ]
      : [],
  );
}

function outermostMains(design: Design): readonly Remark[] {
  const mains = new Set(design.circuits.filter(({ role }) => role === 'mains').map(({ id }) => id));
  return design.former.chambers.flatMap((_, chamber) => {
    const windings = design.layers.filter((layer) => layer.kind === 'winding' && layer.chamber === chamber);
    const last = windings.at(-1);
    if (last?.kind !== 'winding') return [];
    const circuit = design.windings.find(({ id }) => id === last.winding)!.circuit;
    if (!mains.has(circuit)) return [];
    return [
      {
        kind: 'mains-outermost',
        says: `Winding ${last.winding} lies outermost and belongs to the mains: parts near the coil (band, clip, heat sink, output wiring) must keep their distance from it.`,
      },
    ];
  });
}
