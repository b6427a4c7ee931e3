// Where tests get their designs from: a build of two windings with tape between, as its file; a file with single fields
// changed by their paths; what is read from a file.

import { knownIds } from '#judge/conductors/known-ids.ts';
import type { KnownIds } from '#model/check/check-ids.ts';
import type { Design } from '#model/design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { readDesign } from '#model/read/read-design.ts';

/** Primary P on the mains side, output S, three plies of tape between them, no margins, in a chamber of 12 mm. */
export const TWO_WINDINGS = {
  format: 'layerwright-design/1',
  title: 'two windings',
  origin: 'proposed',
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
} satisfies DesignFile;

/** Throws with its faults where the file is no design. */
export function designOf(file: unknown, known: KnownIds = knownIds): Design {
  const read = readDesign(file, known);
  if (read.kind === 'bad') throw new Error(JSON.stringify(read.faults));
  return read.design;
}

/** New values by the field's path, e.g. `layers[1].plies`; undefined takes the field, or the item of a list, out. */
export type Changes = Readonly<Record<string, unknown>>;

/** A copy of the file with these fields changed, one after the other. */
export function changed(file: unknown, changes: Changes): unknown {
  const copy: unknown = apart(file);
  for (const [path, value] of Object.entries(changes)) change(copy, path, value);
  return copy;
}

type Node = Record<string, unknown>;

/** A copy in which no two places are the same object, so that changing one leaves the other. */
function apart(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(apart);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, apart(part)]));
}

function change(file: unknown, path: string, value: unknown): void {
  const keys = path.split(/[.[\]]+/).filter((key) => key !== '');
  const last = keys.pop() ?? '';
  const parent = keys.reduce((node, key) => node[key] as Node, file as Node);
  if (value !== undefined) parent[last] = apart(value);
  else if (Array.isArray(parent)) parent.splice(Number(last), 1);
  else delete parent[last];
}
