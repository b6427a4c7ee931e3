// What happens when the page opens and when it is left: a link's build or the last one is taken up, the newest change is kept.

import type { BuildStore } from '#state/storage/build-store.ts';
import { demos } from '#state/begin/demos.ts';
import type { App } from './app.svelte.ts';
import { keepSteps, keptSteps } from '#state/session/session-steps.ts';
import { rememberedSheet } from '#state/session/last-sheet.ts';
import { isSheetSafe } from '#state/storage/import-design.ts';
import { pageOf } from './page-list.ts';
import { Repair } from './repair.svelte.ts';

/** Returns what stops watching. */
export function startApp(app: App, store: BuildStore): () => void {
  void takeUp(app, store);
  const leave = (): void => {
    if (document.visibilityState === 'hidden') void app.autosave.flush();
  };
  const keep = (): void => {
    const { editor } = app.workspace;
    // a field that was not left yet is left now, which keeps what stands in it
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
    keepSteps(app.autosave.id ?? rememberedSheet(), editor.doc, editor.history(MOST_STEPS));
    void app.autosave.flush();
  };
  const followLink = (): void => void app.openAddress();
  document.addEventListener('visibilitychange', leave);
  const warn = (event: BeforeUnloadEvent): void => {
    if (app.autosave.wouldLose) event.preventDefault();
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

async function takeUp(app: App, store: BuildStore): Promise<void> {
  await app.autosave.refresh();
  if (await app.openAddress()) return;
  const page = app.pages.current;
  if (page === 'repair') app.repair ??= Repair.left();
  const id = rememberedSheet();
  // the first page shows again what this tab worked on; a new tab begins with the invented build
  if (!pageOf(page).ofBuild && !(page === 'start' && id !== null)) return;
  const demo = demos.find((each) => `demo:${each.id}` === id);
  const build = (id === null ? null : await store.find(id)) ?? app.autosave.recent?.[0] ?? null;
  if (demo !== undefined) {
    await app.layDemo(demo);
    resumeLeft(app, `demo:${demo.id}`, 0);
  } else if (build !== null) {
    // a wrong entry that stood on the sheet stands there again
    if (!isSheetSafe(build.doc)) return app.openKept(build);
    await app.lay(build.doc, build);
    resumeLeft(app, build.id, build.saved);
  }
}

/** As this tab left the build, unless it was kept anew since: the last figure typed, and the steps to undo it all. */
function resumeLeft(app: App, id: string, saved: number): void {
  const { editor } = app.workspace;
  const found = keptSteps(id);
  if (found === null) return;
  const isSame = JSON.stringify(found.doc) === JSON.stringify(editor.doc);
  if (!isSame && found.left < saved) return;
  if (!isSame) editor.change(found.doc, found.past[0]?.says ?? 'what was typed last');
  editor.resume(found);
}

/** Steps that outlast a reload. */
const MOST_STEPS = 500;
