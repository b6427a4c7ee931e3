import type { Page } from 'playwright';
import { describe, expect, inject, it } from 'vitest';
import { axeFaults, openPage } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

const CLIPBOARD = { permissions: ['clipboard-read', 'clipboard-write'] };
const names = async (page: Page): Promise<readonly (string | undefined)[]> =>
  (await page.locator('[data-row] .words b').allInnerTexts()).map((name) => name.trim());
const undo = (page: Page) => page.getByRole('button', { name: 'Undo' });

describe.skipIf(!hasBrowser())('hand tools', () => {
  it('should copy layers from one tab into the build of another', async () => {
    const { page, wrongs } = await openPage('#sheet', CLIPBOARD);
    await page.locator('[data-row="2"]').click();
    await page.keyboard.press('Control+c');
    const other = await page.context().newPage();
    await other.goto(`${inject('url')}#sheet`);
    await other.locator('[data-row="5"]').click();
    await other.keyboard.press('Control+v');
    await expect.poll(async () => (await names(other))[0]).toBe('Output, 20 turns');
    expect((await names(other)).length).toBe(7);
    await other.keyboard.press('Control+z');
    await expect.poll(async () => (await names(other)).length).toBe(6);
    expect(wrongs).toEqual([]);
  });

  it('should cut all layers at once and paste them again', async () => {
    const { page } = await openPage('#sheet', CLIPBOARD);
    await page.locator('[data-row="2"]').focus();
    const before = await names(page);
    await page.keyboard.press('Control+a');
    await expect.poll(() => page.locator('[data-layer].picked').count()).toBe(6);
    await page.keyboard.press('Control+x');
    await expect.poll(async () => (await names(page)).length).toBe(0);
    await page.keyboard.press('Control+v');
    await expect.poll(() => names(page)).toEqual(before);
  });

  it('should keep a template over a reload, and put it in from the menu', async () => {
    const { page } = await openPage('#sheet');
    await page.locator('[data-row="4"]').click({ button: 'right' });
    const menu = page.getByRole('menu', { name: 'layer 5' });
    await menu.waitFor();
    expect(await axeFaults(page)).toEqual([]);
    await menu.getByRole('menuitem', { name: 'keep as a template' }).click();
    await page.keyboard.type('thin auxiliary');
    await page.keyboard.press('Enter');
    await page.reload();
    await page.locator('[data-row="5"]').click({ button: 'right' });
    await page.getByRole('menuitem', { name: 'put in “thin auxiliary”' }).click();
    await expect.poll(async () => (await names(page))[0]).toBe('Auxiliary, 11 turns');
  });

  it('should make both margins of a winding as wide as the wider one', async () => {
    const { page } = await openPage('#sheet');
    await page.locator('[data-row="2"]').click({ button: 'right' });
    await page.getByRole('menuitem', { name: 'both margins as the wider one' }).click();
    await page.locator('[data-row="2"]').click();
    await expect
      .poll(() => page.locator('[data-field="layers[2].margins.left.width"]').inputValue())
      .toBe('3 mm');
    expect(await undo(page).isDisabled()).toBe(false);
  });
});
