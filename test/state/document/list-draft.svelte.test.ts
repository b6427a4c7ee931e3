// An entry that is being filled in: the build stays as it is, without a fault, until a figure makes the entry whole.

import { describe, expect, it } from 'vitest';
import { begunEntries } from '#model/edit/added-things.ts';
import { readDesign } from '#model/read/read-design.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { judge } from '#judge/judging/judge.ts';
import { firstBuild } from '#state/begin/demos.ts';
import { Editor } from '#state/document/editor.svelte.ts';
import { ListDraft } from '#state/document/list-draft.svelte.ts';

const editing = () => new Editor(firstBuild, { read: (doc) => readDesign(doc, knownIds), judge });

function begun() {
  const editor = editing();
  const draft = new ListDraft(editor, 'workingVoltages');
  const entry = begunEntries.workingVoltage(editor.doc);
  if (entry === null) throw new Error('every pair of this build has a voltage');
  draft.begin(entry);
  return { editor, draft, entry };
}

describe('an entry being filled in', () => {
  it('should leave the build as it is, without a fault', () => {
    const { editor, draft, entry } = begun();
    expect(editor.doc).toBe(firstBuild);
    expect(editor.faults).toEqual([]);
    expect(draft.open).toEqual({ at: (firstBuild.workingVoltages ?? []).length, entry });
    expect(draft.entering('rms', undefined)).toEqual([]);
  });

  it('should enter the build as one step with the figure that makes it whole', () => {
    const { editor, draft, entry } = begun();
    editor.preview(draft.entering('rms', '250 V'));
    expect(draft.open?.entry).toEqual(entry);
    editor.edit(draft.entering('rms', '250 V'), 'rms');
    expect(editor.doc.workingVoltages?.at(-1)).toEqual({ ...entry, rms: '250 V' });
    expect(editor.faults).toEqual([]);
    expect(draft.open).toBeNull();
    editor.undo();
    expect(editor.doc).toBe(firstBuild);
  });

  it('should take what is chosen for it with it', () => {
    const editor = editing();
    const draft = new ListDraft<{ id: string; kind: string; fields: readonly string[] }>(editor, 'evidence');
    draft.begin(begunEntries.evidence(editor.doc));
    draft.set({ kind: 'document' });
    editor.edit(draft.entering('says', 'the maker sheet'), 'what it shows');
    expect(editor.doc.evidence?.at(-1)).toMatchObject({ kind: 'document', says: 'the maker sheet' });
    expect(editor.faults).toEqual([]);
  });

  it('should be nothing when it is dropped', () => {
    const { editor, draft } = begun();
    editor.preview(draft.entering('peak', '500 V'));
    draft.drop();
    expect(editor.shown).toBe(firstBuild);
    expect(draft.open).toBeNull();
    expect(draft.entering('peak', '500 V')).toEqual([]);
  });
});
