// What a designer is asked before anything is wound: every figure with its name, its kind, and whether it may stay empty.

import type { DimensionName } from '#model/quantity/dimension.ts';
import { notUnderstood } from '#state/fields/quantity-echo.ts';

export interface DesignEntry {
  readonly name: string;
  readonly label: string;
  readonly dimension: DimensionName | 'turns';
  /** Empty is not known, and nothing is invented for it. */
  readonly isOptional: boolean;
}

const entry = (
  name: string,
  label: string,
  dimension: DesignEntry['dimension'],
  isOptional = true,
): DesignEntry => ({ name, label, dimension, isOptional });

export const designEntries = {
  sizes: [
    entry('width', 'between the flanges', 'length', false),
    entry('height', 'tube to rim', 'length', false),
    entry('wall', 'wall of the tube', 'length'),
    entry('flange', 'flanges', 'length'),
    entry('gap', 'core above the rim', 'length'),
  ],
  figures: [
    entry('supply', 'highest mains', 'voltsRms', false),
    entry('output', 'output', 'voltsDc'),
    entry('power', 'power', 'power'),
  ],
  wound: [
    entry('turnsP', 'turns, Primary', 'turns'),
    entry('turnsS', 'turns, Output', 'turns'),
    entry('wireP', 'wire, Primary', 'length'),
    entry('wireS', 'wire, Output', 'length'),
  ],
  converter: [
    entry('switching', 'switching', 'frequency'),
    entry('reflected', 'reflected', 'voltsPeak'),
    entry('spike', 'spike above it', 'voltsPeak'),
  ],
} as const satisfies Readonly<Record<string, readonly DesignEntry[]>>;

/** Why what was typed cannot be taken; null where it can. */
export function entryFault({ dimension }: DesignEntry, text: string): string | null {
  if (text.trim() === '') return null;
  if (dimension === 'turns') return /^\s*\d+\s*$/.test(text) ? null : 'expected a whole number';
  return notUnderstood(text, dimension);
}

/** Those without which nothing can be laid out. */
export const missingEntries = (textOf: (name: string) => string): readonly DesignEntry[] =>
  Object.values(designEntries)
    .flat()
    .filter(({ name, isOptional }) => !isOptional && textOf(name).trim() === '');
