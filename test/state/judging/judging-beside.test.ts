import { describe, expect, it, vi } from 'vitest';
import { readDesign } from '#model/read/read-design.ts';
import type { PairAnswer } from '#judge/judging/pair-answers.ts';
import { judge, judgePlain, withTurns } from '#judge/judging/judge.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import { sketch } from '#judge/judging/sketch.ts';
import { demos, firstBuild } from '#state/begin/demos.ts';
import { answerers } from '#state/threads/answers/answerers.ts';
import type { AskName } from '#state/threads/asks/asks.ts';
import { firstJudged, firstJudgement } from '#state/begin/first-judgement.ts';
import { judgeErrand } from '#state/judging/judge-errand.ts';
import { judgingBeside } from '#state/judging/judging-beside.ts';
import type { FromThread, ToThread } from '#state/threads/asks/messages.ts';
import { Thread, type WorkerLike } from '#state/threads/thread.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Design } from '#model/design.ts';

function designOf(doc: DesignFile): Design {
  const read = readDesign(doc, knownIds);
  if (read.kind === 'bad') throw new Error(JSON.stringify(read.faults));
  return read.design;
}

/** Each invented build, judged once for all tests of this file. */
const judgedDemos = Promise.all(
  demos.map(async (demo) => {
    const design = designOf(await demo.load());
    return { id: demo.id, design, here: judge(design) };
  }),
);

/** A thread that answers in this one; what goes in and out is cloned, as between threads. */
class HereWorker implements WorkerLike {
  onmessage: WorkerLike['onmessage'] = null;
  onerror: WorkerLike['onerror'] = null;
  onmessageerror: WorkerLike['onmessageerror'] = null;

  postMessage(message: ToThread): void {
    if (message.kind === 'ask') void this.#work(structuredClone(message));
  }

  async #work({ number, ask, question }: Extract<ToThread, { kind: 'ask' }>): Promise<void> {
    const say = (data: FromThread): void =>
      this.onmessage?.({ data: structuredClone(data) } as MessageEvent<FromThread>);
    try {
      const answerer = await (answerers[ask as AskName]() as Promise<(q: unknown, t: unknown) => Generator>);
      const steps = answerer(question, (told: never) => say({ kind: 'told', number, told }));
      let step = steps.next();
      while (step.done !== true) step = steps.next();
      say({ kind: 'answer', number, answer: step.value as never, took: 1 });
    } catch (error) {
      say({ kind: 'broke', number, says: (error as Error).message, took: 1 });
    }
  }

  terminate(): void {}
}

const NOTHING_EARLY = (): undefined => undefined;

const thread = (): Thread => new Thread({ silentMs: 60_000, start: () => new HereWorker() });

describe('judging beside the page', () => {
  it('should answer with the same judgement as on the page, turns included, for every demo build', async () => {
    const beside = judgingBeside(thread());
    const toldEarly: string[] = [];
    for (const { id, design, here } of await judgedDemos) {
      const asked = here.verdict.pairs.filter(({ needed }) => needed !== 'functional');
      let early: readonly PairAnswer[] | null = null;
      const answer = await beside(design, (told) => (early = told)).answer;
      if (early !== null) {
        toldEarly.push(id);
        expect(early, id).toEqual(asked.map(({ between, verdict }) => ({ between, verdict })));
      }
      if (answer.kind !== 'judged') throw new Error(`${id}: ${answer.kind}`);
      expect(answer.judgement.verdict, id).toEqual(here.verdict);
      expect(answer.judgement.sections, id).toEqual(here.sections);
      for (const { name } of here.sections)
        expect(answer.judgement.turns.get(name), `${id} ${name}`).toEqual(here.turns.get(name));
    }
    // the one of which half is open
    expect(toldEarly).toContain('flea-market-drill');
  });

  it('should give a sign every second or so that it goes on', async () => {
    let clock = 0;
    const now = vi.spyOn(performance, 'now').mockImplementation(() => (clock += 600));
    const told: unknown[] = [];
    const answerer = await answerers.judge();
    const steps = answerer(designOf(firstBuild), (word) => told.push(word));
    while (steps.next().done !== true);
    now.mockRestore();
    expect(told.length).toBeGreaterThan(0);
    expect(told.every((word) => word === null)).toBe(true);
  });

  it('should say what broke when judging broke', async () => {
    const design = { ...designOf(firstBuild), rules: 'no-such-book' } as Design;
    const broke = { kind: 'broke', says: 'no rule book no-such-book' };
    expect(await judgingBeside(thread())(design, NOTHING_EARLY).answer).toMatchObject(broke);
    expect(await judgeErrand(thread())(design)).toMatchObject(broke);
  });

  it('should judge an errand on the page where no thread is to be had', async () => {
    const none = new Thread({
      silentMs: 1,
      start: () => {
        throw new ReferenceError('Worker is not defined');
      },
    });
    const answer = await judgeErrand(none)(designOf(firstBuild));
    expect(answer).toMatchObject({ kind: 'judged', judgement: { verdict: { title: firstBuild.title } } });
    expect(await judgingBeside(none)(designOf(firstBuild), NOTHING_EARLY).answer).toEqual({ kind: 'away' });
  });

  it('should tell each deciding figure as it is found', async () => {
    const design = designOf(firstBuild);
    const open = judge(design).verdict.assumptions.slice(0, 2);
    const told: number[] = [];
    const question = { doc: firstBuild, open: open.map(({ field, between }) => ({ field, between })) };
    const { outcome } = thread().ask('decide', question, ({ place }) => told.push(place));
    expect((await outcome).kind).toBe('answer');
    expect(told).toEqual(open.map((_, place) => place));
  });

  it('should give turns of the build that crossed', () => {
    const plain = judgePlain(designOf(firstBuild), new PathCache());
    expect(withTurns(plain).turns.get('plain')!.length).toBeGreaterThan(0);
    expect(withTurns(plain).turns.get('no such section')).toBeUndefined();
  });

  it('should carry the first judgement as plain data', () => {
    const { judgement, doc } = firstJudged(structuredClone(firstJudgement()));
    expect(doc).toBe(firstBuild);
    expect(judgement.verdict).toEqual(judge(designOf(firstBuild)).verdict);
  });
});

describe('sketch', () => {
  it('should lie as the judged plain section does, in every demo build, and tell of no pair', async () => {
    for (const { id, design, here: judged } of await judgedDemos) {
      const drawn = sketch(design);
      expect(drawn.sections, id).toHaveLength(1);
      const { geometry, ...plain } = judged.sections[0] as (typeof judged.sections)[0] & {
        geometry: number;
      };
      void geometry;
      expect(drawn.sections[0], id).toEqual(plain);
      expect(drawn.turns.get('plain'), id).toEqual(judged.turns.get('plain'));
      expect(drawn.verdict.fit, id).toEqual(judged.verdict.fit);
      expect(drawn.verdict.pairs, id).toEqual([]);
    }
  });
});
