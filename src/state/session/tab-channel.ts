// Other tabs of this page: each says which build lies on its sheet, and hears when another has the same one. A tab that
// crashed says nothing any more: while one seems to have the same build, all are asked again, and the silent are forgotten.

export interface Tabs {
  readonly announce: (id: string | null) => void;
  readonly close: () => void;
}

interface Word {
  readonly tab: string;
  readonly id: string | null;
  /** An answer is not answered again. */
  readonly isAnswer: boolean;
}

/** So often they are asked, and so long they have to answer. */
const ASK_MS = 4000;
const ANSWER_MS = 1500;

/** `heard` is called with whether any other tab has the build of this one. */
export function listenToTabs(heard: (isElsewhere: boolean) => void): Tabs {
  if (typeof BroadcastChannel === 'undefined') return { announce: () => {}, close: () => {} };
  const channel = new BroadcastChannel('layerwright-sheets');
  const tab = crypto.randomUUID();
  /** With the number of the round in which each was heard last. */
  const others = new Map<string, { readonly id: string | null; readonly round: number }>();
  let mine: string | null = null;
  let round = 0;
  let timer: ReturnType<typeof setTimeout> | null = null;
  const tell = (isAnswer: boolean): void => channel.postMessage({ tab, id: mine, isAnswer } satisfies Word);
  const look = (): void => {
    const isElsewhere = mine !== null && [...others.values()].some(({ id }) => id === mine);
    heard(isElsewhere);
    if (isElsewhere) timer ??= setTimeout(ask, ASK_MS);
  };
  const ask = (): void => {
    round++;
    tell(false);
    timer = setTimeout(() => {
      timer = null;
      for (const [name, other] of others) if (other.round < round) others.delete(name);
      look();
    }, ANSWER_MS);
  };
  channel.onmessage = ({ data }: MessageEvent<Word>) => {
    others.set(data.tab, { id: data.id, round });
    if (!data.isAnswer) tell(true);
    look();
  };
  return {
    announce: (id) => {
      mine = id;
      tell(false);
      look();
    },
    close: () => {
      if (timer !== null) clearTimeout(timer);
      mine = null;
      tell(true);
      channel.close();
    },
  };
}
