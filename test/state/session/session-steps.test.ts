import { describe, expect, it, vi } from 'vitest';
import type { Drawable } from '#drawing/scene/scene.ts';
import { readDesign } from '#model/read/read-design.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { firstBuild } from '#state/begin/demos.ts';
import { Editor } from '#state/document/editor.svelte.ts';
import { keepSteps, keptSteps } from '#state/session/session-steps.ts';
import { stubSession } from '#test/state/session-storage.ts';

const emptyJudgement = { verdict: { title: '' }, sections: [], turns: new Map() } as unknown as Drawable;
const editorOf = (doc = firstBuild): Editor =>
  new Editor(doc, { read: (file) => readDesign(file, knownIds), judge: () => emptyJudgement });

describe('steps kept over a reload', () => {
  const held = stubSession();

  const edited = (): Editor => {
    const editor = editorOf();
    for (const turns of [90, 91, 92])
      editor.edit([{ path: 'layers[0].turns', value: turns }], `turns ${turns}`);
    editor.undo();
    return editor;
  };

  it('should lead back and forward as before', () => {
    const before = edited();
    keepSteps('b1', before.doc, before.history(10));
    const after = editorOf(JSON.parse(JSON.stringify(before.doc)) as typeof firstBuild);
    const left = keptSteps('b1')!;
    expect(left.doc).toEqual(before.doc);
    after.resume(left);
    expect([after.undoes, after.redoes]).toEqual(['turns 91', 'turns 92']);
    after.redo();
    expect(after.doc.layers[0]).toMatchObject({ turns: 92 });
    after.undo();
    after.undo();
    after.undo();
    expect(after.doc).toEqual(firstBuild);
    expect(after.undoes).toBeNull();
  });

  it('should be of one build, and say when it was left', () => {
    const before = edited();
    const now = Date.now();
    keepSteps('b1', before.doc, before.history(10));
    expect(keptSteps('b2')).toBeNull();
    expect(keptSteps('b1')?.left).toBeGreaterThanOrEqual(now);
    keepSteps(null, before.doc, before.history(10));
    expect(keptSteps('b1')).toBeNull();
  });

  it('should drop the oldest where they are too many', () => {
    const before = edited();
    expect(before.history(1)).toMatchObject({ past: [{ says: 'turns 91' }], future: [{ says: 'turns 92' }] });
    const long = { ...firstBuild, notes: 'x'.repeat(900_000) };
    const steps = ['a', 'b', 'c'].map((says) => ({ says, doc: long }));
    keepSteps('b1', firstBuild, { past: steps, future: [] });
    expect(keptSteps('b1')?.past.map(({ says }) => says)).toEqual(['a', 'b']);
  });

  it('should be none where storage is blocked or holds something else', () => {
    for (const text of ['{', '7', '{"id":"b1"}', '{"id":"b1","left":1,"doc":7}']) {
      held.set('layerwright-steps', text);
      expect(keptSteps('b1'), text).toBeNull();
    }
    vi.stubGlobal('sessionStorage', undefined);
    expect(() => keepSteps('b1', firstBuild, edited().history(3))).not.toThrow();
    expect(keptSteps('b1')).toBeNull();
  });
});
