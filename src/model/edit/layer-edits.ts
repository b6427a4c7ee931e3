// What one does to layers as a whole: put in, copy, take out, move, turn into another kind. Documents in, documents out.
// Layers are told by their index in the file: 0 lies on the former's tube.

import { insertAt, moveItem, removeAt } from './edit-list.ts';
import { editDesign } from './edit-design.ts';
import { unmeasured } from '#model/begin/unmeasured.ts';
import type { DesignFile } from '#model/schema/schema.ts';

export type LayerFile = DesignFile['layers'][number];
export type LayerKind = LayerFile['kind'];

export const addLayer = (doc: DesignFile, at: number, layer: LayerFile): DesignFile =>
  withoutStrays(insertAt(doc, 'layers', at, layer));

/** Copies each just outside itself. */
export const duplicateLayers = (doc: DesignFile, indices: readonly number[]): DesignFile =>
  descending(indices).reduce(
    // a copy lies over its original, not beside it
    (edited, index) => insertAt(edited, 'layers', index + 1, withoutBeside(doc.layers[index])),
    doc,
  );

function withoutBeside(layer: LayerFile | undefined): LayerFile | undefined {
  if (layer?.kind !== 'winding' || layer.beside === undefined) return layer;
  const { beside, ...over } = layer;
  void beside;
  return over;
}

/** A winding lies beside another only while that is the layer before it in its chamber. */
const withoutStrays = (doc: DesignFile): DesignFile =>
  doc.layers.reduce((edited, layer, i) => {
    if (layer.kind !== 'winding' || layer.beside !== true) return edited;
    const before = doc.layers.slice(0, i).findLast((each) => (each.chamber ?? 0) === (layer.chamber ?? 0));
    return before?.kind === 'winding' ? edited : editDesign(edited, `layers[${i}].beside`, undefined);
  }, doc);

export const removeLayers = (doc: DesignFile, indices: readonly number[]): DesignFile =>
  withoutStrays(descending(indices).reduce((edited, index) => removeAt(edited, 'layers', index), doc));

export interface Moved {
  readonly doc: DesignFile;
  /** Where a layer lies afterwards, by the index that it had. */
  readonly placeOf: (layer: number) => number;
}

/** Gathers layers, in their order, just inside the one at `before`; past the last that is outermost. */
export function moveLayers(doc: DesignFile, indices: readonly number[], before: number): Moved {
  const moving = new Set(indices);
  const all = [...doc.layers.keys()];
  const staying = (some: readonly number[]) => some.filter((layer) => !moving.has(layer));
  const order = [
    ...staying(all.slice(0, before)),
    ...all.filter((layer) => moving.has(layer)),
    ...staying(all.slice(before)),
  ];
  let now = all;
  let edited = doc;
  for (const [to, layer] of order.entries()) {
    const from = now.indexOf(layer);
    edited = moveItem(edited, 'layers', from, to);
    now = now.toSpliced(from, 1).toSpliced(to, 0, layer);
  }
  return { doc: withoutStrays(edited), placeOf: (layer) => order.indexOf(layer) };
}

/** Keeps what both kinds have: chamber, margins, insets. A winding needs a winding to belong to. */
export function convertLayer(doc: DesignFile, index: number, kind: LayerKind): DesignFile {
  const layer = doc.layers[index];
  if (layer === undefined || layer.kind === kind) return doc;
  const fresh = newLayer(doc, kind);
  if (fresh === null) return doc;
  const kept = {
    ...(layer.chamber === undefined ? {} : { chamber: layer.chamber }),
    ...(layer.margins === undefined ? {} : { margins: layer.margins }),
    ...(layer.kind !== 'winding' && fresh.kind !== 'winding' && layer.inset !== undefined
      ? { inset: layer.inset }
      : {}),
  };
  return withoutStrays(editDesign(doc, `layers[${index}]`, { ...fresh, ...kept }));
}

/** A layer of which nothing is known yet; null for a winding where the build has none. */
export function newLayer(doc: DesignFile, kind: LayerKind, winding = doc.windings[0]?.id): LayerFile | null {
  switch (kind) {
    case 'tape':
      return { kind, plies: 'unknown', plyThickness: 'unknown' };
    case 'screen':
      return { kind, thickness: unmeasured.foil };
    case 'winding':
      return winding === undefined ? null : { kind, winding, turns: 'unknown' };
  }
}

const descending = (indices: readonly number[]): readonly number[] =>
  [...new Set(indices)].sort((a, b) => b - a);
