import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Design } from '#model/design.ts';
import { readDesign } from '#model/read/read-design.ts';
import type { Drawable } from '#drawing/scene/scene.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { firstBuild } from '#state/begin/demos.ts';
import { Editor } from '#state/document/editor.svelte.ts';
import { removeLayers } from '#model/edit/layer-edits.ts';
import type { BesideAnswer, JudgeBeside } from '#state/judging/newest-judgement.svelte.ts';

type TellEarly = Parameters<JudgeBeside>[1];

describe('NewestJudgement', () => {
  let clock = 0;
  beforeEach(() => vi.spyOn(performance, 'now').mockImplementation(() => clock));
  afterEach(() => vi.restoreAllMocks());

  /** A judgement that says no more than of what it is. */
  const judgementOf = ({ title }: Pick<Design, 'title'>): Drawable =>
    ({ verdict: { title }, sections: [], turns: new Map() }) as unknown as Drawable;

  /** An editor whose answers from beside the page come when the test says so. */
  function workspace({ isFirst = true } = {}) {
    const here: string[] = [];
    const asked: string[] = [];
    const stopped: string[] = [];
    const waiting: { design: Design; answer: (answer: BesideAnswer) => void; early: TellEarly }[] = [];
    const read = readDesign(firstBuild, knownIds);
    if (read.kind === 'bad') throw new Error(read.faults[0]?.says);
    const { design: first } = read;
    const editor = new Editor(firstBuild, {
      read: (file) => readDesign(file, knownIds),
      judge: (design) => {
        here.push(design.title);
        return judgementOf(design);
      },
      sketch: (design) => judgementOf({ title: `sketch of ${design.title}` }),
      beside: (design, early) => {
        asked.push(design.title);
        return {
          answer: new Promise((answer) => waiting.push({ design, answer, early })),
          stop: () => stopped.push(design.title),
        };
      },
      ...(isFirst ? { first: { doc: firstBuild, design: first, judgement: judgementOf(first) } } : {}),
    });
    /** As the page does after every change. */
    const look = (): void => void [editor.judged, editor.standing];
    /** Answers the oldest question that is out. */
    const answer = async (what?: BesideAnswer): Promise<void> => {
      const { design, answer: settle } = waiting.shift()!;
      settle(what ?? { kind: 'judged', judgement: judgementOf(design), took: 1 });
      await new Promise((goOn) => setTimeout(goOn, 0));
      look();
    };
    const retitle = (title: string): void => {
      editor.edit([{ path: 'title', value: title }], 'title');
      look();
    };
    look();
    const state = (): readonly [string | undefined, string] => [
      editor.judged?.judgement.verdict.title,
      editor.standing.kind,
    ];
    return { editor, here, asked, stopped, waiting, answer, retitle, state, look };
  }

  it('should never judge on the page where there is somebody beside it', async () => {
    const { here, asked, answer, retitle, state } = workspace();
    expect([state(), asked]).toEqual([[firstBuild.title, 'judged'], []]);
    retitle('one');
    expect(state()).toEqual([firstBuild.title, 'judging']);
    await answer();
    expect([state(), here]).toEqual([['one', 'judged'], []]);
  });

  it('should tell what is known early of the build as it is, and nothing of an older one', async () => {
    const { editor, retitle, answer, waiting } = workspace();
    retitle('much open');
    const known = { between: ['pri', 'out'], verdict: 'not-shown' } as const;
    waiting[0]!.early([known]);
    expect(editor.standing).toEqual({ kind: 'judging', early: [known] });
    retitle('changed meanwhile');
    expect(editor.standing).toEqual({ kind: 'judging', early: [] });
    await answer();
    await answer();
    expect(editor.standing).toEqual({ kind: 'judged' });
  });

  it('should judge at once where there is nobody', () => {
    const editor = new Editor(firstBuild, {
      read: (file) => readDesign(file, knownIds),
      judge: judgementOf,
    });
    expect([editor.judged?.judgement.verdict.title, editor.isBehind]).toEqual([firstBuild.title, false]);
  });

  it('should have one question out, and ask after it for the newest only', async () => {
    const { editor, asked, answer, retitle, state, look } = workspace();
    retitle('one');
    retitle('two');
    editor.preview([{ path: 'title', value: 'three' }]);
    look();
    retitle('four');
    expect(asked).toEqual(['one']);
    await answer();
    expect([state(), asked]).toEqual([
      ['one', 'judging'],
      ['one', 'four'],
    ]);
    await answer();
    expect([state(), asked]).toEqual([
      ['four', 'judged'],
      ['one', 'four'],
    ]);
  });

  it('should give up a question that takes long when the build changes', async () => {
    const { asked, stopped, answer, retitle, state } = workspace();
    retitle('one');
    clock += 900;
    retitle('two');
    expect([asked, stopped]).toEqual([['one'], []]);
    clock += 200;
    retitle('three');
    expect([asked, stopped]).toEqual([['one', 'three'], ['one']]);
    await answer({ kind: 'stopped' });
    expect(state()).toEqual([firstBuild.title, 'judging']);
    await answer();
    expect(state()).toEqual(['three', 'judged']);
  });

  it('should drop an answer that is older than what is judged', async () => {
    const { editor, asked, answer, retitle, state, look } = workspace();
    retitle('one');
    editor.undo();
    look();
    expect(state()).toEqual([firstBuild.title, 'judged']);
    await answer();
    expect(state()).toEqual([firstBuild.title, 'judged']);
    editor.redo();
    look();
    expect([state()[1], asked]).toEqual(['judging', ['one', 'one']]);
  });

  it('should never show the answer of a build after another was opened', async () => {
    const { editor, answer, retitle, state, look } = workspace();
    retitle('one');
    editor.open({ ...firstBuild, title: 'another' });
    look();
    expect(state()).toEqual([undefined, 'judging']);
    await answer();
    expect(state()).toEqual([undefined, 'judging']);
    await answer();
    expect(state()).toEqual(['another', 'judged']);
  });

  it('should show the last state without a wrong entry, though its answer comes after the entry', async () => {
    const { editor, answer, retitle, state, look } = workspace();
    retitle('one');
    editor.edit([{ path: 'former.height', value: '3 kg' }], 'height');
    look();
    expect(state()).toEqual([firstBuild.title, 'judging']);
    await answer();
    expect([state(), editor.faults.length]).toEqual([['one', 'judged'], 1]);
  });

  it('should be waited for where one must not be told of an older state', async () => {
    const { editor, answer, retitle } = workspace();
    retitle('one');
    retitle('two');
    expect(editor.judgedNow).toBeNull();
    const soon = editor.judgedSoon();
    await answer();
    await answer();
    expect(await soon).toMatchObject({ doc: editor.doc, judgement: { verdict: { title: 'two' } } });
    expect((await editor.judgedSoon())?.doc).toBe(editor.doc);
  });

  it('should stop, say so, and judge when asked again', async () => {
    const { editor, stopped, asked, answer, retitle, state, look } = workspace();
    retitle('one');
    const soon = editor.judgedSoon();
    editor.stopJudging();
    look();
    expect([state(), stopped, await soon]).toEqual([[firstBuild.title, 'stopped'], ['one'], null]);
    await answer({ kind: 'stopped' });
    expect([state()[1], asked]).toEqual(['stopped', ['one']]);
    editor.judgeAgain();
    look();
    expect([state()[1], asked]).toEqual(['judging', ['one', 'one']]);
    await answer();
    expect(state()).toEqual(['one', 'judged']);
  });

  it('should ask once more when the thread is lost, say so, and give up the second time', async () => {
    const { editor, asked, answer, retitle, state } = workspace();
    retitle('one');
    await answer({ kind: 'lost', why: 'silent' });
    expect([state()[1], asked, editor.restarted]).toEqual(['judging', ['one', 'one'], 'silent']);
    await answer({ kind: 'lost', why: 'crashed' });
    expect(editor.standing).toEqual({ kind: 'lost', why: 'crashed' });
    retitle('two');
    expect([state()[1], editor.restarted]).toEqual(['judging', null]);
    await answer();
    expect(state()).toEqual(['two', 'judged']);
  });

  it('should judge on the page once there is nobody beside it, and say so', async () => {
    const { editor, asked, here, answer, retitle, state } = workspace();
    retitle('one');
    retitle('two');
    await answer({ kind: 'away' });
    expect([state(), here, editor.isAlone]).toEqual([['two', 'judged'], ['two'], true]);
    retitle('three');
    expect([state()[0], asked]).toEqual(['three', ['one']]);
  });

  it('should say that judging broke', async () => {
    const { editor, answer, retitle, state } = workspace();
    retitle('breaks');
    await answer({ kind: 'broke', says: 'no such table', took: 1 });
    expect([state(), editor.standing]).toEqual([
      [firstBuild.title, 'broke'],
      { kind: 'broke', says: 'no such table', took: 1 },
    ]);
    retitle('one');
    await answer();
    expect(state()).toEqual(['one', 'judged']);
  });

  it('should draw the build as it lies where places changed or nothing is judged yet', async () => {
    const { editor, answer, retitle, look } = workspace({ isFirst: false });
    const drawn = () => [editor.isShifted, editor.drawn?.judgement.verdict.title];
    expect(drawn()).toEqual([true, `sketch of ${firstBuild.title}`]);
    await answer();
    expect(drawn()).toEqual([false, firstBuild.title]);
    retitle('one');
    expect(drawn()).toEqual([false, firstBuild.title]);
    const fewer = removeLayers(editor.doc, [1]);
    editor.change(fewer, 'take out');
    look();
    expect([...drawn(), editor.drawn?.doc]).toEqual([true, 'sketch of one', fewer]);
    await answer();
    await answer();
    expect([...drawn(), editor.drawn?.doc]).toEqual([false, 'one', fewer]);
  });
});
