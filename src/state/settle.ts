// What happens when the page opens and when it is left: a link's build or the last one is taken up, the newest change is kept.

import type { BuildStore } from './build-store.ts';
import { demos } from './demos.ts';
import type { Desk } from './desk.svelte.ts';
import { keepSteps, keptSteps } from './kept-steps.ts';
import { rememberedSheet } from './last-sheet.ts';
import type { PageName } from './pages.svelte.ts';

/** Returns what stops watching. */
export function settle(desk: Desk, store: BuildStore): () => void {
  void takeUp(desk, store);
  const leave = (): void => {
    if (document.visibilityState === 'hidden') void desk.keeper.flush();
  };
  const keep = (): void => {
    const { editor } = desk.bench;
    keepSteps(desk.keeper.id, editor.doc, editor.history(MOST_STEPS));
    void desk.keeper.flush();
  };
  const followLink = (): void => void desk.openAddress();
  document.addEventListener('visibilitychange', leave);
  const warn = (event: BeforeUnloadEvent): void => {
    if (desk.keeper.wouldLose) event.preventDefault();
  };
  addEventListener('pagehide', keep);
  addEventListener('beforeunload', warn);
  addEventListener('hashchange', followLink);
  return () => {
    document.removeEventListener('visibilitychange', leave);
    removeEventListener('pagehide', keep);
    removeEventListener('beforeunload', warn);
    removeEventListener('hashchange', followLink);
  };
}

async function takeUp(desk: Desk, store: BuildStore): Promise<void> {
  await desk.keeper.refresh();
  if (await desk.openAddress()) return;
  const page = desk.pages.current;
  if (!OVER_BUILD.includes(page)) return;
  const id = rememberedSheet();
  const demo = demos.find((each) => `demo:${each.id}` === id);
  const build = (id === null ? null : await store.find(id)) ?? desk.keeper.recent?.[0] ?? null;
  if (demo !== undefined) await desk.openDemo(demo);
  else if (build !== null) {
    await desk.layOut(build.doc, build);
    const steps = keptSteps(build.id, build.doc);
    if (steps !== null) desk.bench.editor.resume(steps);
  }
  if (desk.pages.current !== page) desk.pages.go(page);
}

/** Steps that outlast a reload. */
const MOST_STEPS = 500;

/** Pages that show the build itself, so that a reload must bring it back. */
const OVER_BUILD: readonly PageName[] = [
  'sheet',
  'stress',
  'report',
  'photographs',
  'taking-apart',
  'decide',
];
