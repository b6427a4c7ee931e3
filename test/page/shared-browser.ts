// One browser for all the files of a worker. A tab is handed on from test to test, its page left and its stores emptied: every
// test loads a page of its own, but what the tab's process once compiled need not be compiled again, which is half the cost.

import {
  chromium,
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  type Page,
} from 'playwright';
import { inject } from 'vitest';
import { LAUNCH_ARGS } from '#test/browser.mjs';

let started: Promise<Browser> | undefined;
const free: Page[] = [];
/** Pages lent to a test, each with what takes back the things that were set on it. */
const lent = new Map<Page, (() => unknown)[]>();

export const hasBrowser = (): boolean => inject('browser') !== '';

const sharedBrowser = (): Promise<Browser> =>
  (started ??= chromium.launch({ executablePath: inject('browser'), args: [...LAUNCH_ARGS] }));

/** A context of a test's own, for what stays with a context: a service worker, a lost network, a finger for a pointer. */
export const ownContext = async (options: BrowserContextOptions = {}): Promise<BrowserContext> =>
  (await sharedBrowser()).newContext(options);

/** A page over empty stores; without the service worker, so that no test meets the files of an older build. */
export async function emptyPage(): Promise<Page> {
  const page = free.pop() ?? (await (await ownContext({ serviceWorkers: 'block' })).newPage());
  lent.set(page, []);
  const session = await page.context().newCDPSession(page);
  const { origin } = new URL(inject('url'));
  await session.send('Storage.clearDataForOrigin', { origin, storageTypes: 'all' });
  await session.detach();
  return page;
}

/** Has this done before the next test is given the page; a page that is not handed on needs none of it. */
export const whenOver = (page: Page, undo: () => unknown): void => void lent.get(page)?.push(undo);

/** A script that runs before those of the page at each load, until the test is over. */
export async function beforeLoad<A>(page: Page, script: (of: A) => void, of: A): Promise<void> {
  const added = await page.addInitScript(script as (of: unknown) => void, of);
  whenOver(page, () => added.dispose());
}

/** Leaves and closes all that a test opened. What a failed test had is not handed on. */
export async function closePages(hasFailed: boolean): Promise<void> {
  if (started === undefined) return;
  if (hasFailed) free.length = 0;
  for (const context of (await started).contexts()) {
    const pages = context.pages();
    const kept = hasFailed ? undefined : pages.find((page) => lent.has(page) || free.includes(page));
    if (kept === undefined) await context.close();
    else for (const page of pages) await (page === kept ? handBack(page) : page.close());
  }
}

async function handBack(page: Page): Promise<void> {
  const undone = lent.get(page);
  if (undone === undefined) return;
  lent.delete(page);
  await Promise.all(undone.map((undo) => undo()));
  // out of the window, or what lies there on the next page would be under it
  await page.mouse.move(-100, -100);
  // of the same origin and without a script: the page is left, and what the tab itself stored is within reach
  await page.goto(`${inject('url')}icon.svg`, { waitUntil: 'commit' });
  await page.evaluate(() => sessionStorage.clear());
  free.push(page);
}
