// A build in which everything is known and the barrier holds: filled margins of 3 mm on both windings, three plies of
// 0.06 mm that each stand 5 kV. Tests change single fields by their paths and judge it.

import { told, type ToldVerdict } from '#words/told.ts';
import type { Design } from '#model/design.ts';
import { readDesign } from '#model/read/read-design.ts';
import { judge } from '#judge/judging/judge.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import type { PairVerdict } from '#judge/verdict/pair.ts';

export const MARGINS = {
  left: { width: '3 mm', filled: true },
  right: { width: '3 mm', filled: true },
};
export const NO_MARGINS = { left: { width: '0 mm' }, right: { width: '0 mm' } };

export const PLIES = {
  kind: 'tape',
  material: 'polyester-tape-25',
  plies: 3,
  plyThickness: '0.06 mm',
  plyWithstand: '5 kV',
};

const MARGIN_BUILD = {
  format: 'layerwright-design/1',
  title: 'bench',
  origin: 'proposed',
  rules: 'iec-62368-1',
  supply: { kind: 'ac', voltage: '240 V' },
  surroundings: {
    temperature: { method: 'thermocouple', condition: 'normal' },
    hottestInsulation: '100 degC',
  },
  workingVoltages: [{ between: ['pri', 'out'], rms: '250 V', peak: '500 V', frequency: '65 kHz' }],
  circuits: [
    { id: 'pri', role: 'mains' },
    { id: 'out', role: 'touchable' },
  ],
  former: {
    height: '5 mm',
    wall: '0.8 mm',
    flange: '0.8 mm',
    material: 'phenolic',
    chambers: [{ width: '12 mm' }],
  },
  core: { bond: 'floating', outerGap: '0.5 mm' },
  windings: [
    {
      id: 'P',
      circuit: 'pri',
      wire: { kind: 'enamelled', conductor: '0.2 mm', grade: 1, overallDiameter: '0.23 mm' },
      leads: 'not-judged',
    },
    {
      id: 'S',
      circuit: 'out',
      wire: { kind: 'enamelled', conductor: '0.5 mm', grade: 1, overallDiameter: '0.55 mm' },
      leads: 'not-judged',
    },
  ],
  layers: [
    { kind: 'winding', winding: 'P', turns: 20, margins: MARGINS },
    PLIES,
    { kind: 'winding', winding: 'S', turns: 8, margins: MARGINS },
  ],
};

/** New values by the field's path, e.g. `layers[1].plies`; undefined takes the field out. */
export type Changes = Readonly<Record<string, unknown>>;

export function designWith(changes: Changes = {}): Design {
  const file: unknown = JSON.parse(JSON.stringify(MARGIN_BUILD));
  for (const [path, value] of Object.entries(changes)) change(file, path, value);
  const read = readDesign(file, knownIds);
  if (read.kind === 'bad') throw new Error(JSON.stringify(read.faults));
  return read.design;
}

/** As it is handed out, with its words. */
export const toldWith = (changes: Changes = {}): ToldVerdict => told(verdictWith(changes));

export const verdictWith = (changes: Changes = {}): Verdict => judge(designWith(changes)).verdict;

export function pairOf(verdict: Verdict, a = 'pri', b = 'out'): PairVerdict {
  const found = verdict.pairs.find(({ between }) => between.includes(a) && between.includes(b));
  if (!found) throw new Error(`no pair ${a} ${b}`);
  return found;
}

/** Grade of the barrier, and its verdict. */
export function barrierWith(changes: Changes = {}): readonly [achieved: string, verdict: string] {
  const { achieved, verdict } = pairOf(verdictWith(changes));
  return [achieved, verdict];
}

type Node = Record<string, unknown>;

function change(file: unknown, path: string, value: unknown): void {
  const keys = path.split(/[.[\]]+/).filter((key) => key !== '');
  const last = keys.pop() ?? '';
  const parent = keys.reduce((node, key) => node[key] as Node, file as Node);
  if (value === undefined) delete parent[last];
  else parent[last] = structuredClone(value);
}
