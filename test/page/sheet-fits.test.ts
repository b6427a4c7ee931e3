import { describe, expect, it } from 'vitest';
import type { Page } from 'playwright';
import { judged, openPage } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

const heightOf = (page: Page): Promise<number> => page.evaluate(() => document.documentElement.scrollHeight);

/** Pixels from the top of the window. */
const topOf = (page: Page, element: string): Promise<number> =>
  page.locator(element).evaluate((node) => node.getBoundingClientRect().top);

const isWhole = (page: Page): Promise<string | null> =>
  page.getByRole('button', { name: 'fit', exact: true }).getAttribute('aria-pressed');

describe.skipIf(!hasBrowser())('the sheet at 1440 by 900', () => {
  it('should stand whole in the window and keep its places whatever is opened on it', async () => {
    const { page } = await openPage('#sheet');
    await judged(page);
    await page.locator('.stage canvas').first().waitFor();
    expect(await heightOf(page)).toBe(900);
    for (const id of ['verdict-words', 'layers', 'facts', 'barriers', 'because', 'weak-spots'])
      expect(await topOf(page, `#${id}`), id).toBeLessThan(880);

    const before = [await topOf(page, '#barriers'), await topOf(page, '#weak-spots')];
    await page.locator('[data-row="2"]').click();
    await page.locator('[data-field="layers[2].margins.left.width"]').waitFor();
    expect([await topOf(page, '#barriers'), await topOf(page, '#weak-spots')]).toEqual(before);
    // its layer comes near, and the whole back when the row is shut
    await expect.poll(() => isWhole(page)).toBe('false');
    await page.locator('[data-row="2"]').click();
    await expect.poll(() => isWhole(page)).toBe('true');

    await page.locator('details summary', { hasText: 'Supply and surroundings' }).click();
    expect([await topOf(page, '#barriers'), await topOf(page, '#weak-spots')]).toEqual(before);
    expect(await heightOf(page)).toBe(900);
  });
});
