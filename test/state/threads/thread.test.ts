import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Design } from '#model/design.ts';
import type { FromThread, ToThread } from '#state/threads/asks/messages.ts';
import { Thread, type WorkerLike } from '#state/threads/thread.ts';

const SILENT_MS = 1000;
const design = (title: string): Design => ({ title }) as Design;

/** A worker that says only what the test lets it say. */
class FakeWorker implements WorkerLike {
  onmessage: WorkerLike['onmessage'] = null;
  onerror: WorkerLike['onerror'] = null;
  onmessageerror: WorkerLike['onmessageerror'] = null;
  readonly heard: ToThread[] = [];
  isEnded = false;

  postMessage(message: ToThread): void {
    this.heard.push(structuredClone(message));
  }

  terminate(): void {
    this.isEnded = true;
  }

  say(data: FromThread): void {
    this.onmessage?.({ data } as MessageEvent<FromThread>);
  }

  answer(number: number): void {
    this.say({ kind: 'answer', number, answer: null as never, took: 1 });
  }

  get asked(): readonly number[] {
    return this.heard.flatMap(({ kind, number }) => (kind === 'ask' ? [number] : []));
  }
}

describe('Thread', () => {
  beforeEach(() => vi.useFakeTimers());
  afterEach(() => vi.useRealTimers());

  function begin() {
    const workers: FakeWorker[] = [];
    const thread = new Thread({
      silentMs: SILENT_MS,
      start: () => {
        workers.push(new FakeWorker());
        return workers.at(-1)!;
      },
    });
    return { thread, workers };
  }

  it('should start one worker with the first question and give each answer to its question', async () => {
    const { thread, workers } = begin();
    expect(workers).toHaveLength(0);
    const one = thread.ask('judge', design('one'));
    const two = thread.ask('judge', design('two'));
    expect(workers).toHaveLength(1);
    workers[0]!.answer(2);
    expect(await two.outcome).toMatchObject({ kind: 'answer', took: 1 });
    workers[0]!.say({ kind: 'broke', number: 1, says: 'no such table', took: 2 });
    expect(await one.outcome).toEqual({ kind: 'broke', number: 1, says: 'no such table', took: 2 });
  });

  it('should hand on what is told on the way', () => {
    const { thread, workers } = begin();
    const told: unknown[] = [];
    thread.ask('decide', { doc: {} as never, open: [] }, (word) => told.push(word));
    const word = { place: 3, deciding: { kind: 'no-figure' } } as const;
    workers[0]!.say({ kind: 'told', number: 1, told: word as never });
    expect(told).toEqual([word]);
  });

  it('should take a thread that gives no sign within the bound for lost, and start another', async () => {
    const { thread, workers } = begin();
    const one = thread.ask('judge', design('one'));
    vi.advanceTimersByTime(SILENT_MS - 1);
    expect(workers[0]!.isEnded).toBe(false);
    vi.advanceTimersByTime(1);
    expect(await one.outcome).toEqual({ kind: 'lost', why: 'silent' });
    expect(workers[0]!.isEnded).toBe(true);
    thread.ask('judge', design('two'));
    expect(workers).toHaveLength(2);
  });

  it('should leave a thread that gives signs at work, and one without a question alone', () => {
    const { thread, workers } = begin();
    thread.ask('decide', { doc: {} as never, open: [] });
    for (let k = 0; k < 5; k++) {
      vi.advanceTimersByTime(SILENT_MS - 1);
      workers[0]!.say({ kind: 'told', number: 1, told: null as never });
    }
    workers[0]!.answer(1);
    vi.advanceTimersByTime(10 * SILENT_MS);
    expect(workers.map(({ isEnded }) => isEnded)).toEqual([false]);
  });

  it('should tell all questions of a crashed thread lost', async () => {
    const { thread, workers } = begin();
    const both = [thread.ask('judge', design('one')), thread.ask('judge', design('two'))];
    workers[0]!.say({ kind: 'ready' });
    workers[0]!.onerror?.({} as ErrorEvent);
    for (const { outcome } of both) expect(await outcome).toEqual({ kind: 'lost', why: 'crashed' });
  });

  it('should be away once its script did not come twice, or where there are no threads', async () => {
    const { thread, workers } = begin();
    const one = thread.ask('judge', design('one'));
    workers[0]!.onerror?.({} as ErrorEvent);
    expect(await one.outcome).toEqual({ kind: 'lost', why: 'crashed' });
    const two = thread.ask('judge', design('two'));
    workers[1]!.onerror?.({} as ErrorEvent);
    expect(await two.outcome).toEqual({ kind: 'away' });
    expect(await thread.ask('judge', design('three')).outcome).toEqual({ kind: 'away' });
    expect(workers).toHaveLength(2);
    const none = new Thread({
      silentMs: SILENT_MS,
      start: () => {
        throw new ReferenceError('Worker is not defined');
      },
    });
    expect(await none.ask('judge', design('one')).outcome).toEqual({ kind: 'away' });
  });

  it('should let a stopped question go, and keep the thread where it lets it go too', async () => {
    const { thread, workers } = begin();
    const one = thread.ask('judge', design('one'));
    one.stop();
    expect(await one.outcome).toEqual({ kind: 'stopped' });
    workers[0]!.say({ kind: 'stopped', number: 1 });
    vi.advanceTimersByTime(SILENT_MS);
    expect(workers[0]!.isEnded).toBe(false);
  });

  it('should end a thread that does not let a stopped question go, and ask the others once more', async () => {
    const { thread, workers } = begin();
    const one = thread.ask('judge', design('one'));
    const two = thread.ask('judge', design('two'));
    one.stop();
    vi.advanceTimersByTime(SILENT_MS / 2);
    expect(workers.map(({ isEnded, asked }) => [isEnded, asked])).toEqual([
      [true, [1, 2]],
      [false, [2]],
    ]);
    // what an ended worker still says is not heard
    workers[0]!.answer(2);
    workers[1]!.say({ kind: 'broke', number: 2, says: 'told by the second', took: 1 });
    expect(await two.outcome).toMatchObject({ says: 'told by the second' });
  });

  it('should say that a question cannot cross, and go on', async () => {
    const { thread, workers } = begin();
    const one = thread.ask('judge', { title: () => {} } as unknown as Design);
    expect(await one.outcome).toMatchObject({ kind: 'broke', took: 0 });
    const two = thread.ask('judge', design('two'));
    workers[0]!.answer(2);
    expect((await two.outcome).kind).toBe('answer');
  });
});
