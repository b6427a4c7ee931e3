import type { Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { axeFaults, judged, openPage } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

/** Figures in millimetres that are told anywhere but on a worked sheet and in the words of a source. */
const inMillimetres = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const found: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
      const at = walker.currentNode.parentElement;
      if (at === null || at.closest('script, style, table, .seen') !== null) continue;
      if (/\d mm\b/.test(walker.currentNode.textContent ?? '')) found.push(at.textContent ?? '');
    }
    return found;
  });

describe.skipIf(!hasBrowser())('the unit of lengths', () => {
  it('should take inches, thousandths and millimetres in any of them, and keep the file in millimetres', async () => {
    const { page, wrongs } = await openPage('#sheet');
    await page.locator('[data-row="2"]').press('Enter');
    const margin = page.locator('[data-field="layers[2].margins.left.width"]');
    const type = async (text: string): Promise<string> => {
      await margin.fill(text);
      await margin.press('Enter');
      return margin.inputValue();
    };
    expect([await type('0.1 in'), await type('4 mil'), await type('3 mm')]).toEqual([
      '2.54 mm',
      '0.1016 mm',
      '3 mm',
    ]);
    const unit = page.getByRole('button', { name: /^lengths in/ });
    await unit.click();
    await expect.poll(() => margin.inputValue()).toBe('0.11811 in');
    expect([await type('0.1'), await type('4 mil'), await type('3 mm')]).toEqual([
      '0.1 in',
      '0.004 in',
      '0.11811 in',
    ]);
    await unit.click();
    await expect.poll(() => margin.inputValue()).toBe('118.11 mil');
    await type('2*50');
    // sums are worked out by a part of the page that is loaded when it is first wanted
    await expect.poll(() => margin.inputValue()).toBe('100 mil');
    await unit.click();
    await expect.poll(() => margin.inputValue()).toBe('2.54 mm');
    expect(wrongs).toEqual([]);
  });

  it('should tell every length of the sheet in it, over a reload too, and papers in millimetres', async () => {
    const { page, wrongs } = await openPage('#sheet');
    // the sheet is laid out a moment after the page is ready
    await expect.poll(async () => (await inMillimetres(page)).length).toBeGreaterThan(5);
    const unit = page.getByRole('button', { name: /^lengths in/ });
    await unit.click();
    await unit.click();
    await page.reload();
    await judged(page);
    await expect.poll(() => page.locator('.verdict .sentence').innerText()).toMatch(/64\.9 mil/);
    expect(await inMillimetres(page)).toEqual([]);
    expect(await axeFaults(page)).toEqual([]);
    const paper = await page.waitForFunction(() => {
      dispatchEvent(new Event('beforeprint'));
      return document.querySelector('#paper')?.textContent;
    });
    const printed = await paper.jsonValue();
    expect(printed).toContain(' mm');
    expect(printed).not.toMatch(/\d mil\b/);
    expect(wrongs).toEqual([]);
  });

  it('should take the placement of the page of spread in it, and keep millimetres', async () => {
    const { page } = await openPage('#spread');
    const margins = page.getByLabel(/^margins, ±/);
    const unit = page.getByRole('button', { name: /^lengths in/ });
    await expect.poll(() => margins.inputValue()).toBe('0.2');
    await unit.click();
    await expect.poll(() => margins.inputValue()).toBe('0.007874');
    await margins.fill('0.01');
    await page.getByRole('button', { name: 'Set and draw' }).click();
    await unit.click();
    await unit.click();
    await expect.poll(() => margins.inputValue()).toBe('0.254');
    expect(await margins.evaluate((input: HTMLInputElement) => input.checkValidity())).toBe(true);
  });
});
