// The build of the pictures as a fixture: laid out by the solver, judged by hand, so that drawing and words can be
// tested without the rules. Lengths follow the arithmetic 3.00 + 0.18 + 1.65 = 4.83 mm.

import type { Design } from '#model/design.ts';
import { judge, type Judgement } from '#judge/judging/judge.ts';
import type { Turn } from '#solver/placing/turns.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import type { WeakSpot } from '#judge/verdict/spot.ts';
import type { PathLeg } from '#judge/verdict/path.ts';
import type { PairVerdict } from '#judge/verdict/pair.ts';
import type { Build, BuildLayer, BuildMargin, Lay } from '#solver/section/build.ts';
import { sectionsOf } from '#solver/placing/lay-out.ts';
import { chamberFits } from '#solver/placing/chamber-fits.ts';
import type { Section } from '#solver/section/section.ts';
import { because, type Because } from '#standards/because.ts';
import { mm, nm } from '#units/quantity.ts';
import { designOf, TWO_WINDINGS } from '#test/designs.ts';
import { wire } from '#test/solver/made-build.ts';

const margin = (width: number): BuildMargin => ({
  width: mm(width),
  filled: true,
  height: null,
  moulded: false,
  turn: mm(0.15),
  stuff: 3,
});

const margins = (left: number, right: number) => ({ left: margin(left), right: margin(right) });

function winding(
  index: number,
  id: string,
  turns: number,
  overall: number,
  left: number,
  right: number,
): BuildLayer {
  return {
    kind: 'winding',
    index,
    chamber: 0,
    winding: id,
    circuit: { P: 'pri', S: 'out', A: 'aux' }[id] ?? id,
    turns,
    strands: 1,
    spread: true,
    startsAt: 'left',
    wire: wire(overall),
    anchored: false,
    extent: null,
    margins: margins(left, right),
  };
}

const tape = (index: number, short = 0): BuildLayer => ({
  kind: 'tape',
  index,
  chamber: 0,
  plies: 3,
  plyThickness: mm(0.06),
  stuff: 1,
  inset: { left: mm(0), right: mm(short) },
  cemented: false,
  turnUp: mm(0),
  margins: margins(0, 0),
});

const leadS: Lay = {
  name: 'S finish',
  group: 'S finish',
  circuit: 'out',
  layer: 2,
  at: 'right',
  exit: 'right',
  way: 'slot',
  wire: wire(0.65),
  sleeve: { wall: mm(0.3), into: mm(2), stuff: 2 },
  crossTape: 0,
  upTo: null,
  kind: 'lead',
  apart: null,
};

export const greenhouseBuild: Build = {
  height: mm(4.2),
  wall: { kind: 'moulded', thickness: mm(0.8) },
  flange: mm(0.8),
  split: false,
  moulding: 0,
  chambers: [mm(12)],
  dividers: [],
  outerGap: mm(0.4),
  wrap: null,
  layers: [
    winding(0, 'P', 100, 0.23, 3, 3),
    tape(1),
    winding(2, 'S', 20, 0.65, 1.65, 3),
    tape(3, 0.4),
    winding(4, 'A', 11, 0.23, 4, 4),
    tape(5),
  ],
  lays: [leadS],
  potted: false,
  closedJoint: 4,
};

