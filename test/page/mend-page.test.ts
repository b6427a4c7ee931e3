// The pages of Mend, Spread and Compare: what is looked for shows as it is found, is stopped, applied by one action and
// undone by one, on a wide and on a narrow sheet, light and dark.

import { readFileSync } from 'node:fs';
import type { BrowserContextOptions, Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { axeFaults, judged, openPage, verdictOf } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

const TIMER = 'Wall supply of a greenhouse irrigation timer';
const LONG = { timeout: 90_000 };

describe.skipIf(!hasBrowser())('the pages that search', () => {
  async function open(name: 'mend' | 'spread' | 'compare', options: BrowserContextOptions = {}) {
    const { page, wrongs } = await openPage('#sheet', options);
    await page.getByRole('heading', { level: 1, name: TIMER }).waitFor();
    await judged(page);
    await go(page, name);
    return { page, wrongs };
  }

  async function go(page: Page, name: string): Promise<void> {
    await page.evaluate((hash) => (location.hash = hash), name);
    const title = `${name[0]!.toUpperCase()}${name.slice(1)}`;
    await page.getByRole('heading', { level: 1, name: title }).waitFor();
  }

  it('should show ways to mend as they are found, apply one by a click and undo it by a key', async () => {
    const { page, wrongs } = await open('mend');
    await page.getByRole('progressbar', { name: 'looking for ways' }).waitFor(LONG);
    await page.getByText(/\d+ sets tried/).waitFor(LONG);
    const apply = page.getByRole('button', { name: 'Apply 1', exact: true });
    await apply.waitFor(LONG);
    await apply.click();
    await page.getByRole('heading', { level: 1, name: TIMER }).waitFor();
    await judged(page);
    const mended = await verdictOf(page);
    await page.keyboard.press('Control+z');
    await judged(page);
    expect(await verdictOf(page)).toMatch(/falls short/i);
    expect(mended).not.toMatch(/falls short/i);
    expect(wrongs).toEqual([]);
  });

  it('should stop looking for ways, say how far it came, and begin again', async () => {
    const { page, wrongs } = await open('mend');
    await page.getByRole('button', { name: 'Stop' }).click(LONG);
    await page.getByText(/stopped after \d+ sets/).waitFor();
    await page.getByRole('button', { name: 'Search again' }).click();
    await page.getByRole('progressbar', { name: 'looking for ways' }).waitFor();
    expect(await axeFaults(page)).toEqual([]);
    expect(wrongs).toEqual([]);
  });

  it('should count pieces as they are drawn, stop by the space bar and draw others with the next seed', async () => {
    const { page, wrongs } = await open('spread');
    await page.getByText(/[1-9]\d* of \d+ drawn · seed \d+/).waitFor(LONG);
    const seed = async () => Number(/seed (\d+)/.exec(await page.locator('.state').innerText())![1]);
    const first = await seed();
    await page.keyboard.press(' ');
    await page.getByRole('button', { name: 'Draw again' }).click();
    await page.getByText(`seed ${first + 1}`).waitFor(LONG);
    await page.keyboard.press(' ');
    expect(await axeFaults(page)).toEqual([]);
    expect(wrongs).toEqual([]);
  });

  it('should judge each line of a series, plot it, and say which field there is not', async () => {
    const { page, wrongs } = await open('spread');
    await page.getByRole('button', { name: 'Judge all lines' }).click();
    await page.getByText('3 of 3 judged').waitFor(LONG);
    const plot = page.getByRole('img', { name: /limiting distance against/ });
    expect(await plot.locator('circle').count()).toBe(3);
    expect(await page.locator('section[aria-labelledby="series"] ol > li').allInnerTexts()).toEqual([
      expect.stringMatching(/^narrow\s+2 mm/),
      expect.stringMatching(/^middle\s+3 mm/),
      expect.stringMatching(/^wide\s+4 mm/),
    ]);
    await page.getByLabel('table of comma-separated values').fill('name,layers[0].nothing\na,1 mm');
    await page.getByRole('button', { name: 'Judge all lines' }).click();
    await page
      .getByText(/layers\[0\]\.nothing/)
      .first()
      .waitFor();
    expect(wrongs).toEqual([]);
  });

  it('should save the ways as a report, before and after', async () => {
    const { page, wrongs } = await open('mend');
    await page.getByRole('button', { name: 'Apply 1', exact: true }).waitFor(LONG);
    await page.getByRole('button', { name: 'Stop' }).click();
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save as a report' }).click();
    const saved = await (await saving).path();
    const html = readFileSync(saved, 'utf8');
    expect(html).toContain(TIMER);
    expect(html).toContain('way 1');
    expect(html.match(/<svg/g)?.length).toBeGreaterThan(1);
    expect(wrongs).toEqual([]);
  });

  it('should compare the build with a way to mend it, swap sides, keep it by Enter and undo by a key', async () => {
    const { page, wrongs } = await open('mend');
    await page.getByRole('button', { name: 'Apply 1', exact: true }).waitFor(LONG);
    await page.keyboard.press('c');
    await page.getByRole('heading', { level: 1, name: 'Compare' }).waitFor();
    const [a, b] = [page.locator('#side-0'), page.locator('#side-1')];
    await expect.poll(() => b.innerText(), LONG).toMatch(/way 1/);
    await expect.poll(() => a.innerText(), LONG).toMatch(/falls short/);
    const before = await a.innerText();
    await page.getByRole('button', { name: 'Swap sides' }).click();
    await expect.poll(() => b.innerText()).toBe(before.replace(/^A/, 'B'));
    await page.getByRole('button', { name: 'Swap sides' }).click();
    expect(await axeFaults(page)).toEqual([]);
    await page.getByRole('button', { name: 'Keep B' }).click();
    await page.getByRole('heading', { level: 1, name: TIMER }).waitFor();
    await judged(page);
    expect(await verdictOf(page)).not.toMatch(/falls short/i);
    await page.keyboard.press('Control+z');
    await judged(page);
    expect(await verdictOf(page)).toMatch(/falls short/i);
    expect(wrongs).toEqual([]);
  });

  it('should fit a narrow dark sheet without scrolling sideways', async () => {
    const narrow = { colorScheme: 'dark', viewport: { width: 390, height: 844 } } as const;
    const { page, wrongs } = await open('mend', narrow);
    for (const name of ['mend', 'spread', 'compare']) {
      await go(page, name);
      if (name === 'mend') await page.getByRole('button', { name: 'Apply 1', exact: true }).waitFor(LONG);
      else await page.locator('main svg').first().waitFor(LONG);
      expect(await page.evaluate(() => document.documentElement.scrollWidth), name).toBeLessThanOrEqual(390);
      expect(await axeFaults(page), name).toEqual([]);
      if (process.env['SHOTS'])
        await page.screenshot({ path: `${process.env['SHOTS']}/${name}.png`, fullPage: true });
    }
    expect(wrongs).toEqual([]);
  });
});
