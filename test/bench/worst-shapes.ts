// The ten shapes within the format's limits that were found to cost most: many leads, many floating conductors, many plies, much
// that nobody knows. Each is a whole design file.

type Json = Record<string, unknown>;

const circuit = (id: string, role: string): Json => ({ id, role });
const tape = (plies: number, ply = '0.05 mm'): Json => ({ kind: 'tape', plies, plyThickness: ply });
const wound = (winding: string, more: Json = {}): Json => ({ kind: 'winding', winding, turns: 5, ...more });
const times = <T>(count: number, make: (k: number) => T): T[] =>
  Array.from({ length: count }, (_, k) => make(k));

function file(title: string, more: Json): Json {
  return {
    format: 'layerwright-design/1',
    title,
    origin: 'proposed',
    rules: 'iec-62368-1',
    supply: { kind: 'ac', voltage: '240 V' },
    workingVoltages: [{ between: ['pri', 'out'], rms: '250 V', peak: '520 V', frequency: '65 kHz' }],
    circuits: [circuit('pri', 'mains'), circuit('out', 'touchable')],
    former: { height: '60 mm', wall: '1 mm', flange: '1 mm', chambers: [{ width: '15 mm' }] },
    core: { bond: 'floating', outerGap: '1 mm' },
    ...more,
  };
}

const winding = (id: string, of: string, more: Json = {}): Json => ({
  id,
  circuit: of,
  wire: { kind: 'enamelled', conductor: '0.2 mm', grade: 1 },
  ...more,
});

const known = (side: string, way = 'slot'): Json => {
  const lead = { at: side, exit: side, way, sleeve: { material: 'ptfe', wall: '0.41 mm', into: '5 mm' } };
  return { leads: { start: lead, finish: lead } };
};

const other = (k: number): string => (k % 2 === 0 ? 'pri' : 'out');

/** So many windings of the two circuits, a ply of tape over each. */
const windings = (count: number, more: (k: number) => Json): Json => ({
  windings: times(count, (k) => winding(`W${k}`, other(k), more(k))),
  layers: times(count, (k) => [wound(`W${k}`), tape(1)]).flat(),
});

const circuits = (count: number, more: (k: number) => Json): Json => ({
  circuits: times(count, (k) => circuit(`c${k}`, k === 0 ? 'mains' : 'touchable')),
  workingVoltages: times(count - 1, (k) => ({ between: ['c0', `c${k + 1}`], rms: '250 V', peak: '520 V' })),
  windings: times(count, (k) => winding(`W${k}`, `c${k}`, more(k))),
  layers: times(count, (k) => [wound(`W${k}`), tape(1)]).flat(),
});

const screens = (count: number): Json => ({
  windings: [winding('P', 'pri', { leads: 'not-judged' }), winding('S', 'out', { leads: 'not-judged' })],
  layers: [
    wound('P'),
    ...times(count, (k) => [tape(1), { kind: 'screen', id: `F${k}`, thickness: '0.05 mm' }]).flat(),
    tape(1),
    wound('S'),
  ],
});

export const worstShapes: readonly Json[] = [
  file(
    '32 windings of which nothing is known',
    windings(32, () => ({ wire: { conductor: '0.2 mm' } })),
  ),
  file(
    '64 windings with unknown leads',
    windings(64, () => ({})),
  ),
  file(
    '64 windings with known leads',
    windings(64, (k) => known(k % 4 < 2 ? 'left' : 'right')),
  ),
  file(
    '16 circuits with known leads',
    circuits(16, () => known('left', 'riser')),
  ),
  file(
    '16 circuits with unknown leads',
    circuits(16, () => ({})),
  ),
  file('64 floating screens', screens(64)),
  file('16 chambers', {
    former: {
      height: '10 mm',
      wall: '1 mm',
      flange: '1 mm',
      chambers: times(16, () => ({ width: '4 mm' })),
      dividers: times(15, () => '0.8 mm'),
    },
    windings: times(16, (k) => winding(`W${k}`, other(k), known('left'))),
    layers: times(16, (k) => [wound(`W${k}`, { chamber: k }), { ...tape(2), chamber: k }]).flat(),
  }),
  file('50 layers of 500 plies', {
    former: { height: '900 mm', wall: '1 mm', flange: '1 mm', chambers: [{ width: '15 mm' }] },
    windings: [winding('P', 'pri', { leads: 'not-judged' }), winding('S', 'out', { leads: 'not-judged' })],
    layers: times(50, (k) => [wound(k % 2 ? 'S' : 'P'), tape(500, '0.02 mm')]).flat(),
  }),
  file('400 layers of two circuits', {
    former: { height: '200 mm', wall: '1 mm', flange: '1 mm', chambers: [{ width: '15 mm' }] },
    windings: [winding('P', 'pri', { leads: 'not-judged' }), winding('S', 'out', { leads: 'not-judged' })],
    layers: times(200, (k) => [wound(k % 2 ? 'S' : 'P'), tape(1)]).flat(),
  }),
  file('12 windings, every figure an interval', {
    ...windings(12, () => known('left')),
    layers: times(12, (k) => [
      wound(`W${k}`, {
        margins: {
          left: { width: { value: '3 mm', plusMinus: '0.2 mm' }, filled: true },
          right: { width: { value: '3 mm', plusMinus: '0.2 mm' }, filled: true },
        },
      }),
      { ...tape(3), plyThickness: { value: '0.05 mm', plusMinus: '0.005 mm' } },
    ]).flat(),
  }),
];
