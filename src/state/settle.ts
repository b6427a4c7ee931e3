// What happens when the page opens and when it is left: a link's build or the last one is taken up, the newest change is kept.

import type { BuildStore } from './build-store.ts';
import { demos } from './demos.ts';
import type { Desk } from './desk.svelte.ts';
import { rememberedSheet } from './last-sheet.ts';

/** Returns what stops watching. */
export function settle(desk: Desk, store: BuildStore): () => void {
  void takeUp(desk, store);
  const leave = (): void => {
    if (document.visibilityState === 'hidden') void desk.keeper.flush();
  };
  const keep = (): void => void desk.keeper.flush();
  const followLink = (): void => void desk.openAddress();
  document.addEventListener('visibilitychange', leave);
  addEventListener('pagehide', keep);
  addEventListener('hashchange', followLink);
  return () => {
    document.removeEventListener('visibilitychange', leave);
    removeEventListener('pagehide', keep);
    removeEventListener('hashchange', followLink);
  };
}

async function takeUp(desk: Desk, store: BuildStore): Promise<void> {
  await desk.keeper.refresh();
  if (await desk.openAddress()) return;
  if (desk.pages.current !== 'sheet') return;
  const id = rememberedSheet();
  const demo = demos.find((each) => `demo:${each.id}` === id);
  if (demo !== undefined) return desk.openDemo(demo);
  const build = (id === null ? null : await store.find(id)) ?? desk.keeper.recent[0] ?? null;
  if (build !== null) await desk.layOut(build.doc, build);
}
