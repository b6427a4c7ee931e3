// Layers as text: what is copied in one build is pasted into another, in another tab or as a template. The windings of the
// layers go with them; a winding that is there already, just the same, is not doubled, one of the same name gets another.

import { freeWindingId } from './circuit-edits.ts';
import { insertAt } from './edit-list.ts';
import { addLayer, type LayerFile } from './layer-edits.ts';
import { layersOfText, type LayersText } from './layers-of-text.ts';
import type { DesignFile } from '#model/schema/schema.ts';

type Winding = LayersText['windings'][number];
type Circuit = LayersText['circuits'][number];

/** From the innermost outward, whatever order they were picked in. */
export function layersText(doc: DesignFile, picked: readonly number[]): string {
  const layers = [...new Set(picked)].sort((a, b) => a - b).flatMap((layer) => doc.layers[layer] ?? []);
  const named = new Set(layers.flatMap((layer) => (layer.kind === 'winding' ? [layer.winding] : [])));
  const windings = doc.windings.filter(({ id }) => named.has(id));
  const owners = new Set([
    ...windings.map(({ circuit }) => circuit),
    ...layers.flatMap((layer) =>
      layer.kind === 'screen' && layer.circuit !== undefined ? [layer.circuit] : [],
    ),
  ]);
  const circuits = doc.circuits.filter(({ id }) => owners.has(id));
  const text: LayersText = { format: 'layerwright-layers/1', layers, windings, circuits };
  return JSON.stringify(text, null, 2);
}

export interface Pasted {
  readonly doc: DesignFile;
  /** Where they lie now. */
  readonly layers: readonly number[];
}

/** Just inside the layer at `before`; null where the text holds no layers. */
export function pasteLayers(doc: DesignFile, text: string, before: number): Pasted | null {
  const found = layersOfText(text);
  if (found === null || found.layers.length === 0) return null;
  const circuits = new Map<string, string>();
  let edited = doc;
  for (const circuit of found.circuits) {
    const same = sameCircuit(edited, circuit);
    circuits.set(circuit.id, same ?? circuit.id);
    if (same === null) edited = insertAt(edited, 'circuits', edited.circuits.length, circuit);
  }
  const windings = new Map<string, string>();
  for (const winding of found.windings) {
    const moved = { ...winding, circuit: circuits.get(winding.circuit) ?? winding.circuit };
    const same = edited.windings.find((each) => JSON.stringify(each) === JSON.stringify(moved));
    const id = same?.id ?? freeName(edited, moved);
    windings.set(winding.id, id);
    if (same === undefined) edited = insertAt(edited, 'windings', edited.windings.length, { ...moved, id });
  }
  const chambers = edited.former.chambers.length;
  const layers = found.layers.map((layer) => renamed(layer, windings, circuits, chambers));
  layers.forEach((layer, i) => (edited = addLayer(edited, before + i, layer)));
  return { doc: edited, layers: layers.map((_, i) => before + i) };
}

/** The circuit of the same id and role, else the only one of its role. */
function sameCircuit(doc: DesignFile, { id, role }: Circuit): string | null {
  const alike = doc.circuits.filter((each) => each.role === role);
  return alike.find((each) => each.id === id)?.id ?? (alike.length === 1 ? (alike[0]?.id ?? null) : null);
}

function freeName(doc: DesignFile, { id, circuit }: Winding): string {
  const taken = doc.windings.map((each) => each.id);
  const place = doc.circuits.findIndex((each) => each.id === circuit);
  return taken.includes(id) ? freeWindingId(taken, place) : id;
}

function renamed(
  layer: LayerFile,
  windings: ReadonlyMap<string, string>,
  circuits: ReadonlyMap<string, string>,
  chambers: number,
): LayerFile {
  const { chamber, ...rest } = layer;
  const kept = chamber !== undefined && chamber < chambers ? { ...rest, chamber } : rest;
  if (kept.kind === 'winding') return { ...kept, winding: windings.get(kept.winding) ?? kept.winding };
  if (kept.kind === 'screen' && kept.circuit !== undefined)
    return { ...kept, circuit: circuits.get(kept.circuit) ?? kept.circuit };
  return kept;
}
