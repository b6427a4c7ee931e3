// How long the judgement of the build on the sheet has been waited for. What comes within a moment is not waited for: until then
// the verdict before it stands, and nothing flickers.

const MOMENT_MS = 500;
const LOOK_MS = 250;

export class Waiting {
  /** Whole seconds; null where nothing is waited for, or only for a moment. */
  seconds: number | null = $state(null);

  /** Returns what ends it. */
  start(isBehind: () => boolean): () => void {
    return $effect.root(() => {
      $effect(() => {
        this.seconds = null;
        if (!isBehind()) return;
        const since = performance.now();
        const timer = setInterval(() => {
          const waited = performance.now() - since;
          if (waited >= MOMENT_MS) this.seconds = Math.floor(waited / 1000);
        }, LOOK_MS);
        return () => clearInterval(timer);
      });
    });
  }
}
