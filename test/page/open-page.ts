// Opens the built page in a browser of its own and gathers everything that went wrong on it: errors, broken policy.

import axe from 'axe-core';
import { chromium, type Browser, type BrowserContextOptions, type Locator, type Page } from 'playwright';
import { inject } from 'vitest';
import { LAUNCH_ARGS } from '#test/browser.mjs';

export const hasBrowser = (): boolean => inject('browser') !== '';

export const launch = (): Promise<Browser> =>
  chromium.launch({ executablePath: inject('browser'), args: [...LAUNCH_ARGS] });

export interface OpenPage {
  readonly page: Page;
  readonly wrongs: readonly string[];
}

/** Without the service worker, so that no test meets the files of an older build. */
export async function openPage(
  browser: Browser,
  fragment = '',
  options: BrowserContextOptions = {},
): Promise<OpenPage> {
  const context = await browser.newContext({
    serviceWorkers: 'block',
    viewport: { width: 1440, height: 900 },
    ...options,
  });
  const page = await context.newPage();
  const wrongs = await gatherWrongs(page);
  await page.goto(inject('url') + fragment);
  await page.locator('html[data-ready]').waitFor();
  return { page, wrongs };
}

export async function gatherWrongs(page: Page): Promise<readonly string[]> {
  const wrongs: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') wrongs.push(message.text());
  });
  page.on('pageerror', (error) => wrongs.push(error.message));
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (event) => {
      console.error(`policy: ${event.violatedDirective} ${event.blockedURI}`);
    });
  });
  return wrongs;
}

/** The verdict in words as the page shows it. */
export const verdictOf = (page: Page): Promise<string> => page.locator('#verdict-words').innerText();

/** Waits until what is shown is judged. */
export async function judged(page: Page): Promise<void> {
  await page.locator('.judging').waitFor({ state: 'detached' });
  await page.locator('#verdict-words', { hasText: 'Judging' }).waitFor({ state: 'detached' });
}

/** What axe finds wrong with the page as it stands, one line a rule. */
export async function axeFaults(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  const { violations } = await page.evaluate(() =>
    (globalThis as unknown as { axe: typeof axe }).axe.run(document, { resultTypes: ['violations'] }),
  );
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`);
}

/** Collects each text that an element shows from now on: what stands there only for a moment is not missed. */
export async function textsOf(element: Locator): Promise<() => Promise<readonly string[]>> {
  const texts = await element.evaluateHandle((node) => {
    const list: string[] = [];
    new MutationObserver(() => list.push(node.textContent ?? '')).observe(node, {
      childList: true,
      characterData: true,
      subtree: true,
    });
    return list;
  });
  return () => texts.jsonValue();
}

/** Where the middle of an element is, once it has come to rest. */
export async function middle(element: Locator): Promise<[number, number]> {
  const box = await element.evaluate(
    (node) =>
      new Promise<DOMRect>((resolve) => {
        const look = (before: DOMRect | null): void => {
          const now = node.getBoundingClientRect();
          const isAtRest = before?.x === now.x && before.y === now.y && before.width === now.width;
          if (isAtRest) resolve(now);
          else requestAnimationFrame(() => requestAnimationFrame(() => look(now)));
        };
        look(null);
      }),
  );
  return [box.x + box.width / 2, box.y + box.height / 2];
}

/** Lays a build on the sheet that this browser keeps, not the invented one of the same name. */
export async function openKept(page: Page, title: string): Promise<void> {
  await page.evaluate(() => (location.hash = 'open'));
  await page.locator('button.take', { hasText: title }).click();
  await page.getByRole('heading', { level: 1, name: title }).waitFor();
}

/** Lays one of the invented builds on the sheet. */
export async function openDemo(page: Page, title: string): Promise<void> {
  await page.evaluate(() => (location.hash = 'open'));
  await page.getByRole('button', { name: title }).click();
  await page.getByRole('heading', { level: 1, name: title }).waitFor();
}
