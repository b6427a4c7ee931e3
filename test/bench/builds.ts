// Builds for the benchmark: a sandwich of three circuits, as many layers as asked for, six lead-outs.

/** Layers repeat primary, tape, auxiliary, tape, secondary, tape; the first winding of each circuit has leads. */
export function sandwich(layers: number, shift = 0): Record<string, unknown> {
  const margin = { left: { width: '3 mm', filled: true }, right: { width: '3 mm', filled: true } };
  const tape = { kind: 'tape', material: 'polyester-tape-25', plies: 3, plyThickness: '0.06 mm' };
  const windings: Record<string, unknown>[] = [];
  const wound = Array.from({ length: layers }, (_, i) => {
    if (i % 2 === 1) return tape;
    const kind = KINDS[(i / 2) % KINDS.length]!;
    const id = `${kind.letter}${Math.floor(i / 6) + 1}`;
    windings.push(windingOf(id, kind, i < 6));
    return { kind: 'winding', winding: id, turns: kind.turns + (shift % 3), margins: margin };
  });
  return {
    format: 'layerwright-design/1',
    title: `sandwich of ${layers}`,
    origin: 'proposed',
    rules: 'iec-62368-1',
    supply: { kind: 'ac', voltage: '240 V' },
    surroundings: { hottestInsulation: '100 degC' },
    workingVoltages: [
      { between: ['pri', 'out'], rms: '250 V', peak: '520 V', frequency: '65 kHz' },
      { between: ['aux', 'out'], rms: '250 V', peak: '420 V', frequency: '65 kHz' },
    ],
    circuits: [
      { id: 'pri', name: 'Primary', role: 'mains' },
      { id: 'aux', name: 'Auxiliary', role: 'mains' },
      { id: 'out', name: 'Output', role: 'touchable' },
    ],
    former: {
      height: `${layers} mm`,
      wall: '0.8 mm',
      flange: '0.8 mm',
      material: 'phenolic',
      // another width each time, so that nothing solved before can be used again
      chambers: [{ width: `${15 + shift * 0.05} mm` }],
    },
    core: { bond: 'floating', outerGap: '0.5 mm' },
    windings,
    layers: wound,
  };
}

interface Kind {
  readonly letter: string;
  readonly circuit: string;
  readonly conductor: string;
  readonly side: string;
  readonly turns: number;
}

const KINDS: readonly Kind[] = [
  { letter: 'P', circuit: 'pri', conductor: '0.2 mm', side: 'left', turns: 25 },
  { letter: 'A', circuit: 'aux', conductor: '0.2 mm', side: 'left', turns: 8 },
  { letter: 'S', circuit: 'out', conductor: '0.5 mm', side: 'right', turns: 8 },
];

function windingOf(
  id: string,
  { circuit, conductor, side }: Kind,
  hasLeads: boolean,
): Record<string, unknown> {
  const sleeve = { wall: '0.45 mm', into: '4 mm' };
  const lead = (way: string) => ({ at: side, exit: side, way, sleeve });
  const leads = hasLeads ? { start: lead('slot'), finish: lead('riser') } : 'not-judged';
  return { id, circuit, wire: { kind: 'enamelled', conductor, grade: 1 }, leads };
}
