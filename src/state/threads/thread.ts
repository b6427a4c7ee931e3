// One thread beside the page, watched: where it gives no sign for too long, or crashes, or runs out of memory, it is ended
// and its questions are told lost; the next question starts another. A stopped question that it does not let go ends it too.

import type { AnswerOf, AskName, QuestionOf, ToldOf } from '#state/threads/asks/asks.ts';
import type { FromThread, ToThread } from '#state/threads/asks/messages.ts';

export type Outcome<A extends AskName> =
  | { readonly kind: 'answer'; readonly answer: AnswerOf<A>; readonly took: number }
  /** A fault of the program in answering. */
  | { readonly kind: 'broke'; readonly says: string; readonly took: number }
  | { readonly kind: 'stopped' }
  /** The thread gave no sign within the bound, or ended. */
  | { readonly kind: 'lost'; readonly why: 'silent' | 'crashed' }
  /** There is no thread to be had, now and later. */
  | { readonly kind: 'away' };

export interface Asked<A extends AskName> {
  readonly outcome: Promise<Outcome<A>>;
  readonly stop: () => void;
}

/** What is used of a `Worker`. */
export interface WorkerLike {
  onmessage: ((event: MessageEvent<FromThread>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
  onmessageerror: ((event: MessageEvent) => void) | null;
  readonly postMessage: (message: ToThread) => void;
  readonly terminate: () => void;
}

export interface ThreadWorld {
  /** Throws where there are no threads. */
  readonly start: () => WorkerLike;
  /** Without a sign for so long, a thread that has a question is taken for lost. */
  readonly silentMs: number;
}

/** So long a stopped question may go on before its thread is ended. */
const LET_GO_MS = 150;
const MOST_FAILURES = 2;

const isUncloneable = (error: unknown): boolean =>
  error instanceof DOMException && error.name === 'DataCloneError';

interface Open {
  readonly message: ToThread;
  readonly settle: (outcome: Outcome<AskName>) => void;
  readonly told: (told: ToldOf<AskName>) => void;
}

export class Thread {
  #worker: WorkerLike | null = null;
  #isReady = false;
  #isAway = false;
  /** Starts that came to nothing. */
  #failures = 0;
  #count = 0;
  #watch: ReturnType<typeof setTimeout> | null = null;
  readonly #open = new Map<number, Open>();
  /** Stopped, and not yet let go by the thread. */
  readonly #letGo = new Set<number>();
  readonly #world: ThreadWorld;

  constructor(world: ThreadWorld) {
    this.#world = world;
  }

  ask<A extends AskName>(
    ask: A,
    question: QuestionOf<A>,
    told: (told: ToldOf<A>) => void = () => {},
  ): Asked<A> {
    const number = ++this.#count;
    const message = { kind: 'ask', number, ask, question } as unknown as ToThread;
    const outcome = new Promise<Outcome<A>>((settle) => {
      this.#open.set(number, { message, settle, told } as unknown as Open);
    });
    this.#post(message);
    return { outcome, stop: () => this.#stop(number) };
  }

  /** Ends the thread and all that it works on. */
  end(outcome: Outcome<AskName> = { kind: 'stopped' }): void {
    this.#drop();
    const open = [...this.#open.values()];
    this.#open.clear();
    this.#keepWatch();
    for (const { settle } of open) settle(outcome);
  }

  #post(message: ToThread): void {
    if (this.#isAway) return this.end({ kind: 'away' });
    try {
      this.#worker ??= this.#begin();
      this.#worker.postMessage(message);
      this.#keepWatch();
    } catch (error) {
      if (isUncloneable(error)) return this.#refuse(message, String(error));
      this.#isAway = true;
      this.end({ kind: 'away' });
    }
  }

  /** A question that cannot cross is a fault of the page's own, and no reason to end the thread. */
  #refuse({ number }: ToThread, says: string): void {
    const open = this.#open.get(number);
    this.#open.delete(number);
    open?.settle({ kind: 'broke', says, took: 0 });
    this.#keepWatch();
  }

  #begin(): WorkerLike {
    const worker = this.#world.start();
    const isMine = (): boolean => this.#worker === worker;
    worker.onmessage = ({ data }) => {
      if (isMine()) this.#hear(data);
    };
    const fail = (): void => {
      if (!isMine()) return;
      // a script that did not come twice will not come the next time either
      if (!this.#isReady) this.#failures++;
      this.#isAway = this.#failures >= MOST_FAILURES;
      this.end(this.#isAway ? { kind: 'away' } : { kind: 'lost', why: 'crashed' });
    };
    worker.onerror = fail;
    worker.onmessageerror = fail;
    return worker;
  }

  #hear(word: FromThread): void {
    this.#isReady = true;
    this.#failures = 0;
    if (word.kind === 'stopped') this.#letGo.delete(word.number);
    else if (word.kind === 'told') this.#open.get(word.number)?.told(word.told);
    else if (word.kind !== 'ready') {
      const open = this.#open.get(word.number);
      this.#open.delete(word.number);
      open?.settle(word);
    }
    this.#keepWatch();
  }

  #stop(number: number): void {
    const open = this.#open.get(number);
    const worker = this.#worker;
    if (open === undefined || worker === null) return;
    this.#open.delete(number);
    open.settle({ kind: 'stopped' });
    this.#letGo.add(number);
    worker.postMessage({ kind: 'stop', number });
    this.#keepWatch();
    setTimeout(() => {
      if (this.#worker === worker && this.#letGo.has(number)) this.#startAnew();
    }, LET_GO_MS);
  }

  /** What was not stopped is asked once more. */
  #startAnew(): void {
    this.#drop();
    for (const { message } of this.#open.values()) this.#post(message);
  }

  #drop(): void {
    this.#worker?.terminate();
    this.#worker = null;
    this.#isReady = false;
    this.#letGo.clear();
  }

  #keepWatch(): void {
    if (this.#watch !== null) clearTimeout(this.#watch);
    this.#watch = null;
    if (this.#open.size === 0) return;
    this.#watch = setTimeout(() => this.end({ kind: 'lost', why: 'silent' }), this.#world.silentMs);
  }
}
