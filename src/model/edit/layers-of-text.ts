// Reads layers out of a text from outside, which may be anything: only what has the shape of layers, windings and circuits
// passes. What stands inside them is read with the whole design file, which says what is wrong.

import { hostileFaults } from '#model/faults/hostile-faults.ts';
import type { DesignFile } from '#model/schema/schema.ts';

export interface LayersText {
  readonly format: 'layerwright-layers/1';
  readonly layers: readonly DesignFile['layers'][number][];
  readonly windings: readonly DesignFile['windings'][number][];
  readonly circuits: readonly DesignFile['circuits'][number][];
}

const MOST_SIGNS = 200_000;
const KINDS = ['winding', 'tape', 'screen'];

export function layersOfText(text: string): LayersText | null {
  if (text.length > MOST_SIGNS || !text.includes('layerwright-layers/1')) return null;
  const found = parsed(text);
  if (!isRecord(found) || found['format'] !== 'layerwright-layers/1' || hostileFaults(found).length > 0)
    return null;
  const { layers, windings, circuits } = found;
  if (!isRecords(layers) || !isRecords(windings) || !isRecords(circuits)) return null;
  const isNamed = ({ id }: Readonly<Record<string, unknown>>): boolean => typeof id === 'string';
  if (!layers.every(({ kind }) => KINDS.includes(String(kind)))) return null;
  return windings.every(isNamed) && circuits.every(isNamed) ? (found as unknown as LayersText) : null;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isRecords = (value: unknown): value is readonly Readonly<Record<string, unknown>>[] =>
  Array.isArray(value) && value.every(isRecord);
