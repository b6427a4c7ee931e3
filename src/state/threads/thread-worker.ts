// The thread beside the page: works on its questions in turn, a breath at a time, and says what comes of each.

import { answerers } from '#state/threads/answers/answerers.ts';
import type { Answerer, AskName } from '#state/threads/asks/asks.ts';
import type { AskMessage, FromThread, ToThread } from '#state/threads/asks/messages.ts';

interface Work {
  readonly number: number;
  readonly steps: Generator<void, unknown, void>;
  took: number;
}

/** Worked on without looking for messages. */
const TURN_MS = 10;

const say = (word: FromThread): void => postMessage(word);
const loaded = new Map<AskName, Promise<Answerer<AskName>>>();
const stopped = new Set<number>();
let works: readonly Work[] = [];
let isTurning = false;

addEventListener('message', ({ data }: MessageEvent<ToThread>) => {
  if (data.kind === 'ask') void begin(data);
  else {
    stopped.add(data.number);
    works = works.filter(({ number }) => number !== data.number);
    say({ kind: 'stopped', number: data.number });
  }
});
say({ kind: 'ready' });

async function begin<A extends AskName>({ number, ask, question }: AskMessage<A>): Promise<void> {
  try {
    const answerer = loaded.get(ask) ?? (answerers[ask]() as Promise<unknown> as Promise<Answerer<AskName>>);
    loaded.set(ask, answerer);
    const steps = (await answerer)(question, (told) => say({ kind: 'told', number, told }));
    if (stopped.has(number)) return;
    works = [...works, { number, steps, took: 0 }];
    if (!isTurning) void turn();
  } catch (error) {
    broke(number, error, 0);
  }
}

/** One piece of each work after the other, until none is left. */
async function turn(): Promise<void> {
  isTurning = true;
  while (works.length > 0) {
    for (const work of works) if (!stopped.has(work.number)) advance(work);
    await new Promise((goOn) => setTimeout(goOn, 0));
  }
  isTurning = false;
}

function advance(work: Work): void {
  const start = performance.now();
  const tookBefore = work.took;
  try {
    do {
      const { done, value } = work.steps.next();
      work.took = tookBefore + performance.now() - start;
      if (done !== true) continue;
      end(work);
      say({ kind: 'answer', number: work.number, answer: value as never, took: work.took });
      return;
    } while (performance.now() - start < TURN_MS);
  } catch (error) {
    end(work);
    broke(work.number, error, tookBefore + performance.now() - start);
  }
}

function end(work: Work): void {
  works = works.filter((other) => other !== work);
}

const broke = (number: number, error: unknown, took: number): void =>
  say({ kind: 'broke', number, says: error instanceof Error ? error.message : String(error), took });
