import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';

import type { FieldPicture } from '#judge/field/field-picture.ts';
import type { Design } from '#model/design.ts';
import { FieldSearch } from '#state/searches/field-search.svelte.ts';
import type { Outcome, Thread } from '#state/threads/thread.ts';

interface Question {
  readonly design: Design;
  readonly quick: boolean;
  readonly answer: () => Promise<void>;
  stopped: boolean;
}

/** Builds told apart by their title; their pictures bear it. */
const build = (title: string): Design => ({ title }) as Design;

/** A thread that answers when it is told to. */
function thread(): { readonly asked: Question[]; readonly thread: Thread } {
  const asked: Question[] = [];
  const ask = (_: string, { design, quick }: Pick<Question, 'design' | 'quick'>) => {
    let settle: (outcome: Outcome<'field'>) => void = () => undefined;
    const outcome = new Promise<Outcome<'field'>>((resolve) => (settle = resolve));
    const answer = async (): Promise<void> => {
      const picture = { report: { title: design.title } } as FieldPicture;
      settle({ kind: 'answer', answer: { picture, judged: null }, took: 1 });
      await vi.advanceTimersByTimeAsync(0);
    };
    const question: Question = { design, quick, answer, stopped: false };
    asked.push(question);
    return { outcome, stop: () => (question.stopped = true) };
  };
  return { asked, thread: { ask } as unknown as Thread };
}

const said = (asked: readonly Question[]): readonly string[] =>
  asked.map(({ design, quick }) => `${quick ? 'coarse' : 'fine'} ${design.title}`);

describe('the field that follows the hand', () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  it('should show one coarse picture after the other while the build changes, each of the newest build', async () => {
    const { asked, thread: beside } = thread();
    const field = new FieldSearch(beside);
    for (const title of ['a', 'b', 'c']) field.look(build(title));
    expect(said(asked)).toEqual(['coarse a']);
    await asked[0]!.answer();
    // not of the newest build, but better than none
    expect(field.picture?.report.title).toBe('a');
    expect(said(asked)).toEqual(['coarse a', 'coarse c']);
    field.look(build('d'));
    await asked[1]!.answer();
    expect(field.picture?.report.title).toBe('c');
    expect(said(asked)).toEqual(['coarse a', 'coarse c', 'coarse d']);
    expect(asked.some(({ stopped }) => stopped)).toBe(false);
    expect([field.isCoarse, field.isBehind]).toEqual([true, true]);
    await asked[2]!.answer();
    expect(field.isBehind).toBe(false);
  });

  it('should begin the fine answer only when the build rests, and give it up when it moves on', async () => {
    const { asked, thread: beside } = thread();
    const field = new FieldSearch(beside);
    field.look(build('a'));
    await asked[0]!.answer();
    await vi.advanceTimersByTimeAsync(300);
    expect(asked).toHaveLength(1);
    field.look(build('b'));
    await asked[1]!.answer();
    await vi.advanceTimersByTimeAsync(400);
    expect(said(asked)).toEqual(['coarse a', 'coarse b', 'fine b']);
    field.look(build('c'));
    expect(asked[2]!.stopped).toBe(true);
    expect(field.done).toBeNull();
    await asked[3]!.answer();
    await vi.advanceTimersByTimeAsync(400);
    await asked[4]!.answer();
    expect(said(asked).slice(3)).toEqual(['coarse c', 'fine c']);
    expect([field.isCoarse, field.done, field.count]).toEqual([false, null, 4]);
  });

  it('should give up a first look that takes long when the build has moved on', async () => {
    const { asked, thread: beside } = thread();
    const field = new FieldSearch(beside);
    field.look(build('a'));
    await vi.advanceTimersByTimeAsync(10_500);
    field.look(build('b'));
    expect(asked[0]!.stopped).toBe(true);
    await asked[0]!.answer();
    expect(field.picture).toBeNull();
    await asked[1]!.answer();
    expect(field.picture?.report.title).toBe('b');
  });

  it('should look anew at a build that was left before its picture came', async () => {
    const { asked, thread: beside } = thread();
    const field = new FieldSearch(beside);
    const a = build('a');
    field.look(a);
    field.close();
    field.look(a);
    expect(said(asked)).toEqual(['coarse a', 'coarse a']);
    await asked[1]!.answer();
    expect(field.picture?.report.title).toBe('a');
  });
});
