import { describe, expect, it } from 'vitest';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Drawable } from '#drawing/scene/scene.ts';
import type { KeepAnswer, KeptBuild } from '#state/storage/build-store.ts';
import { firstBuild } from '#state/begin/demos.ts';
import { Editor } from '#state/document/editor.svelte.ts';
import { Autosave } from '#state/session/autosave.svelte.ts';

/** A shelf in memory with the rules of the real one: a write must grow from the version held. */
class Shelf {
  readonly builds = new Map<string, KeptBuild>();
  refusal: KeepAnswer | null = null;

  recent = (): Promise<readonly KeptBuild[]> =>
    Promise.resolve([...this.builds.values()].sort((a, b) => b.saved - a.saved));

  find = (id: string): Promise<KeptBuild | null> => Promise.resolve(this.builds.get(id) ?? null);

  keep = (build: Omit<KeptBuild, 'version'>, grownFrom: number): Promise<KeepAnswer> => {
    if (this.refusal !== null) return Promise.resolve(this.refusal);
    if ((this.builds.get(build.id)?.version ?? 0) !== grownFrom) return Promise.resolve({ kind: 'conflict' });
    this.builds.set(build.id, { ...build, version: grownFrom + 1 });
    return Promise.resolve({ kind: 'kept', version: grownFrom + 1 });
  };

  forget = (id: string): Promise<void> => {
    this.builds.delete(id);
    return Promise.resolve();
  };
}

interface Bed {
  readonly shelf: Shelf;
  readonly editor: Editor;
  readonly autosave: Autosave;
}

function bed(): Bed {
  const emptyJudgement = { verdict: { title: '' }, sections: [], turns: new Map() } as unknown as Drawable;
  const editor = new Editor(firstBuild, {
    read: () => ({ kind: 'bad', faults: [] }),
    judge: () => emptyJudgement,
  });
  const shelf = new Shelf();
  let count = 0;
  const autosave = new Autosave(editor, {
    store: shelf,
    newId: () => `build ${++count}`,
    now: () => ++count,
    announce: () => {},
  });
  return { shelf, editor, autosave };
}

const titled = (title: string): DesignFile => ({ ...firstBuild, title });
const retitle = (editor: Editor, title: string): void =>
  editor.edit([{ path: 'title', value: title }], title);
const titles = (builds: Iterable<KeptBuild>): readonly string[] => [...builds].map(({ title }) => title);

describe('Autosave', () => {
  it('should not say that nothing is kept before the browser has answered', async () => {
    const { autosave } = bed();
    expect(autosave.recent).toBeNull();
    await autosave.refresh();
    expect(autosave.recent).toEqual([]);
  });

  it('should list a build from its first change on, the one changed last first', async () => {
    const { editor, autosave } = bed();
    await autosave.refresh();
    retitle(editor, 'first');
    await autosave.flush();
    await autosave.open(titled('second'), null, true);
    expect(titles(autosave.recent ?? [])).toEqual(['second', 'first']);
    await autosave.open(autosave.recent![1]!.doc as DesignFile, autosave.recent![1]!);
    retitle(editor, 'first again');
    await autosave.flush();
    expect(titles(autosave.recent ?? [])).toEqual(['first again', 'second']);
  });

  it('should write what lay on the sheet before another build comes', async () => {
    const { shelf, editor, autosave } = bed();
    retitle(editor, 'mine');
    await autosave.open(titled('another'), null);
    expect(titles(shelf.builds.values())).toEqual(['mine']);
    expect(editor.doc.title).toBe('another');
  });

  it('should keep both states of a build that another tab changed when another build comes', async () => {
    const { shelf, editor, autosave } = bed();
    retitle(editor, 'mine');
    await autosave.flush();
    const id = autosave.id!;
    shelf.builds.set(id, { ...shelf.builds.get(id)!, title: 'the other tab’s', version: 2 });
    retitle(editor, 'mine, changed');
    await autosave.flush();
    expect(autosave.status.kind).toBe('conflict');
    expect(autosave.wouldLose).toBe(true);
    await autosave.open(titled('another'), null);
    expect(titles(shelf.builds.values())).toEqual(['the other tab’s', 'mine, changed']);
    expect(autosave.wouldLose).toBe(false);
  });

  for (const refusal of [{ kind: 'full' }, { kind: 'blocked', says: 'no' }] as const)
    it(`should lay aside what cannot be written when another build comes (${refusal.kind})`, async () => {
      const { shelf, editor, autosave } = bed();
      await autosave.refresh();
      shelf.refusal = refusal;
      retitle(editor, 'mine');
      await autosave.open(titled('another'), null);
      expect(titles(autosave.recent ?? [])).toEqual(['mine']);
      expect(autosave.isAside(autosave.recent![0]!.id)).toBe(true);
      expect(autosave.wouldLose).toBe(true);

      const opened = autosave.recent![0]!;
      await autosave.open(opened.doc as DesignFile, opened);
      expect(editor.doc.title).toBe('mine');
      await autosave.open(titled('yet another'), null);
      expect(titles(autosave.recent ?? [])).toEqual(['mine']);

      shelf.refusal = null;
      await autosave.open(opened.doc as DesignFile, opened);
      expect(titles(shelf.builds.values())).toEqual(['mine']);
      expect(autosave.wouldLose).toBe(false);
    });

  it('should lay aside a newer state under the place of the older one that is kept', async () => {
    const { shelf, editor, autosave } = bed();
    await autosave.refresh();
    retitle(editor, 'kept');
    await autosave.flush();
    shelf.refusal = { kind: 'full' };
    retitle(editor, 'newer');
    await autosave.open(titled('another'), null);
    expect(titles(autosave.recent ?? [])).toEqual(['newer']);
  });

  it('should forget a build for good', async () => {
    const { shelf, editor, autosave } = bed();
    retitle(editor, 'mine');
    await autosave.flush();
    await autosave.forget(autosave.id!);
    expect(shelf.builds.size).toBe(0);
    expect(autosave.recent).toEqual([]);
  });
});
