import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readDesign } from '#model/read/read-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Drawable } from '#drawing/scene/scene.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { Editor } from '#state/document/editor.svelte.ts';
import { firstBuild } from '#state/begin/demos.ts';
import { duplicateLayers, moveLayers, removeLayers } from '#model/edit/layer-edits.ts';

/** Judges nothing: what is asked here is what the editor does with an answer. */
const emptyJudgement = { verdict: { title: '' }, sections: [], turns: new Map() } as unknown as Drawable;

const editorOf = (doc: DesignFile, judge = () => emptyJudgement): Editor =>
  new Editor(doc, { read: (file) => readDesign(file, knownIds), judge });

describe('Editor', () => {
  it('should keep an edit, take it back and bring it again', () => {
    const editor = editorOf(firstBuild);
    editor.edit([{ path: 'layers[0].turns', value: 90 }], 'turns');
    expect(editor.doc.layers[0]).toMatchObject({ turns: 90 });
    expect(editor.undoes).toBe('turns');
    editor.undo();
    expect(editor.doc).toBe(firstBuild);
    expect(editor.redoes).toBe('turns');
    editor.redo();
    expect(editor.doc.layers[0]).toMatchObject({ turns: 90 });
  });

  it('should show a preview without keeping it', () => {
    const editor = editorOf(firstBuild);
    const { revision } = editor;
    editor.preview([{ path: 'layers[2].margins.left.width', value: '2 mm' }]);
    editor.preview([{ path: 'layers[2].margins.left.width', value: '2.2 mm' }]);
    expect(editor.shown.layers[2]?.margins?.left?.width).toBe('2.2 mm');
    expect(editor.doc).toBe(firstBuild);
    expect(editor.revision).toBe(revision);
    editor.cancel();
    expect(editor.shown).toBe(firstBuild);
    expect(editor.undoes).toBeNull();
  });

  it('should keep what was tried as the same document, and anything else anew', () => {
    const editor = editorOf(firstBuild);
    const width = (value: string) => [{ path: 'layers[2].margins.left.width', value }];
    editor.preview(width('2 mm'));
    const tried = editor.shown;
    editor.edit(width('2 mm'), 'margin');
    expect(editor.doc).toBe(tried);
    editor.preview(width('3 mm'));
    editor.edit(width('4 mm'), 'margin');
    expect(editor.doc.layers[2]?.margins?.left?.width).toBe('4 mm');
    editor.preview(width('5 mm'));
    editor.cancel();
    editor.edit([{ path: 'title', value: 'another' }], 'title');
    editor.edit(width('5 mm'), 'margin');
    expect(editor.doc).toMatchObject({ title: 'another' });
    expect(editor.doc.layers[2]?.margins?.left?.width).toBe('5 mm');
  });

  it('should keep the last good judgement beside a wrong entry, and name the fault at its field', () => {
    const editor = editorOf(firstBuild);
    const good = editor.judged;
    editor.edit([{ path: 'former.height', value: '3 kg' }], 'height');
    expect(editor.judged).toBe(good);
    expect(editor.faultAt('former.height')?.says).toContain('former.height');
    expect(editor.faultAt('former')?.field).toBe('former.height');
    expect(editor.faultAt('former.wall')).toBeNull();
    editor.edit([{ path: 'former.height', value: '5 mm' }], 'height');
    expect(editor.faults).toEqual([]);
    expect(editor.judged?.design.former.height.value).toBe(5_000_000);
  });

  it('should read and judge a document once, however often one looks', () => {
    let judged = 0;
    const editor = editorOf(firstBuild, () => {
      judged++;
      return emptyJudgement;
    });
    for (let i = 0; i < 3; i++) void editor.judged;
    expect(judged).toBe(1);
    editor.edit([{ path: 'title', value: 'another' }], 'title');
    for (let i = 0; i < 3; i++) void editor.judged;
    expect(judged).toBe(2);
  });

  it('should say that judging broke, rather than break with it', () => {
    const editor = editorOf(firstBuild, () => {
      throw new Error('no such table');
    });
    expect(editor.standing).toEqual({ kind: 'broke', says: 'no such table', took: expect.any(Number) });
    expect(editor.judged).toBeNull();
  });

  it('should drop what could be brought again once something else is done', () => {
    const editor = editorOf(firstBuild);
    editor.edit([{ path: 'title', value: 'one' }], 'title');
    editor.undo();
    editor.edit([{ path: 'title', value: 'two' }], 'title');
    expect(editor.redoes).toBeNull();
    editor.redo();
    expect(editor.doc.title).toBe('two');
  });

  it('should begin a new history with another build', () => {
    const editor = editorOf(firstBuild);
    editor.edit([{ path: 'title', value: 'one' }], 'title');
    editor.open({ ...firstBuild, title: 'another' });
    expect(editor.undoes).toBeNull();
    expect(editor.shown.title).toBe('another');
  });

  it('should come back to the identical document after any edits and as many undos', () => {
    fc.assert(
      fc.property(fc.array(action, { minLength: 1, maxLength: 200 }), (actions) => {
        const editor = editorOf(firstBuild);
        let steps = 0;
        for (const act of actions) {
          const before = editor.doc;
          act(editor);
          if (editor.doc !== before) steps++;
        }
        const end = editor.doc;
        for (let i = 0; i < steps; i++) editor.undo();
        expect(editor.doc).toBe(firstBuild);
        for (let i = 0; i < steps; i++) editor.redo();
        expect(editor.doc).toBe(end);
      }),
      { seed: 2611, numRuns: 60 },
    );
  });
});

const count = (editor: Editor): number => editor.doc.layers.length;

/** Edits by fields, layers put in, copied, taken out and moved, and previews that are dropped. */
const action: fc.Arbitrary<(editor: Editor) => void> = fc.oneof(
  fc
    .record({ layer: fc.nat(), turns: fc.integer({ min: 1, max: 300 }) })
    .map(({ layer, turns }) => (editor: Editor) => {
      if (count(editor) > 0)
        editor.edit([{ path: `layers[${layer % count(editor)}].turns`, value: turns }], 'turns');
    }),
  fc
    .string({ maxLength: 20 })
    .map((title) => (editor: Editor) => editor.edit([{ path: 'title', value: title }], 'title')),
  fc.nat().map((layer) => (editor: Editor) => {
    if (count(editor) > 0) editor.change(duplicateLayers(editor.doc, [layer % count(editor)]), 'copy');
  }),
  fc.nat().map((layer) => (editor: Editor) => {
    if (count(editor) > 0) editor.change(removeLayers(editor.doc, [layer % count(editor)]), 'take out');
  }),
  fc.tuple(fc.nat(), fc.nat()).map(([from, to]) => (editor: Editor) => {
    const all = count(editor);
    if (all > 0) editor.change(moveLayers(editor.doc, [from % all, to % all], from % (all + 1)).doc, 'move');
  }),
  fc.constant((editor: Editor) => {
    editor.preview([{ path: 'title', value: 'tried' }]);
    editor.cancel();
  }),
);
