// What a mend brings each layer to, in the few signs that fit on a drawing: a margin's new width, plies before and after, a wire.

import type { Change } from '#mend/acts/act.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { entryWords } from './entry-words.ts';

export interface TargetNumber {
  /** Place of the layer in the build as it was; of a layer put in, in the build as it will be. */
  readonly layer: number;
  readonly isNew: boolean;
  /** The edge that moves; null for what holds of the whole layer. */
  readonly side: 'left' | 'right' | null;
  readonly says: string;
}

export function targetNumbers(changes: readonly Change[], doc: DesignFile): readonly TargetNumber[] {
  return changes.flatMap(({ field, from, to }): readonly TargetNumber[] => {
    const [, at, rest = ''] = /^layers\[(\d+)\]\.?(.*)$/.exec(field) ?? [];
    if (at === undefined) return wireNumbers(field, to, doc);
    const layer = Number(at);
    if (rest === '') return from === null ? [{ layer, isNew: true, side: null, says: 'new' }] : [];
    const [, side] = /^(?:margins|insets)\.(left|right)(?:\.width)?$/.exec(rest) ?? [];
    if (side === 'left' || side === 'right')
      return isObject(to) ? [] : [{ layer, isNew: false, side, says: entryWords(to) }];
    if (rest !== 'plies') return [];
    const was = from === 'unknown' ? '?' : entryWords(from);
    return [{ layer, isNew: false, side: null, says: `${was} → ${entryWords(to)} plies` }];
  });
}

/** A wire stands on every layer that is wound of it. */
function wireNumbers(field: string, to: unknown, { windings, layers }: DesignFile): readonly TargetNumber[] {
  const winding = windings[Number(/^windings\[(\d+)\]\.wire$/.exec(field)?.[1] ?? NaN)];
  if (winding === undefined) return [];
  return layers.flatMap((layer, i) =>
    layer.kind === 'winding' && layer.winding === winding.id
      ? [{ layer: i, isNew: false, side: null, says: entryWords(to) }]
      : [],
  );
}

const isObject = (value: unknown): boolean => typeof value === 'object' && value !== null;
