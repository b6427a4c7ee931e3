// The builds kept in this browser. Every write names the version that it grew from, so that two tabs never overwrite
// each other unseen. Where storage is blocked or full the answer says so; nothing here throws at the page.

import { openDB, type DBSchema, type IDBPDatabase } from 'idb';

export interface KeptBuild {
  readonly id: string;
  readonly title: string;
  /** As it was kept: it may have been damaged since, and is read anew when it is opened. */
  readonly doc: unknown;
  /** Grows by one with every write. */
  readonly version: number;
  /** Milliseconds of the epoch. */
  readonly saved: number;
}

interface Shelf extends DBSchema {
  builds: { key: string; value: KeptBuild; indexes: { saved: number } };
}

export type KeepAnswer =
  | { readonly kind: 'kept'; readonly version: number }
  | { readonly kind: 'conflict' }
  | { readonly kind: 'full' }
  /** A newer version of the page has taken the store over; this one cannot write to it any more. */
  | { readonly kind: 'newer' }
  | { readonly kind: 'blocked'; readonly says: string };

const NAME = 'layerwright';

/** Null for what has no name to find it by; whatever else is damaged is put right as far as the list goes. */
function checked(found: Partial<KeptBuild> | undefined): KeptBuild | null {
  if (typeof found !== 'object' || found === null || typeof found.id !== 'string') return null;
  const { id, title, doc, version, saved } = found;
  return {
    id,
    title: typeof title === 'string' ? title : '',
    doc,
    version: Number.isSafeInteger(version) ? Number(version) : 0,
    saved: Number.isFinite(saved) ? Number(saved) : 0,
  };
}

export class BuildStore {
  #db: Promise<IDBPDatabase<Shelf>> | null = null;

  /** Newest first. */
  async recent(): Promise<readonly KeptBuild[]> {
    try {
      // not by the index, which leaves out what has no date
      const found = await (await this.#open()).getAll('builds');
      return found.flatMap((build) => checked(build) ?? []).sort((a, b) => b.saved - a.saved);
    } catch {
      return [];
    }
  }

  async find(id: string): Promise<KeptBuild | null> {
    try {
      return checked(await (await this.#open()).get('builds', id));
    } catch {
      return null;
    }
  }

  /** `grownFrom`: version that this one continues, 0 for a build not kept before. */
  async keep(build: Omit<KeptBuild, 'version'>, grownFrom: number): Promise<KeepAnswer> {
    try {
      return await this.#keepOnce(build, grownFrom);
    } catch (error) {
      if (!isClosed(error)) return answerTo(error);
    }
    // the store was cleared under the open page: it is opened anew
    this.#db = null;
    try {
      return await this.#keepOnce(build, grownFrom);
    } catch (error) {
      return answerTo(error);
    }
  }

  async #keepOnce(build: Omit<KeptBuild, 'version'>, grownFrom: number): Promise<KeepAnswer> {
    const tx = (await this.#open()).transaction('builds', 'readwrite');
    const held = await tx.store.get(build.id);
    // what is not there any more was forgotten or cleared: what is worked on is kept all the same
    if (held !== undefined && held.version !== grownFrom) {
      await tx.done;
      return { kind: 'conflict' };
    }
    const version = grownFrom + 1;
    await tx.store.put({ ...build, version });
    await tx.done;
    return { kind: 'kept', version };
  }

  async forget(id: string): Promise<void> {
    try {
      await (await this.#open()).delete('builds', id);
    } catch {
      // blocked storage keeps nothing, so there is nothing to forget
    }
  }

  #open(): Promise<IDBPDatabase<Shelf>> {
    const letGo = (): void => {
      this.#db = null;
    };
    this.#db ??= openDB<Shelf>(NAME, 1, {
      upgrade(db) {
        db.createObjectStore('builds', { keyPath: 'id' }).createIndex('saved', 'saved');
      },
      // a newer version of the page wants the store, in another tab: this one must not stand in its way
      blocking: (_, __, event) => {
        letGo();
        (event.target as IDBDatabase | null)?.close();
      },
      terminated: letGo,
    });
    this.#db.catch(letGo);
    return this.#db;
  }
}

const nameOf = (error: unknown): string => (error instanceof DOMException ? error.name : '');

const isClosed = (error: unknown): boolean => ['InvalidStateError', 'AbortError'].includes(nameOf(error));

function answerTo(error: unknown): KeepAnswer {
  const name = nameOf(error);
  if (name === 'QuotaExceededError') return { kind: 'full' };
  if (name === 'VersionError') return { kind: 'newer' };
  return { kind: 'blocked', says: error instanceof Error ? error.message : String(error) };
}
