// How the fields of a task are asked for: what each takes, and which of them hold the same figure and are set at once.

import type { DimensionName } from '#model/quantity/dimension.ts';
import { fieldAt } from '#model/edit/edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { FieldKind } from '#state/fields/field-text.ts';
import { roleOptions, safetyClassOptions, type Option } from '#state/fields/field-options.ts';
import { fieldWords } from '#words/design/field-words.ts';

export type TaskField =
  | { readonly kind: 'typed'; readonly as: FieldKind; readonly dimension: DimensionName }
  | { readonly kind: 'choice'; readonly options: readonly Option[]; readonly numeric: boolean }
  | { readonly kind: 'check' };

export interface TaskGroup {
  readonly label: string;
  /** More than one: they are set together. */
  readonly paths: readonly string[];
  readonly field: TaskField;
}

const counts = (most: number): readonly Option[] =>
  Array.from({ length: most }, (_, i) => ({ value: String(i + 1), label: String(i + 1) }));

const CHOICES: Readonly<Record<string, { readonly options: readonly Option[]; readonly numeric: boolean }>> =
  {
    role: { options: roleOptions, numeric: false },
    safetyClass: { options: safetyClassOptions, numeric: false },
    pollutionDegree: { options: counts(3), numeric: true },
    insulationLayers: { options: counts(3), numeric: true },
  };

export function taskField(path: string, value: unknown): TaskField {
  const key = lastKey(path);
  const choice = CHOICES[key];
  if (choice !== undefined) return { kind: 'choice', ...choice };
  if (typeof value === 'boolean' || key === 'filled') return { kind: 'check' };
  if (key === 'plies') return { kind: 'typed', as: 'count', dimension: 'length' };
  if (/withstand$/i.test(key)) return { kind: 'typed', as: 'withstand', dimension: 'voltsRms' };
  if (key === 'hottestInsulation') return { kind: 'typed', as: 'quantity', dimension: 'temperature' };
  return { kind: 'typed', as: 'quantity', dimension: 'length' };
}

const lastKey = (path: string): string => /([A-Za-z]+)$/.exec(path)?.[1] ?? '';

/** Fields of one kind that began with the same figure are one entry; a whole list is no field, buttons change it. */
export function taskGroups(start: DesignFile, fields: readonly string[]): readonly TaskGroup[] {
  const groups = new Map<string, string[]>();
  for (const path of fields.filter((each) => !/^[A-Za-z]+$/.test(each))) {
    const key = `${lastKey(path)} ${JSON.stringify(fieldAt(start, path))}`;
    groups.set(key, [...(groups.get(key) ?? []), path]);
  }
  return [...groups.values()].map((paths) => {
    const [first = ''] = paths;
    return { label: labelOf(start, paths), paths, field: taskField(first, fieldAt(start, first)) };
  });
}

function labelOf(start: DesignFile, paths: readonly string[]): string {
  const [first = ''] = paths;
  if (paths.length === 1) return fieldWords(start, first);
  if (!paths.every((path) => path.includes('.margins.')))
    return `${fieldWords(start, first)}, and ${paths.length - 1} more`;
  const layers = [...new Set(paths.map((path) => /^layers\[(\d+)\]/.exec(path)?.[1] ?? ''))];
  return `margin on both sides, layer ${layers.map((layer) => Number(layer) + 1).join(' and ')}`;
}
