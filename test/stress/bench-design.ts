// A small whole design for the tests of this room; each test lays its own fields over it.

import type { Design } from '#model/design.ts';
import { readDesign } from '#model/read/read-design.ts';

export const BENCH = {
  format: 'layerwright-design/1',
  title: 'bench',
  origin: 'lesson',
  rules: 'iec-62368-1',
  supply: { kind: 'ac', voltage: '240 V' },
  circuits: [
    { id: 'pri', role: 'mains' },
    { id: 'out', role: 'touchable' },
  ],
  former: { height: '5 mm', wall: '0.8 mm', flange: '0.8 mm', chambers: [{ width: '12 mm' }] },
  windings: [
    { id: 'P', circuit: 'pri', wire: { kind: 'enamelled', conductor: '0.2 mm', grade: 1 } },
    { id: 'S', circuit: 'out', wire: { kind: 'enamelled', conductor: '0.5 mm', grade: 1 } },
  ],
  layers: [
    { kind: 'winding', winding: 'P', turns: 60 },
    { kind: 'tape', material: 'polyester-tape-25', plies: 3 },
    { kind: 'winding', winding: 'S', turns: 8 },
  ],
};

export const KNOWN = {
  rules: ['iec-62368-1'],
  plies: new Map(),
  tapes: ['polyester-tape-25'],
  formers: ['pa66'],
  sleeves: ['ptfe'],
  markets: [],
};

export function benchDesign(over: Readonly<Record<string, unknown>> = {}): Design {
  const read = readDesign({ ...BENCH, ...over }, KNOWN);
  if (read.kind === 'bad') throw new Error(JSON.stringify(read.faults));
  return read.design;
}
