// A design file of which nothing is known yet: two circuits, a former of one chamber, the default rule book. No figure
// stands in it that somebody would have to have given, so that a market can bring its own altitude and category.

import { FORMAT, type DesignFile } from '#model/schema/schema.ts';
import { unmeasured } from './unmeasured.ts';

export const blankDesign = (): DesignFile => ({
  format: FORMAT,
  title: 'New build',
  origin: 'proposed',
  rules: 'iec-62368-1',
  supply: { kind: 'ac', voltage: unmeasured.supply },
  surroundings: { hottestInsulation: 'unknown' },
  circuits: [
    { id: 'pri', name: 'Primary', role: 'mains' },
    { id: 'out', name: 'Output', role: 'touchable' },
  ],
  former: {
    height: unmeasured.height,
    wall: 'unknown',
    flange: 'unknown',
    material: 'unknown',
    chambers: [{ width: unmeasured.width }],
  },
  core: { bond: 'unknown', outerGap: 'unknown' },
  windings: [],
  layers: [],
});
