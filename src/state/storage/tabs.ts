// Other tabs of this page: each says which build lies on its sheet, and hears when another has the same one.

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

/** `heard` is called with whether any other tab has the build of this one. */
export function listenToTabs(heard: (isElsewhere: boolean) => void): Tabs {
  if (typeof BroadcastChannel === 'undefined') return { announce: () => {}, close: () => {} };
  const channel = new BroadcastChannel('layerwright-sheets');
  const tab = crypto.randomUUID();
  const others = new Map<string, string | null>();
  let mine: string | null = null;
  const tell = (isAnswer: boolean): void => channel.postMessage({ tab, id: mine, isAnswer } satisfies Word);
  const look = (): void => heard(mine !== null && [...others.values()].includes(mine));
  channel.onmessage = ({ data }: MessageEvent<Word>) => {
    others.set(data.tab, data.id);
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
      mine = null;
      tell(true);
      channel.close();
    },
  };
}
