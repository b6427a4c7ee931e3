// The ways of the trade by which a build is mended: each reaches for its own kinds of acts first. A dive by one of them gathers
// what all the weak spots ask for at once, so that a build with many of them is mended in a few judgements.

import type { DesignFile } from '#model/schema/schema.ts';
import type { Act, ActKind } from '#mend/acts/act.ts';

export interface Style {
  /** What it reaches for first; kinds that are not named are never taken. */
  readonly kinds: readonly ActKind[];
  /** Of those that it would take, which it may. */
  readonly takes: (act: Act, doc: DesignFile) => boolean;
}

/** What a hand does at the bench, light first; what is in the way outside the window comes with it. */
const SMALL: readonly ActKind[] = ['bridge', 'tape-wide', 'fill', 'tape-down'];
const LEADS: readonly ActKind[] = ['sleeve', 'slot'];
const REST: readonly ActKind[] = ['tape-between', 'outer-gap', 'bond', 'wrap', 'wall', 'height', 'width'];

/** Plies that the rule of three asks for; what is more only lengthens the way round a tape's edge. */
const FEW_PLIES = 2;

const windingsOf = (act: Act): readonly number[] =>
  [...act.on.matchAll(/layers\[(\d+)\]\.margins/g)].map(([, index]) => Number(index));

const isOfRole = (act: Act, doc: DesignFile, role: string): boolean => {
  const found = /^windings\[(\d+)\]\.wire$/.exec(act.on);
  const circuit = found === null ? undefined : doc.windings[Number(found[1])]?.circuit;
  return doc.circuits.some(({ id, role: own }) => id === circuit && own === role);
};

const isFew = (act: Act): boolean => act.kind !== 'plies' || (act.amount ?? 0) <= FEW_PLIES;

/** Margins of one winding, the outer or the inner of those that a spot names, or of both. */
const byMargins = (isIts: (layers: readonly number[], doc: DesignFile) => boolean): Style => ({
  kinds: [...SMALL, 'plies', 'margin', ...LEADS, ...REST],
  takes: (act, doc) => isFew(act) && (act.kind !== 'margin' || isIts(windingsOf(act), doc)),
});

const isMainsLayer = (doc: DesignFile, index: number): boolean => {
  const layer = doc.layers[index];
  const winding = layer?.kind === 'winding' ? layer.winding : null;
  const circuit = doc.windings.find(({ id }) => id === winding)?.circuit;
  return doc.circuits.some(({ id, role }) => id === circuit && role === 'mains');
};

const byWire = (role: string): Style => ({
  kinds: [...SMALL, 'wire', 'plies', ...LEADS, 'margin', ...REST],
  takes: (act, doc) => isFew(act) && (act.kind !== 'wire' || isOfRole(act, doc, role)),
});

export const STYLES: readonly Style[] = [
  byMargins(([only, other], doc) => other === undefined && only !== undefined && !isMainsLayer(doc, only)),
  byWire('touchable'),
  byMargins(([only, other], doc) => other === undefined && only !== undefined && isMainsLayer(doc, only)),
  byMargins((layers) => layers.length === 2),
  { kinds: [...SMALL, 'plies', 'margin', 'slot', 'sleeve', ...REST], takes: isFew },
  byWire('mains'),
  { kinds: [...SMALL, 'plies', ...LEADS, ...REST], takes: () => true },
];

/** Of the acts to each spot those that this style takes: of the kind that it reaches for first, on as few things as it can. */
export function chosenBy(style: Style, acts: readonly (readonly Act[])[], doc: DesignFile): readonly Act[] {
  const chosen = new Map<string, Act>();
  for (const ofSpot of acts) {
    const may = ofSpot.filter((act) => style.kinds.includes(act.kind) && style.takes(act, doc));
    const kind = style.kinds.find((one) => may.some((act) => act.kind === one));
    const alike = may.filter((act, i) => act.kind === kind && may.findIndex(({ on }) => on === act.on) === i);
    const known = alike.filter(({ on }) => chosen.has(on));
    // each lead has a sleeve of its own; of other things one mends the spot, one that is taken already before another
    const taken = kind === 'sleeve' || kind === 'slot' ? alike : [...known, ...alike].slice(0, 1);
    for (const act of taken) if (sizeOf(act) > sizeOf(chosen.get(act.on))) chosen.set(act.on, act);
  }
  return [...chosen.values()];
}

/** Of two on the same thing the larger serves both spots; what is all or nothing is the largest. */
const sizeOf = (act: Act | undefined): number => (act === undefined ? -1 : (act.amount ?? Infinity));
