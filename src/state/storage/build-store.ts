// The builds kept in this browser. Every write names the version that it grew from, so that two tabs never overwrite
// each other unseen. Where storage is blocked or full the answer says so; nothing here throws at the page.

import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import type { DesignFile } from '#model/schema/schema.ts';

export interface KeptBuild {
  readonly id: string;
  readonly title: string;
  readonly doc: DesignFile;
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
  | { readonly kind: 'blocked'; readonly says: string };

const NAME = 'layerwright';

export class BuildStore {
  #db: Promise<IDBPDatabase<Shelf>> | null = null;

  /** Newest first. */
  async recent(): Promise<readonly KeptBuild[]> {
    try {
      const found = await (await this.#open()).getAllFromIndex('builds', 'saved');
      return found.reverse();
    } catch {
      return [];
    }
  }

  async find(id: string): Promise<KeptBuild | null> {
    try {
      return (await (await this.#open()).get('builds', id)) ?? null;
    } catch {
      return null;
    }
  }

  /** `grownFrom`: version that this one continues, 0 for a build not kept before. */
  async keep(build: Omit<KeptBuild, 'version'>, grownFrom: number): Promise<KeepAnswer> {
    try {
      const tx = (await this.#open()).transaction('builds', 'readwrite');
      const held = await tx.store.get(build.id);
      if ((held?.version ?? 0) !== grownFrom) {
        await tx.done;
        return { kind: 'conflict' };
      }
      const version = grownFrom + 1;
      await tx.store.put({ ...build, version });
      await tx.done;
      return { kind: 'kept', version };
    } catch (error) {
      if (error instanceof DOMException && error.name === 'QuotaExceededError') return { kind: 'full' };
      return { kind: 'blocked', says: error instanceof Error ? error.message : String(error) };
    }
  }

  async forget(id: string): Promise<void> {
    try {
      await (await this.#open()).delete('builds', id);
    } catch {
      // blocked storage keeps nothing, so there is nothing to forget
    }
  }

  #open(): Promise<IDBPDatabase<Shelf>> {
    this.#db ??= openDB<Shelf>(NAME, 1, {
      upgrade(db) {
        db.createObjectStore('builds', { keyPath: 'id' }).createIndex('saved', 'saved');
      },
    });
    this.#db.catch(() => {
      this.#db = null;
    });
    return this.#db;
  }
}
