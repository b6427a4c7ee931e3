// Finding by a few typed words: a field of the build, a page, a word; by keys alone.

import { describe, expect, it } from 'vitest';
import { axeFaults, judged, openPage } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

describe.skipIf(!hasBrowser())('finding', () => {
  it('should put the cursor into the field that was meant, from any page', async () => {
    const { page, wrongs } = await openPage('#mend');
    await page.getByRole('heading', { level: 1, name: 'Mend' }).waitFor();
    await page.keyboard.press('/');
    const typed = page.getByRole('combobox', { name: 'Find a field, a page or a word' });
    await typed.fill('left margin layer 3');
    await page.getByRole('option', { name: 'left margin, layer 3 1.65 mm', exact: false }).first().waitFor();
    expect(await axeFaults(page)).toEqual([]);
    await page.keyboard.press('Enter');
    const field = page.locator('[data-field="layers[2].margins.left.width"]');
    await expect.poll(() => field.evaluate((node) => node === document.activeElement)).toBe(true);
    await judged(page);
    expect(wrongs).toEqual([]);
  });

  it('should go to a page and to a word, and say where nothing is meant', async () => {
    const { page } = await openPage('#sheet');
    await page.getByRole('button', { name: 'Find' }).click();
    const typed = page.getByRole('combobox', { name: 'Find a field, a page or a word' });
    await typed.fill('qqqq');
    await page.getByText('nothing is called that').waitFor();
    await typed.fill('kriechstrecke');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: 'Words' }).waitFor();
    expect(new URL(page.url()).hash).toBe('#words/creepage-distance');
    // on that page the key is its own field's
    await page.getByRole('button', { name: 'Find' }).click();
    await typed.fill('tables');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: 'Tables' }).waitFor();
  });
});
