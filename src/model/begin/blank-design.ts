// A design file with nothing wound yet: two circuits, a former of one chamber, the default rule book. Altitude and
// overvoltage category are left to the reader's word, else a market could not bring its own.

import { FORMAT, type DesignFile } from '#model/schema/schema.ts';

export const blankDesign = (): DesignFile => ({
  format: FORMAT,
  title: 'New build',
  origin: 'proposed',
  rules: 'iec-62368-1',
  supply: { kind: 'ac', voltage: '240 V', tolerance: 0.1, frequency: '50 Hz' },
  surroundings: { pollutionDegree: 2, impregnation: 'none' },
  circuits: [
    { id: 'pri', name: 'Primary', role: 'mains' },
    { id: 'out', name: 'Output', role: 'touchable' },
  ],
  former: {
    height: '3 mm',
    wall: '0.8 mm',
    flange: '0.8 mm',
    material: 'phenolic',
    chambers: [{ width: '10 mm' }],
  },
  core: { bond: 'floating', outerGap: '0.5 mm' },
  windings: [],
  layers: [],
});
