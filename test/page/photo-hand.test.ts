// What a hand does with a photograph beside measuring: counting turns, sending one figure to several fields, and looking at
// picture and section over each other.

import type { Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { type DrawnPicture, openPicture, pickAt } from './drawn-picture.ts';
import { openPage } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

const PICTURE: DrawnPicture = {
  type: 'image/png',
  width: 1500,
  height: 1000,
  turned: 0,
  blur: 0,
  noise: 0,
  bars: [{ x: -500, y: -300, width: 1000, height: 600 }],
};

/** A photograph of which 1000 px are 10 mm, and 4 mm measured on it. */
async function openMeasured(page: Page): Promise<void> {
  await openPicture(page, PICTURE);
  await pickAt(page, { x: 250, y: 100 });
  await pickAt(page, { x: 1250, y: 100 });
  await page.getByLabel('known length').fill('10 mm');
  await page.getByRole('button', { name: 'Set the scale' }).click();
  await pickAt(page, { x: 300, y: 500 });
  await pickAt(page, { x: 700, y: 500 });
  await page.locator('.side li').first().waitFor();
}

/** Left margins of the three windings, as the sheet shows them. */
async function margins(page: Page): Promise<readonly string[]> {
  await page.evaluate(() => (location.hash = '#sheet'));
  const found: string[] = [];
  for (const layer of [0, 2, 4]) {
    const field = page.locator(`[data-field="layers[${layer}].margins.left.width"]`);
    if (!(await field.isVisible())) await page.locator(`[data-row="${layer}"]`).click();
    found.push(await field.inputValue());
  }
  return found;
}

describe.skipIf(!hasBrowser())('a photograph in the hand', () => {
  it('should send a figure to its field alone, whatever other fields read', async () => {
    const { page, wrongs } = await openPage('#photographs');
    await openMeasured(page);
    const row = page.locator('.side li').first();
    await row.getByRole('combobox').selectOption('layers[2].margins.left.width');
    // the margin of layer 5 reads 4 mm, which is what was measured
    await row.getByText('as near as this tells').waitFor();
    expect(await row.getByRole('checkbox', { checked: true }).count()).toBe(0);
    await row.getByRole('button', { name: 'send to this field' }).click();
    const [inner, middle, outer] = await margins(page);
    expect([inner, outer]).toEqual(['3 mm', '4 mm']);
    expect(middle).toMatch(/^(4|3\.99|4\.0\d*)\b.*± /);
    expect(wrongs).toEqual([]);
  });

  it('should send it to those that are ticked as one step', async () => {
    const { page, wrongs } = await openPage('#photographs');
    await openMeasured(page);
    const row = page.locator('.side li').first();
    await row.getByRole('combobox').selectOption('layers[2].margins.left.width');
    await row.getByLabel(/left margin, layer 1/).check();
    await row.getByRole('button', { name: 'send to 2 fields' }).click();
    const [inner, middle] = await margins(page);
    expect(inner).toBe(middle);
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Undo' }).click();
    expect((await margins(page)).slice(0, 2)).toEqual(['3 mm', '1.65 mm']);
    expect(wrongs).toEqual([]);
  });

  it('should make marks the turns of a layer, a second press taking one away', async () => {
    const { page, wrongs } = await openPage('#photographs');
    await openMeasured(page);
    await page.getByRole('button', { name: 'Count turns' }).click();
    for (const x of [300, 400, 500, 600, 700, 800]) await pickAt(page, { x, y: 650 });
    await pickAt(page, { x: 500, y: 650 });
    await page.getByLabel('these are the turns of').selectOption({ label: 'A, layer 5' });
    await page.getByRole('button', { name: 'Send 5 turns' }).click();
    await page.evaluate(() => (location.hash = '#sheet'));
    const turns = page.locator('[data-field="layers[4].turns"]');
    if (!(await turns.isVisible())) await page.locator('[data-row="4"]').click();
    await expect.poll(() => turns.inputValue()).toBe('5');
    expect(wrongs).toEqual([]);
  });

  it('should lie under the section, be wiped away and magnified', async () => {
    const { page, wrongs } = await openPage('#photographs');
    await openMeasured(page);
    const over = page.getByRole('group', { name: 'photograph and section' });
    await over.scrollIntoViewIfNeeded();
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    const { x, y, width, height } = (await over.locator('.stage').boundingBox())!;
    await page.mouse.move(x + width / 2, y + height / 2);
    const lens = over.locator('span', { hasText: /^× \d/ });
    await lens.waitFor();
    await page.keyboard.press('z');
    await lens.waitFor({ state: 'detached' });
    const shown = (): Promise<string> => over.locator('.wiped').evaluate((part) => part.style.clipPath);
    expect(await shown()).toBe('inset(0px 0% 0px 0px)');
    await page.keyboard.press('w');
    await expect.poll(shown).toContain('50%');
    await page.keyboard.down('x');
    await expect.poll(shown).toBe('none');
    await page.keyboard.up('x');
    await expect.poll(shown).toContain('50%');
    expect(wrongs).toEqual([]);
  });
});