/** The same build as a design file; only what drawing and words read of it matters here. */
export function greenhouseDesign(title = 'Wall supply of a greenhouse irrigation timer'): Design {
  const round = (id: string, circuit: string, conductor: number) => ({
    id,
    circuit,
    wire: { kind: 'enamelled', conductor, grade: 1 },
  });
  const sides = (left: number, right: number) => ({
    left: { width: left, filled: true },
    right: { width: right, filled: true },
  });
  return designOf(
    {
      ...TWO_WINDINGS,
      title,
      origin: 'dissected',
      circuits: [
        { id: 'pri', name: 'Primary', role: 'mains' },
        { id: 'aux', name: 'Auxiliary', role: 'mains' },
        { id: 'out', name: 'Output', role: 'touchable' },
      ],
      former: { height: 4.2, wall: 0.8, flange: 0.8, chambers: [{ width: 12 }] },
      core: { bond: 'floating', outerGap: 0.4 },
      windings: [round('P', 'pri', 0.2), round('S', 'out', 0.6), round('A', 'aux', 0.2)],
      layers: [
        { kind: 'winding', winding: 'P', turns: 100, margins: sides(3, 3) },
        { kind: 'tape', material: 't', plies: 3, plyThickness: 0.06 },
        { kind: 'winding', winding: 'S', turns: 20, margins: sides(1.65, 3) },
        { kind: 'tape', material: 't', plies: 3, plyThickness: 0.06, inset: { left: 0, right: 0.4 } },
        { kind: 'winding', winding: 'A', turns: 11, margins: sides(4, 4) },
        { kind: 'tape', material: 't', plies: 3, plyThickness: 0.06 },
      ],
    },
    { rules: ['iec-62368-1'], tapes: ['t'], plies: new Map(), formers: [], sleeves: [], markets: [] },
  );
}

/** Circles of every row, spread over the row's hull. */
function turnsIn(section: Section): readonly Turn[] {
  return section.regions.flatMap((region) => {
    if (region.kind !== 'conductor' || region.of !== 'winding' || region.layer === null) return [];
    const layer = greenhouseBuild.layers[region.layer];
    if (layer?.kind !== 'winding') return [];
    const { overall } = layer.wire;
    const perRow = Math.floor((region.x1 - region.x0) / overall);
    const rows = Math.round((region.y1 - region.y0) / overall);
    return Array.from({ length: Math.min(layer.turns, perRow * rows) }, (_, k): Turn => {
      const inRow = Math.min(perRow, layer.turns - Math.floor(k / perRow) * perRow);
      const pitch = inRow > 1 ? (region.x1 - region.x0 - overall) / (inRow - 1) : 0;
      return {
        x: nm(Math.round(region.x0 + overall / 2 + (k % perRow) * pitch)),
        y: nm(Math.round(region.y0 + overall * (Math.floor(k / perRow) + 0.5))),
        overall,
        conductor: nm(Math.round(overall * 0.92)),
        circuit: layer.circuit,
        layer: layer.index,
      };
    });
  });
}

const leg = (
  from: [number, number],
  to: [number, number],
  length: number,
  course: PathLeg['course'],
): PathLeg => ({
  kind: 'surface',
  from,
  to,
  length,
  plies: 0,
  course,
});

const legs: readonly PathLeg[] = [
  leg([3, 0.92], [0, 0.92], 3, { by: 'along', what: 'margin', back: false }),
  leg([0, 0.92], [0, 1.1], 0.18, { by: 'up', what: 'tape-edges-at-flange' }),
  leg([0, 1.1], [1.65, 1.1], 1.65, { by: 'along', what: 'margin', back: true }),
];
const points = [
  [3, 0.92],
  [0, 0.92],
  [0, 1.1],
  [1.65, 1.1],
] as const;

const cite = (table: string, cell: string) => ({
  file: 'creepage',
  standard: 'iec-62368-1',
  edition: '2018',
  clause: '5.4.3',
  table,
  cell,
  confirmed: 'published' as const,
  sources: ['s1'],
});

export const someBecause: Because = because(
  'table-value',
  {
    quantity: 'creepage',
    unit: 'mm',
    along: 'working voltage',
    at: 272,
    interpolated: true,
    lowerAt: 250,
    lower: 2.5,
    upperAt: 320,
    upper: 3.2,
    raw: 2.72,
    value: 2.8,
    nextRow: 3.2,
  },
  [cite('17', '250 V, PD2 III'), cite('17', '320 V, PD2 III')],
);

const none = because('stress', {});

