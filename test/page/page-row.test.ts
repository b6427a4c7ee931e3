import type { Browser } from 'playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { PAGES } from '#state/app/page-list.ts';
import { axeFaults, hasBrowser, launch, openPage } from './open-page.ts';

const ROW = PAGES.filter(({ row }) => row !== null);

describe.skipIf(!hasBrowser())('the row of pages', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => browser.close());

  it('should stand at the same place on every page, and mark the one that is open', async () => {
    const { page, wrongs } = await openPage(browser, '#sheet');
    const nav = page.getByRole('navigation', { name: 'pages' });
    const places = new Set<string>();
    for (const { title } of ROW) {
      await nav.getByRole('link', { name: title, exact: true }).click();
      await expect.poll(() => nav.locator('[aria-current="page"]').innerText()).toBe(title);
      if (title !== 'Sheet')
        await page.getByRole('heading', { level: 1, name: title, exact: true }).waitFor();
      expect(await nav.getByRole('link').allInnerTexts()).toEqual(ROW.map((each) => each.title));
      const box = await nav.boundingBox();
      places.add(`${Math.round(box!.y)} ${Math.round(box!.height)}`);
    }
    expect([...places]).toHaveLength(1);
    expect(wrongs).toEqual([]);
  });

  it('should open a page by its key, and come back with the build after a reload', async () => {
    const { page } = await openPage(browser, '#sheet');
    await page.locator('#layers').waitFor();
    await page.keyboard.press('Alt+Shift+M');
    await page.getByRole('heading', { level: 1, name: 'Mend', exact: true }).waitFor();
    await expect.poll(() => page.title()).toMatch(/^Mend · .+ · Layerwright$/);
    await page.keyboard.press('Alt+Shift+S');
    await expect.poll(() => page.title()).not.toContain('Mend');
  });

  it.each([1100, 390])(
    'should fold into one button with the name of the open page at %i px',
    async (width) => {
      const { page } = await openPage(browser, '#books', { viewport: { width, height: 844 } });
      const button = page.locator('summary', { hasText: /^Books$/ });
      await button.click();
      await page.getByRole('link', { name: 'Tables', exact: true }).click();
      await page.getByRole('heading', { level: 1, name: 'Tables' }).waitFor();
      await page.locator('summary', { hasText: /^Tables$/ }).waitFor();
      const over = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(over).toBe(0);
    },
  );

  it.each(['light', 'dark'] as const)('should have no fault that axe finds (%s)', async (colorScheme) => {
    const { page } = await openPage(browser, '#tables', { colorScheme });
    await page.locator('h1').first().waitFor();
    expect(await axeFaults(page)).toEqual([]);
  });
});
