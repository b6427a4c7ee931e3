// A small whole design for the tests of this room; each test lays its own fields over it.

import type { Design } from '#model/design.ts';
import { designOf, TWO_WINDINGS } from '#test/designs.ts';

export const BENCH = { ...TWO_WINDINGS, title: 'bench', origin: 'lesson' };

export const KNOWN = {
  rules: ['iec-62368-1'],
  plies: new Map(),
  tapes: ['polyester-tape-25'],
  formers: ['pa66'],
  sleeves: ['ptfe'],
  markets: [],
};

export const benchDesign = (over: Readonly<Record<string, unknown>> = {}): Design =>
  designOf({ ...BENCH, ...over }, KNOWN);
