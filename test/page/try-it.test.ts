import type { Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { axeFaults, openPage } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

const MARGIN = 'layers[2].margins.left.width';
const spots = (page: Page): Promise<number> => page.locator('section:has(#weak-spots) ol > li').count();
const undo = (page: Page) => page.getByRole('button', { name: 'Undo' });

describe.skipIf(!hasBrowser())('try it', () => {
  it('should try an act on, put it back with Escape, and keep it as one step', async () => {
    const { page, wrongs } = await openPage('#sheet');
    await expect.poll(() => spots(page)).toBe(2);
    const first = page.locator('li', { hasText: 'left margin, layer 3 to 2.45 mm' });
    await first.getByRole('button', { name: 'try it' }).click();
    await expect.poll(() => spots(page)).toBe(1);
    await expect.poll(() => page.locator('.outcome').innerText()).toContain('1 of 2 causes gone');
    expect(await undo(page).isDisabled()).toBe(true);
    expect(await axeFaults(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await expect.poll(() => spots(page)).toBe(2);
    await first.getByRole('button', { name: 'try it' }).click();
    await page.getByRole('button', { name: 'Keep it' }).click();
    await expect.poll(() => undo(page).isDisabled()).toBe(false);
    await page.locator('[data-row="2"]').click();
    await expect.poll(() => page.locator(`[data-field="${MARGIN}"]`).inputValue()).toBe('2.45 mm');
    await page.keyboard.press('Control+z');
    await expect.poll(() => page.locator(`[data-field="${MARGIN}"]`).inputValue()).toBe('1.65 mm');
    expect(wrongs).toEqual([]);
  });

  it('should keep what lies below in its place when a row opens', async () => {
    const { page } = await openPage('#sheet');
    await page.locator('.stage canvas').first().waitFor();
    const top = (): Promise<number> =>
      page.locator('section:has(#weak-spots)').evaluate((node) => node.getBoundingClientRect().top + scrollY);
    const before = await top();
    await page.locator('[data-row="2"]').click();
    await page.locator(`[data-field="${MARGIN}"]`).waitFor();
    expect(await top()).toBe(before);
  });
});
