import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Design } from '#model/design.ts';
import { readDesign } from '#model/read/read-design.ts';
import type { Drawable } from '#drawing/scene/scene.ts';
import { knownIds } from '#judge/fill/known-ids.ts';
import { firstBuild } from '#state/begin/demos.ts';
import { Editor } from '#state/document/editor.svelte.ts';
import { removeLayers } from '#model/edit/layer-edits.ts';
import type { JudgeBeside } from '#state/judging/newest-judgement.svelte.ts';

type Answer = Awaited<ReturnType<JudgeBeside>>;

/** Milliseconds that judging takes here, and on its own slow build. */
const [QUICK, SLOW] = [2, 300];

describe('NewestJudgement', () => {
  let clock = 0;
  beforeEach(() => vi.spyOn(performance, 'now').mockImplementation(() => clock));
  afterEach(() => vi.restoreAllMocks());

  /** A judgement that says no more than of what it is. */
  const judgementOf = ({ title }: Design): Drawable =>
    ({ verdict: { title }, sections: [], turns: new Map() }) as unknown as Drawable;

  /** An editor whose answers from beside the page come when the test says so. */
  function bench({ takes = SLOW } = {}) {
    const pace = { takes };
    const here: string[] = [];
    const asked: string[] = [];
    const waiting: ((answer: Answer) => void)[] = [];
    const questions: Design[] = [];
    const editor = new Editor(firstBuild, {
      read: (file) => readDesign(file, knownIds),
      judge: (design) => {
        clock += pace.takes;
        here.push(design.title);
        if (design.title === 'breaks') throw new Error('no such table');
        return judgementOf(design);
      },
      beside: (design) => {
        asked.push(design.title);
        questions.push(design);
        return new Promise((answer) => waiting.push(answer));
      },
    });
    /** As the page does after every change. */
    const look = (): void => void editor.judged;
    /** Answers the only open question. */
    const answer = async (what?: Answer): Promise<void> => {
      const design = questions.shift()!;
      waiting.shift()!(what ?? { kind: 'judged', judgement: judgementOf(design), took: SLOW });
      await Promise.resolve();
      look();
    };
    const retitle = (title: string): void => {
      editor.edit([{ path: 'title', value: title }], 'title');
      look();
    };
    look();
    const title = (): string | undefined => editor.judged?.judgement.verdict.title;
    return { editor, pace, here, asked, answer, retitle, title, look };
  }

  it('should judge at once what was judged quickly before', () => {
    const { editor, asked, retitle, title } = bench({ takes: QUICK });
    for (const name of ['one', 'two']) {
      retitle(name);
      expect(title()).toBe(name);
      expect(editor.isBehind).toBe(false);
    }
    expect(asked).toEqual([]);
  });

  it('should judge at once after opening, however long it takes, and beside the page from then on', async () => {
    const { editor, asked, answer, retitle, title, look } = bench();
    expect(title()).toBe(firstBuild.title);
    retitle('one');
    expect([title(), editor.isBehind]).toEqual([firstBuild.title, true]);
    expect(editor.judged?.doc).toBe(firstBuild);
    await answer();
    expect([title(), editor.isBehind]).toEqual(['one', false]);
    expect(editor.judged).toMatchObject({ doc: editor.doc, design: { title: 'one' } });
    editor.open({ ...firstBuild, title: 'another' });
    look();
    expect([title(), editor.isBehind]).toEqual(['another', false]);
    expect(asked).toEqual(['one']);
  });

  it('should not take a build for slow while the machine warms up', () => {
    const { asked, here, pace, retitle } = bench({ takes: 150 });
    pace.takes = 30;
    for (const name of 'abcdef') retitle(name);
    pace.takes = QUICK;
    retitle('warm');
    expect([here.slice(1), asked]).toEqual([[...'abcdef', 'warm'], []]);
  });

  it('should judge beside the page what takes longer than a frame time and again, or so long once that it is felt', () => {
    const often = bench({ takes: 30 });
    for (const name of 'abcdefghijklmnop') often.retitle(name);
    expect(often.asked).toEqual(['p']);
    const once = bench({ takes: QUICK });
    once.pace.takes = 150;
    once.retitle('a');
    once.retitle('b');
    expect(once.asked).toEqual(['b']);
  });

  it('should have one question out, and ask after it for the newest only', async () => {
    const { editor, asked, answer, retitle, title, look } = bench();
    retitle('one');
    retitle('two');
    editor.preview([{ path: 'title', value: 'three' }]);
    look();
    retitle('four');
    expect(asked).toEqual(['one']);
    await answer();
    expect([title(), editor.isBehind]).toEqual(['one', true]);
    expect(asked).toEqual(['one', 'four']);
    await answer();
    expect([title(), editor.isBehind]).toEqual(['four', false]);
    expect(asked).toEqual(['one', 'four']);
  });

  it('should judge at once again when the answer says that it was quick', async () => {
    const { asked, here, answer, retitle, title } = bench();
    retitle('one');
    await answer({ kind: 'judged', judgement: judgementOf({ title: 'one' } as Design), took: QUICK });
    retitle('two');
    expect([title(), here.at(-1), asked]).toEqual(['two', 'two', ['one']]);
  });

  it('should drop an answer that is older than what is judged', async () => {
    const { editor, asked, answer, retitle, title, look } = bench();
    retitle('one');
    editor.undo();
    look();
    expect([title(), editor.isBehind]).toEqual([firstBuild.title, false]);
    await answer();
    expect(title()).toBe(firstBuild.title);
    editor.redo();
    look();
    expect([title(), editor.isBehind, asked]).toEqual([firstBuild.title, true, ['one', 'one']]);
    retitle('two');
    expect(editor.judgedNow()?.judgement.verdict.title).toBe('two');
    retitle('three');
    await answer();
    expect([title(), editor.isBehind]).toEqual(['two', true]);
    await answer();
    expect([title(), editor.isBehind]).toEqual(['three', false]);
  });

  it('should never show the answer of a build after another was opened', async () => {
    const { editor, answer, retitle, title } = bench();
    retitle('one');
    editor.open({ ...firstBuild, title: 'another' });
    await answer();
    expect(title()).toBe('another');
    retitle('of the other');
    expect(title()).toBe('another');
    await answer();
    expect([title(), editor.isBehind]).toEqual(['of the other', false]);
  });

  it('should show the last state without a wrong entry, though its answer comes after the entry', async () => {
    const { editor, answer, retitle, title, look } = bench();
    retitle('one');
    editor.edit([{ path: 'former.height', value: '3 kg' }], 'height');
    look();
    expect([title(), editor.isBehind]).toEqual([firstBuild.title, true]);
    await answer();
    expect([title(), editor.isBehind, editor.faults.length]).toEqual(['one', false, 1]);
  });

  it('should wait where one must not be told of an older state', async () => {
    const { editor, here, answer, retitle, title } = bench();
    retitle('one');
    expect(editor.judgedNow()).toMatchObject({ doc: editor.doc, judgement: { verdict: { title: 'one' } } });
    expect([title(), editor.isBehind, here.at(-1)]).toEqual(['one', false, 'one']);
    const judgedHere = here.length;
    void editor.judgedNow();
    expect(here).toHaveLength(judgedHere);
    await answer();
    expect(title()).toBe('one');
  });

  it('should judge on the page once there is nobody beside it', async () => {
    const { editor, asked, here, answer, retitle, title } = bench();
    retitle('one');
    retitle('two');
    await answer({ kind: 'away' });
    expect([title(), editor.isBehind, here.slice(1)]).toEqual(['two', false, ['two']]);
    retitle('three');
    expect([title(), asked]).toEqual(['three', ['one']]);
  });

  it('should say that judging broke beside the page as it says it on the page', async () => {
    const { editor, answer, retitle, title } = bench();
    retitle('breaks');
    await answer({ kind: 'broke', says: 'no such table', took: SLOW });
    expect([editor.broke, title(), editor.isBehind]).toEqual(['no such table', firstBuild.title, false]);
    retitle('one');
    expect(editor.broke).toBeNull();
    await answer();
    expect([editor.broke, title()]).toEqual([null, 'one']);
  });

  it('should judge at once where layers came or went, so that no place on the drawing names another layer', () => {
    const { editor, asked, title, look } = bench();
    const fewer = removeLayers(editor.doc, [1]);
    editor.change(fewer, 'take out');
    look();
    expect(editor.judged?.doc).toBe(fewer);
    const [first, second, ...others] = fewer.layers;
    const swapped = { ...fewer, title: 'swapped', layers: [second!, first!, ...others] };
    editor.change(swapped, 'swap');
    look();
    expect([title(), asked]).toEqual(['swapped', []]);
    editor.mayShift = true;
    editor.change(removeLayers(swapped, [1]), 'take out');
    look();
    expect([editor.judged?.doc, editor.isBehind, asked]).toEqual([swapped, true, ['swapped']]);
    expect(editor.design?.layers).toHaveLength(swapped.layers.length - 1);
    // back at what goes by places
    editor.mayShift = false;
    look();
    expect([editor.judged?.doc, editor.isBehind]).toEqual([editor.doc, false]);
  });
});
