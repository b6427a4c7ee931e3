// A build with faults, before it can lie on the sheet: each fault by its field, what stands there, and edits of it. Kept for as
// long as the tab lasts, so that a reload loses none of it.

import { jsonAt, keysOfFault, withJsonAt } from '#model/edit/edit-json.ts';
import type { BadInput } from '#model/faults/bad-input.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { KeptBuild } from '#state/storage/build-store.ts';
import { openable, openableJson, type Openable } from '#state/storage/import-design.ts';

const KEY = 'layerwright-repair';

/** The kept build that it is of, if of one. */
type Kept = Pick<KeptBuild, 'id' | 'version'>;

export class Repair {
  #json: unknown = $state.raw();
  readonly kept: Kept | null;

  constructor(json: unknown, kept: Kept | null) {
    this.#json = json;
    this.kept = kept;
    this.#remember();
  }

  /** What lay here when the tab was left; null where nothing did. */
  static left(): Repair | null {
    try {
      const left = JSON.parse(sessionStorage.getItem(KEY) ?? 'null') as {
        json: unknown;
        kept: Kept | null;
      } | null;
      return left === null ? null : new Repair(left.json, left.kept);
    } catch {
      return null;
    }
  }

  static forget(): void {
    try {
      sessionStorage.removeItem(KEY);
    } catch {
      // blocked storage kept nothing
    }
  }

  readonly #opened: Openable = $derived.by(() => openableJson(this.#json));

  get faults(): readonly BadInput[] {
    return this.#opened.kind === 'faulty' ? this.#opened.faults : [];
  }

  /** The build, once it has no fault. */
  get doc(): DesignFile | null {
    return this.#opened.kind === 'build' ? this.#opened.doc : null;
  }

  get title(): string {
    const title = jsonAt(this.#json, ['title']);
    return typeof title === 'string' && title !== '' ? title : 'without a title';
  }

  get text(): string {
    return `${JSON.stringify(this.#json, null, 2)}\n`;
  }

  /** What stands at the field as one may type it; null where the fault is of no single field. */
  typed(field: string): string | null {
    const keys = keysOfFault(field);
    if (keys === null) return null;
    const value = jsonAt(this.#json, keys);
    return value === undefined ? '' : typeof value === 'string' ? value : JSON.stringify(value);
  }

  /** A text stays one where one stood; else what is typed is taken as JSON where it is some. */
  put(field: string, typed: string): void {
    const keys = keysOfFault(field);
    if (keys === null) return;
    const wasText = typeof jsonAt(this.#json, keys) === 'string';
    this.#change(withJsonAt(this.#json, keys, wasText && !typed.startsWith('"') ? typed : meant(typed)));
  }

  takeOut(field: string): void {
    const keys = keysOfFault(field);
    if (keys !== null) this.#change(withJsonAt(this.#json, keys, undefined));
  }

  /** Null where the text was taken; else why not. */
  putText(text: string): string | null {
    const found = openable(text);
    if (found.kind === 'refused') return found.says;
    this.#change(found.kind === 'build' ? found.doc : found.json);
    return null;
  }

  #change(json: unknown): void {
    this.#json = json;
    this.#remember();
  }

  #remember(): void {
    try {
      sessionStorage.setItem(KEY, JSON.stringify({ json: this.#json, kept: this.kept }));
    } catch {
      // full or blocked storage: it lasts as long as the page
    }
  }
}

function meant(typed: string): unknown {
  try {
    return JSON.parse(typed);
  } catch {
    return typed;
  }
}
