import { describe, expect, it } from 'vitest';
import { PAGES } from '#state/app/page-list.ts';
import { axeFaultsInBoth, openPage, sideways } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

const ROW = PAGES.filter(({ row }) => row !== null);

describe.skipIf(!hasBrowser())('the row of pages', () => {
  it('should stand at the same place on every page, and mark the one that is open', async () => {
    const { page, wrongs } = await openPage('#sheet');
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
    const { page } = await openPage('#sheet');
    await page.locator('#layers').waitFor();
    await page.keyboard.press('Alt+Shift+M');
    await page.getByRole('heading', { level: 1, name: 'Mend', exact: true }).waitFor();
    await expect.poll(() => page.title()).toMatch(/^Mend · .+ · Layerwright$/);
    await page.keyboard.press('Alt+Shift+S');
    await expect.poll(() => page.title()).not.toContain('Mend');
  });

  it('should fold into one button with the name of the open page where there is no room', async () => {
    const { page } = await openPage('#books', { viewport: { width: 1100, height: 844 } });
    const openTo = async (from: RegExp, to: string): Promise<void> => {
      await page.locator('summary', { hasText: from }).click();
      await page.getByRole('link', { name: to, exact: true }).click();
      await page.getByRole('heading', { level: 1, name: to }).waitFor();
    };
    await openTo(/^Books$/, 'Tables');
    await page.locator('summary', { hasText: /^Tables$/ }).waitFor();
    expect(await sideways(page, 1100, 390)).toEqual([0, 0]);
    await openTo(/^Tables$/, 'Books');
    await page.locator('summary', { hasText: /^Books$/ }).waitFor();
    expect(await sideways(page, 390)).toEqual([0]);
  });

  it('should have no fault that axe finds, light and dark', async () => {
    const { page } = await openPage('#tables');
    await page.locator('h1').first().waitFor();
    expect(await axeFaultsInBoth(page)).toEqual([]);
  });
});
