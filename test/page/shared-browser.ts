// One browser for all the files of a worker. A browser context is handed on from test to test with its store emptied, for what
// it once fetched and compiled need not be fetched and compiled again; every page is new, and closed when its test is over.

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
const free: BrowserContext[] = [];
const inUse = new Set<BrowserContext>();

export const hasBrowser = (): boolean => inject('browser') !== '';

const sharedBrowser = (): Promise<Browser> =>
  (started ??= chromium.launch({ executablePath: inject('browser'), args: [...LAUNCH_ARGS] }));

/** A context of a test's own, for what stays with a context: a service worker, a lost network, a finger for a pointer. */
export const ownContext = async (options: BrowserContextOptions = {}): Promise<BrowserContext> =>
  (await sharedBrowser()).newContext(options);

/** A new page over an empty store; without the service worker, so that no test meets the files of an older build. */
export async function emptyPage(): Promise<Page> {
  const context = free.pop() ?? (await ownContext({ serviceWorkers: 'block' }));
  inUse.add(context);
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  const { origin } = new URL(inject('url'));
  await session.send('Storage.clearDataForOrigin', { origin, storageTypes: 'all' });
  await session.detach();
  return page;
}

/** Closes all that a test opened. */
export async function closePages(): Promise<void> {
  if (started === undefined) return;
  for (const context of (await started).contexts())
    if (inUse.delete(context)) {
      await Promise.all(context.pages().map((page) => page.close()));
      free.push(context);
    } else if (!free.includes(context)) await context.close();
}