const pair: PairVerdict = {
  between: ['pri', 'out'],
  needed: 'reinforced',
  achieved: 'basic',
  achievedAtBest: 'basic',
  verdict: 'falls-short',
  undrawn: [],
  beyond: [],
  unplaced: [],
  stress: { rms: 272, peak: 560, frequency: 65000, withstand: 2500, basis: 'measured', because: none },
  required: {
    clearance: { basic: 1.5, reinforced: 3, because: none },
    creepage: { basic: 2.8, reinforced: 5.6, materialGroup: 'IIIb', because: someBecause },
    throughInsulation: { leastThickness: 0.4, plies: { alone: 2, anyTwo: 3 }, because: none },
    test: {
      peak: 4000,
      rms: 2828,
      dc: 4000,
      seconds: 60,
      basicPeak: 2500,
      reinforcedPeak: 4000,
      highFrequencyPeak: null,
      because: none,
    },
  },
  paths: [
    {
      metric: 'creepage',
      plies: 0,
      length: 4.83,
      grade: 'basic',
      section: 'plain',
      over: [],
      points,
      legs,
      pieces: [],
      required: { basic: 2.8, reinforced: 5.6 },
    },
  ],
  limiting: {
    metric: 'creepage',
    bridge: null,
    because: none,
    length: 4.83,
    required: 5.6,
    grade: 'basic',
    section: 'plain',
    points,
    legs,
    plies: 0,
    over: [],
    outside: [],
    conditions: [],
  },
  proven: null,
  because: none,
};

const spot = (more: Partial<WeakSpot>): WeakSpot => ({
  kind: 'narrow-margin',
  between: ['pri', 'out'],
  section: 'plain',
  at: [0, 1],
  proven: true,
  conditions: [],
  also: [],
  layers: [0, 1, 2],
  metric: 'creepage',
  length: 4.83,
  required: 5.6,
  achieved: 'basic',
  needed: 'reinforced',
  verdict: 'falls-short',
  points,
  cause: { of: 'path', plies: 0, over: [], screen: false, lead: null, sleeved: false },
  ...more,
});

export const greenhouseVerdict: Verdict = {
  format: 'layerwright-verdict/1',
  title: 'Wall supply of a greenhouse irrigation timer',
  rules: { id: 'iec-62368-1', edition: '2018' },
  verdict: 'falls-short',
  notJudged: [{ what: 'outside' }],
  touchCurrent: null,
  coreAsPrimary: {
    verdict: 'falls-short',
    pairs: [
      {
        between: ['pri', 'out'],
        achieved: 'basic',
        verdict: 'falls-short',
        length: 3.72,
        required: 5.6,
        metric: 'creepage',
      },
    ],
  },
  pairs: [
    pair,
    {
      ...pair,
      between: ['pri', 'aux'],
      needed: 'functional',
      achieved: 'functional',
      achievedAtBest: 'functional',
      verdict: 'meets',
      required: null,
      paths: [],
      limiting: null,
    },
  ],
  weakSpots: [
    spot({}),
    spot({
      kind: 'drifting-tape',
      section: 'slumped right',
      at: [0, 2.5],
      length: 5.03,
      between: ['aux', 'out'],
    }),
    spot({ kind: 'bare-lead', section: 'lead S finish', at: [12, 1.1], length: 5.18 }),
  ],
  fit: {
    height: { used: 2.99, available: 4.2 },
    chambers: chamberFits(greenhouseBuild).map((chamber) => ({
      used: 2.99,
      layers: chamber.layers.map((layer) => ({ ...layer, height: layer.height / 1e6 })),
    })),
  },
  remarks: [{ kind: 'end-turns', layer: 0, winding: 'P', sides: ['left', 'right'] }],
  assumptions: [
    {
      field: 'surroundings.hottestInsulation',
      between: null,
      counted: { as: 'left-out' },
      decides: false,
      figure: null,
      atBest: null,
      kind: 'unknown',
    },
    {
      field: 'workingVoltages',
      between: null,
      counted: { as: 'floor', quantity: 'rms', value: 240 },
      decides: true,
      figure: { at: { as: 'voltage', volts: 240 }, together: false },
      atBest: 'meets',
      kind: 'unknown',
    },
  ],
  restsOn: 'memory',
};

const sections = sectionsOf(greenhouseBuild, { leastThickness: mm(0.4) });

export const greenhouse: Judgement = {
  verdict: greenhouseVerdict,
  sections,
  turns: new Map(sections.map((section) => [section.name, turnsIn(section)])),
  parts: judge(greenhouseDesign('Bench')).parts,
  windings: null,
};
