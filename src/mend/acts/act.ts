// One act of mending: a field of the design file that is given another value, or a layer that is put in.
// Acts are data, so that a set of them can be applied, undone, compared and told.

import { editDesign, fieldAt } from '#model/edit/edit-design.ts';
import { insertAt } from '#model/edit/edit-list.ts';
import type { DesignFile } from '#model/schema/schema.ts';

export type ActKind =
  | 'margin'
  | 'fill'
  | 'plies'
  | 'tape-between'
  | 'tape-wide'
  | 'sleeve'
  | 'slot'
  | 'wire'
  | 'wrap'
  | 'wall'
  | 'outer-gap'
  | 'height'
  | 'width'
  | 'bridge'
  | 'bond'
  | 'tape-down'
  | 'order';

/** One field changed. */
export interface Change {
  readonly field: string;
  readonly from: unknown;
  readonly to: unknown;
}

interface ActBase {
  readonly kind: ActKind;
  /** What it acts upon; two acts on the same thing are never in one set. */
  readonly on: string;
}

/** Several fields that belong together are one act: both margins of a winding, the whole of a sleeve. */
export interface SetAct extends ActBase {
  readonly set: readonly { readonly field: string; readonly to: unknown }[];
  /** Length that the act gives, mm, where it can be given less or more; null where it is all or nothing. */
  readonly amount: number | null;
}

export interface InsertAct extends ActBase {
  readonly insert: { readonly list: string; readonly index: number; readonly entry: unknown };
  readonly amount: null;
}

export type Act = SetAct | InsertAct;

/** Layers put in last, so that the paths of the other acts hold. */
export const applyActs = (doc: DesignFile, acts: readonly Act[]): DesignFile =>
  [...acts]
    .sort((a, b) => insertPlace(b) - insertPlace(a))
    .sort((a, b) => Number('insert' in a) - Number('insert' in b))
    .reduce(applyAct, doc);

const insertPlace = (act: Act): number => ('insert' in act ? act.insert.index : 0);

const applyAct = (doc: DesignFile, act: Act): DesignFile =>
  'insert' in act
    ? insertAt(doc, act.insert.list, act.insert.index, act.insert.entry)
    : act.set.reduce((edited, { field, to }) => editDesign(edited, field, to), doc);

/** What a set of acts changes in a file, each field once with what stands there in the end; `from` null: nothing stood. */
export function changesOf(doc: DesignFile, acts: readonly Act[]): readonly Change[] {
  const inserted = acts.flatMap((act) =>
    'insert' in act
      ? [{ field: `${act.insert.list}[${act.insert.index}]`, from: null, to: act.insert.entry }]
      : [],
  );
  const last = new Map(
    acts.flatMap((act) => ('set' in act ? act.set.map(({ field, to }) => [field, to] as const) : [])),
  );
  const changed = [...last]
    .map(([field, to]) => ({ field, from: fieldAt(doc, field) ?? null, to }))
    .filter(({ from, to }) => JSON.stringify(from) !== JSON.stringify(to));
  return [...inserted, ...changed];
}

/** The same for sets that do the same. */
export const keyOf = (acts: readonly Act[]): string =>
  acts
    .map((act) => JSON.stringify(act))
    .sort()
    .join('\n');

/** Whether a set acts upon all that another does, in the same way. */
export const includesAll = (acts: readonly Act[], others: readonly Act[]): boolean =>
  others.every((other) => acts.some(({ kind, on }) => kind === other.kind && on === other.on));

/** The same for sets that act upon the same things in the same ways, whatever the amounts. */
export const shapeOf = (acts: readonly Act[]): string =>
  acts
    .map(({ kind, on }) => `${kind} ${on}`)
    .sort()
    .join('\n');
