// What differs between two design files, field by field. Layers are compared with those they are (align-layers.ts); one that
// only one file has is told whole.

import type { DesignFile } from '#model/schema/schema.ts';
import { alignLayers } from './align-layers.ts';

export interface FieldChange {
  /** In the second file; in the first where the second has none such. */
  readonly field: string;
  /** Null where nothing stands. */
  readonly from: unknown;
  readonly to: unknown;
}

export function designChanges(a: DesignFile, b: DesignFile): readonly FieldChange[] {
  const { layers: layersA, ...restA } = a;
  const { layers: layersB, ...restB } = b;
  const layers = alignLayers(layersA, layersB).flatMap(({ a: i, b: j }): readonly FieldChange[] => {
    if (i === null) return [{ field: `layers[${j}]`, from: null, to: layersB[j!] }];
    if (j === null) return [{ field: `layers[${i}]`, from: layersA[i], to: null }];
    return differing(`layers[${j}]`, layersA[i], layersB[j]);
  });
  return [...layers, ...differing('', restA, restB)];
}

type Fields = Readonly<Record<string, unknown>>;

function differing(at: string, from: unknown, to: unknown): readonly FieldChange[] {
  if (JSON.stringify(from) === JSON.stringify(to)) return [];
  if (Array.isArray(from) && Array.isArray(to) && from.length === to.length)
    return from.flatMap((one, i) => differing(`${at}[${i}]`, one, to[i]));
  if (isFields(from) && isFields(to) && !('value' in from) && !('value' in to)) {
    const names = [...new Set([...Object.keys(from), ...Object.keys(to)])];
    return names.flatMap((name) => differing(at === '' ? name : `${at}.${name}`, from[name], to[name]));
  }
  return [{ field: at, from: from ?? null, to: to ?? null }];
}

const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
