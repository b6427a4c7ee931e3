// Keeps the build on the sheet in this browser, a moment after every change, and notices another tab with the same build.
// A build is kept from its first change on; an opened file at once. What cannot be kept is said in words.

import type { DesignFile } from '#model/schema/schema.ts';
import type { BuildStore, KeptBuild } from '#state/storage/build-store.ts';
import { isSheetSafe } from '#state/storage/import-design.ts';
import type { Editor } from '#state/document/editor.svelte.ts';

export type Keeping =
  | { readonly kind: 'untouched' }
  | { readonly kind: 'saving' }
  | { readonly kind: 'kept'; readonly at: number }
  | { readonly kind: 'conflict' }
  | { readonly kind: 'full' }
  | { readonly kind: 'newer' }
  | { readonly kind: 'blocked'; readonly says: string };

export interface KeeperWorld {
  readonly store: Pick<BuildStore, 'recent' | 'find' | 'keep' | 'forget'>;
  readonly newId: () => string;
  readonly now: () => number;
  /** Tells other tabs which build lies on this sheet. */
  readonly announce: (id: string | null) => void;
}

/** A change is written at once; those that follow closer than this are written together. */
const PAUSE_MS = 250;

export class Autosave {
  status: Keeping = $state.raw({ kind: 'untouched' });
  /** The same build lies on a sheet in another tab. */
  isElsewhere = $state(false);
  /** What the browser keeps, newest first; null until it has been asked. */
  #kept: readonly KeptBuild[] | null = $state.raw(null);
  /** Builds that made room for another and could not be kept: they last as long as the page. */
  #aside: readonly KeptBuild[] = $state.raw([]);
  #id: string | null = null;
  #version = 0;
  #keptRevision: number;
  #timer: ReturnType<typeof setTimeout> | null = null;
  #lastWrite = 0;
  #writing: Promise<void> = Promise.resolve();
  readonly #editor: Editor;
  readonly #world: KeeperWorld;

  constructor(editor: Editor, world: KeeperWorld) {
    this.#editor = editor;
    this.#world = world;
    this.#keptRevision = editor.revision;
  }

  get id(): string | null {
    return this.#id;
  }

  /** Newest first, those that last only as long as the page before all others; null until it is known. */
  get recent(): readonly KeptBuild[] | null {
    return this.#kept === null ? null : [...this.#aside, ...this.#kept.filter(({ id }) => !this.isAside(id))];
  }

  /** Whether this build, in its newest state, lasts only as long as the page. */
  isAside(id: string): boolean {
    return this.#aside.some((each) => each.id === id);
  }

  /** Something would be lost if the page were closed now, and writing it once more would not help. */
  get wouldLose(): boolean {
    const isRefused = ['conflict', 'full', 'newer', 'blocked'].includes(this.status.kind);
    return this.#aside.length > 0 || (isRefused && this.#editor.revision !== this.#keptRevision);
  }

  async refresh(): Promise<void> {
    this.#kept = await this.#world.store.recent();
  }

  /** Lays another build on the sheet; the one that lay there is kept with its last change, or laid aside. */
  async open(
    doc: DesignFile,
    kept: Pick<KeptBuild, 'id' | 'version'> | null,
    keepAtOnce = false,
  ): Promise<void> {
    await this.#putAway();
    const isOwed = keepAtOnce || (kept !== null && this.isAside(kept.id));
    this.#aside = this.#aside.filter(({ id }) => id !== kept?.id);
    this.#id = kept?.id ?? null;
    this.#version = kept?.version ?? 0;
    this.isElsewhere = false;
    this.status = { kind: 'untouched' };
    this.#editor.open(doc);
    this.#keptRevision = isOwed ? -1 : this.#editor.revision;
    this.#world.announce(this.#id);
    if (isOwed) await this.flush();
  }

  /** To be called after every change of the editor's revision. */
  touched(): void {
    if (this.#editor.revision === this.#keptRevision || this.status.kind === 'conflict') return;
    if (this.#timer !== null) return;
    const since = this.#world.now() - this.#lastWrite;
    if (since >= PAUSE_MS || since < 0) void this.flush();
    else this.#timer = setTimeout(() => void this.flush(), PAUSE_MS);
  }

  /** Writes at once what is new: before leaving, before another build comes. */
  async flush(): Promise<void> {
    if (this.#timer !== null) clearTimeout(this.#timer);
    this.#timer = null;
    this.#writing = this.#writing.then(() => this.#write());
    await this.#writing;
  }

  /** After a conflict: goes on under a name of its own, the other tab's state stays. */
  async keepAsCopy(): Promise<void> {
    this.#id = null;
    this.#version = 0;
    this.#keptRevision = -1;
    this.status = { kind: 'saving' };
    await this.flush();
  }

  /** After a conflict: takes the other tab's state; one's own goes into the history and can be had back. */
  async takeOther(): Promise<void> {
    const other = this.#id === null ? null : await this.#world.store.find(this.#id);
    if (other === null) return;
    if (!isSheetSafe(other.doc)) {
      this.status = { kind: 'blocked', says: 'what the other tab kept is damaged' };
      return;
    }
    this.#version = other.version;
    this.#editor.change(other.doc, 'take the state of the other tab');
    this.#keptRevision = this.#editor.revision;
    this.status = { kind: 'kept', at: other.saved };
  }

  async forget(id: string): Promise<void> {
    await this.#world.store.forget(id);
    this.#aside = this.#aside.filter((each) => each.id !== id);
    if (id === this.#id) this.#version = 0;
    await this.refresh();
  }

  async #write(): Promise<void> {
    const { revision } = this.#editor;
    if (revision === this.#keptRevision || this.status.kind === 'conflict') return;
    this.#id ??= this.#world.newId();
    this.status = { kind: 'saving' };
    const build = this.#asBuild(this.#id);
    const { saved } = build;
    this.#lastWrite = saved;
    const answer = await this.#world.store.keep(build, this.#version);
    if (answer.kind !== 'kept') {
      this.status = answer;
      return;
    }
    if (this.#version === 0) this.#world.announce(this.#id);
    this.#version = answer.version;
    this.#keptRevision = revision;
    this.status = { kind: 'kept', at: saved };
    const others = this.#kept?.filter(({ id }) => id !== build.id);
    if (others !== undefined) this.#kept = [{ ...build, version: answer.version }, ...others];
  }

  /** Nothing on the sheet is lost when another build comes: where it cannot be written it is laid aside. */
  async #putAway(): Promise<void> {
    await this.flush();
    if (this.status.kind === 'conflict') await this.keepAsCopy();
    if (this.#editor.revision === this.#keptRevision) return;
    const id = this.#id ?? this.#world.newId();
    this.#aside = [{ ...this.#asBuild(id), version: this.#version }, ...this.#aside];
  }

  #asBuild(id: string): Omit<KeptBuild, 'version'> {
    const { doc } = this.#editor;
    return { id, title: String(doc.title ?? ''), doc, saved: this.#world.now() };
  }
}
