// Builds for the benchmark: a sandwich of three circuits, as many layers as asked for, six lead-outs.

/** Layers repeat primary, tape, auxiliary, tape, secondary, tape; every winding has its leads. */
export function sandwich(layers: number, shift = 0): Record<string, unknown> {
  const margin = { left: { width: '3 mm', filled: true }, right: { width: '3 mm', filled: true } };
  const tape = { kind: 'tape', material: 'polyester-tape-25', plies: 3, plyThickness: '0.06 mm' };
  const order = ['P', 'A', 'S'];
  const sleeve = { wall: '0.45 mm', into: '4 mm' };
  const lead = (side: string, way: string) => ({ at: side, exit: side, way, sleeve });
  const wound = Array.from({ length: layers }, (_, i) => {
    if (i % 2 === 1) return tape;
    const winding = order[(i / 2) % 3]!;
    const turns = winding === 'P' ? 25 : 8 + (shift % 3);
    return { kind: 'winding', winding, turns, margins: margin };
  });
  const winding = (id: string, circuit: string, conductor: string, side: string) => ({
    id,
    circuit,
    wire: { kind: 'enamelled', conductor, grade: 1 },
    leads: { start: lead(side, 'slot'), finish: lead(side, 'riser') },
    links: order.indexOf(id) >= 0 ? linksOf(wound as { winding?: string }[], id) : [],
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
      chambers: [{ width: `${15 + shift * 0.05} mm` }],
    },
    core: { bond: 'floating', outerGap: '0.5 mm' },
    windings: [
      winding('P', 'pri', '0.2 mm', 'left'),
      winding('A', 'aux', '0.2 mm', 'left'),
      winding('S', 'out', '0.5 mm', 'right'),
    ],
    layers: wound,
  };
}

const linksOf = (layers: readonly { winding?: string }[], id: string) =>
  layers
    .filter((layer) => layer.winding === id)
    .slice(1)
    .map(() => ({ side: 'left', way: 'riser', sleeve: { wall: '0.45 mm', into: '4 mm' } }));
