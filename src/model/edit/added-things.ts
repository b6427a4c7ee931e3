// What is added to a build besides layers and windings, each as it begins: named, tied to what there is, and without any
// figure, for a figure is for whoever knows it to give. A free name is the wish, or the wish with a number after it.

import { unmeasured } from '#model/begin/unmeasured.ts';
import { fieldAt, editDesign } from './edit-design.ts';
import { insertAt } from './edit-list.ts';
import type { DesignFile } from '#model/schema/schema.ts';

type Add = (doc: DesignFile) => DesignFile;

export const addedThings = {
  circuit: (doc) => {
    const id = freeId(doc.circuits, 'out');
    return atEnd(doc, 'circuits', { id, name: `Output ${doc.circuits.length}`, role: 'touchable' });
  },
  outside: (doc) =>
    atEnd(doc, 'outside', { between: firstPair(doc), what: 'pin rows', materialGroup: 'unknown' }),
  bridge: (doc) =>
    atEnd(doc, 'bridges', {
      id: freeId(doc.bridges ?? [], 'CY1'),
      kind: 'capacitor',
      between: firstPair(doc),
      safetyClass: 'unknown',
    }),
  part: (doc) => atEnd(doc, 'parts', { id: freeId(doc.parts ?? [], 'part'), touches: ['core'] }),
  converter: (doc) =>
    editDesign(doc, 'converter', {
      mode: 'unknown',
      outputs: fedCircuits(doc).map((circuit) => ({ circuit })),
    }),
  bulk: (doc) => editDesign(doc, 'converter.bulk', {}),
  output: (doc) => atEnd(doc, 'converter.outputs', { circuit: fedCircuits(doc)[0] ?? '' }),
  variant: (doc) => {
    const { outputs = [], variants = [] } = doc.converter ?? {};
    return atEnd(doc, 'converter.variants', { name: `variant ${variants.length + 1}`, outputs });
  },
  /** A chamber more at the right, with its divider. */
  chamber: (doc) => {
    const { chambers, dividers = [] } = doc.former;
    const wider = insertAt(doc, 'former.chambers', chambers.length, { width: unmeasured.width });
    return insertAt(wider, 'former.dividers', dividers.length, unmeasured.divider);
  },
} as const satisfies Readonly<Record<string, Add>>;

/** What the format takes only when it says something: filled in beside the file until then. */
export const begunEntries = {
  /** Of the first pair that has none yet; null where every pair has one. */
  workingVoltage: ({ workingVoltages: given = [], ...doc }: DesignFile) => {
    const between = pairsOf(doc).find(
      (pair) => !given.some((each) => pair.every((id) => each.between.includes(id))),
    );
    return between === undefined ? null : { between, basis: 'measured' };
  },
  evidence: ({ evidence = [] }: DesignFile) => ({
    id: freeId(evidence, 'E1'),
    kind: 'measurement',
    fields: [],
  }),
} as const;

/** Records that a choice puts in, whose own fields stand beside it then. */
export const begunRecords = {
  plies: { plies: 'unknown', plyThickness: 'unknown' },
  roundTube: { shape: 'round' },
  rectangularTube: { shape: 'rectangular' },
  mainsRail: { kind: 'mains' },
  boostedRail: { kind: 'boosted' },
  ownVoltage: { basis: 'stated' },
  sleeve: { wall: 'unknown', into: 'unknown' },
  link: { side: 'unknown', way: 'unknown', sleeve: 'unknown' },
  lead: { at: 'unknown', exit: 'unknown', way: 'unknown', sleeve: 'unknown' },
} as const;

function atEnd(doc: DesignFile, list: string, item: unknown): DesignFile {
  const found = fieldAt(doc, list);
  return insertAt(doc, list, Array.isArray(found) ? found.length : 0, item);
}

const firstPair = (doc: DesignFile): readonly string[] => doc.circuits.slice(0, 2).map(({ id }) => id);

const pairsOf = ({ circuits }: Pick<DesignFile, 'circuits'>): readonly (readonly [string, string])[] =>
  circuits.flatMap((a, i) => circuits.slice(i + 1).map((b) => [a.id, b.id] as const));

/** What a converter may feed. */
const fedCircuits = ({ circuits }: DesignFile): readonly string[] =>
  circuits.filter(({ role }) => role !== 'mains').map(({ id }) => id);

function freeId(taken: readonly { readonly id: string }[], wish: string): string {
  const isFree = (id: string): boolean => !taken.some((each) => each.id === id);
  if (isFree(wish)) return wish;
  for (let n = 2; ; n++) if (isFree(`${wish}${n}`)) return `${wish}${n}`;
}
