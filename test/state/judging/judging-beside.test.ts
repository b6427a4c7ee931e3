import { afterEach, describe, expect, it, vi } from 'vitest';
import { readDesign } from '#model/read/read-design.ts';
import { judge, judgePlain, withTurns } from '#judge/judge.ts';
import { knownIds } from '#judge/fill/known-ids.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import { demos, firstBuild } from '#state/begin/demos.ts';
import { judgingAnswer } from '#state/judging/judging-answer.ts';
import { judgingBeside } from '#state/judging/judging-beside.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Design } from '#model/design.ts';

function designOf(doc: DesignFile): Design {
  const read = readDesign(doc, knownIds);
  if (read.kind === 'bad') throw new Error(JSON.stringify(read.faults));
  return read.design;
}

/** A thread as far as it is used here: what goes in and out is cloned, as between threads. */
class Thread {
  onmessage: ((event: { readonly data: unknown }) => void) | null = null;
  onerror: (() => void) | null = null;
  static made = 0;

  constructor() {
    Thread.made++;
  }

  postMessage(question: Design): void {
    const design = structuredClone(question);
    const answer = judgingAnswer(() => judgePlain(design, new PathCache()));
    queueMicrotask(() => this.onmessage?.({ data: structuredClone(answer) }));
  }

  terminate(): void {}
}

function page(thread: unknown, protocol = 'https:'): void {
  vi.stubGlobal('location', { protocol });
  vi.stubGlobal('Worker', thread);
}

describe('judgingBeside', () => {
  afterEach(() => vi.unstubAllGlobals());

  it('should answer with the same judgement as on the page, turns included, for every demo build', async () => {
    page(Thread);
    const beside = judgingBeside();
    Thread.made = 0;
    for (const demo of demos) {
      const design = designOf(await demo.load());
      const answer = await beside(design);
      if (answer.kind !== 'judged') throw new Error(`${demo.id}: ${answer.kind}`);
      const here = judge(design);
      expect(answer.judgement.verdict, demo.id).toEqual(here.verdict);
      expect(answer.judgement.sections, demo.id).toEqual(here.sections);
      for (const { name } of here.sections)
        expect(answer.judgement.turns.get(name), `${demo.id} ${name}`).toEqual(here.turns.get(name));
    }
    expect(Thread.made).toBe(1);
  });

  it('should say what broke when judging broke', async () => {
    page(Thread);
    const design = { ...designOf(firstBuild), rules: 'no-such-book' } as Design;
    expect(await judgingBeside()(design)).toMatchObject({ kind: 'broke', says: 'no rule book no-such-book' });
  });

  it('should be away where no thread can be made, where it breaks, and on a page from the disk', async () => {
    const design = designOf(firstBuild);
    page(undefined);
    expect(await judgingBeside()(design)).toEqual({ kind: 'away' });
    page(
      class extends Thread {
        override postMessage(): void {
          queueMicrotask(() => this.onerror?.());
        }
      },
    );
    expect(await judgingBeside()(design)).toEqual({ kind: 'away' });
    page(Thread, 'file:');
    Thread.made = 0;
    expect(await judgingBeside()(design)).toEqual({ kind: 'away' });
    expect(Thread.made).toBe(0);
  });

  it('should give turns of the build that crossed', () => {
    const plain = judgePlain(designOf(firstBuild), new PathCache());
    expect(withTurns(plain).turns.get('plain')!.length).toBeGreaterThan(0);
    expect(withTurns(plain).turns.get('no such section')).toBeUndefined();
  });
});
