// Opens the built page in a browser and gathers everything that went wrong on it: errors, broken policy.

import axe from 'axe-core';
import type { BrowserContextOptions, ConsoleMessage, Locator, Page } from 'playwright';
import { expect, inject } from 'vitest';
import { beforeLoad, emptyPage, ownContext, whenOver } from './shared-browser.ts';

export interface OpenPage {
  readonly page: Page;
  readonly wrongs: readonly string[];
}

const WIDE = { width: 1440, height: 900 };

/**
 * What a page is given is set on a page of the shared store; what only a context can be given asks for one of its own.
 * `prepare` has the page before anything of it is loaded.
 */
export async function openPage(
  fragment = '',
  options: BrowserContextOptions = {},
  prepare?: (page: Page) => Promise<unknown>,
): Promise<OpenPage> {
  const { viewport = WIDE, colorScheme = 'light', reducedMotion = 'no-preference', ...others } = options;
  const isPlain = Object.keys(others).length === 0;
  const page = isPlain
    ? await emptyPage()
    : await (await ownContext({ serviceWorkers: 'block', viewport, ...others })).newPage();
  if (isPlain && viewport !== null) await page.setViewportSize(viewport);
  await page.emulateMedia({ colorScheme, reducedMotion, media: null, forcedColors: null, contrast: null });
  const wrongs = await gatherWrongs(page);
  await prepare?.(page);
  await page.goto(inject('url') + fragment);
  await page.locator('html[data-ready]').waitFor();
  return { page, wrongs };
}

export async function gatherWrongs(page: Page): Promise<readonly string[]> {
  const wrongs: string[] = [];
  const ofConsole = (message: ConsoleMessage): void => {
    if (message.type() === 'error') wrongs.push(message.text());
  };
  const ofPage = (error: Error): void => void wrongs.push(error.message);
  page.on('console', ofConsole);
  page.on('pageerror', ofPage);
  whenOver(page, () => page.off('console', ofConsole).off('pageerror', ofPage));
  await beforeLoad(
    page,
    () => {
      document.addEventListener('securitypolicyviolation', (event) => {
        console.error(`policy: ${event.violatedDirective} ${event.blockedURI}`);
      });
    },
    null,
  );
  return wrongs;
}

/** The verdict in words as the page shows it. */
export const verdictOf = (page: Page): Promise<string> => page.locator('#verdict-words').innerText();

/** Waits until what is shown is judged. */
export async function judged(page: Page): Promise<void> {
  await page.locator('.judging').waitFor({ state: 'detached' });
  await page.locator('#verdict-words', { hasText: 'Judging' }).waitFor({ state: 'detached' });
}

/** What axe finds wrong with the page as it stands, one line a rule; all rules where none is named. */
export async function axeFaults(page: Page, rules?: readonly string[]): Promise<readonly string[]> {
  // what is not judged yet is dimmed, on purpose
  await page.locator('.schedule[aria-busy="true"]').waitFor({ state: 'detached' });
  const isThere = await page.evaluate(() => 'axe' in globalThis);
  if (!isThere) await page.evaluate(axe.source);
  const { violations } = await page.evaluate(
    (only) =>
      (globalThis as unknown as { axe: typeof axe }).axe.run(document, {
        resultTypes: ['violations'],
        ...(only && { runOnly: [...only] }),
      }),
    rules,
  );
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`);
}

/** Of the dark only colours are new. */
const BY_COLOR = ['color-contrast', 'link-in-text-block'];

/** What axe finds in the light and in the dark. */
export async function axeFaultsInBoth(page: Page): Promise<readonly string[]> {
  await page.emulateMedia({ colorScheme: 'light' });
  const light = await axeFaults(page);
  await page.emulateMedia({ colorScheme: 'dark' });
  return [...light, ...(await axeFaults(page, BY_COLOR)).map((fault) => `dark, ${fault}`)];
}

/** By how many pixels the page is wider than its window, at each of these widths. */
export async function sideways(page: Page, ...widths: readonly number[]): Promise<readonly number[]> {
  const over: number[] = [];
  for (const width of widths) {
    await page.setViewportSize({ width, height: 800 });
    over.push(
      await page.evaluate(
        () =>
          new Promise<number>((resolve) => {
            const { documentElement: root } = document;
            requestAnimationFrame(() =>
              requestAnimationFrame(() => resolve(root.scrollWidth - root.clientWidth)),
            );
          }),
      ),
    );
  }
  return over;
}

/** The faults of a page that is narrow and wide, light and dark; that it scrolls sideways is one too. */
export async function faultsOfLooks(page: Page): Promise<readonly string[]> {
  const faults: string[] = [];
  for (const width of [390, 1440]) {
    const [over = NaN] = await sideways(page, width);
    if (over !== 0) faults.push(`${width}: ${over} px too wide`);
    faults.push(...(await axeFaultsInBoth(page)).map((fault) => `${width}: ${fault}`));
  }
  return faults;
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

const MARGIN = '[data-field="layers[2].margins.left.width"]';

/** A margin of the first build typed anew. */
export async function typeMargin(page: Page, text: string): Promise<void> {
  await page.locator('[data-row="2"]').click();
  await page.locator(MARGIN).fill(text);
  await page.keyboard.press('Enter');
}

/** Waits until that margin reads so. */
export async function seeMargin(page: Page, text: string): Promise<void> {
  await page.locator('[data-row="2"]').click();
  await expect.poll(() => page.locator(MARGIN).inputValue()).toBe(text);
}

/** Another title, typed; waits until it heads the page. */
export async function retitle(page: Page, title: string): Promise<void> {
  await page.locator('#facts').waitFor();
  const field = page.locator('[data-field="title"]');
  if (!(await field.isVisible())) await page.getByText('Title and notes').click();
  await field.fill(title);
  await field.press('Enter');
  await page.getByRole('heading', { level: 1, name: title, exact: true }).waitFor();
}
