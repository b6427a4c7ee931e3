import type { Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { firstBuild } from '#state/begin/demos.ts';
import { openPage } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

const caption = (page: Page): Promise<string> => page.locator('figcaption').innerText();

describe.skipIf(!hasBrowser())('own build', () => {
  it('should call the build of the page invented, and what somebody brought theirs, also after a reload', async () => {
    const { page, wrongs } = await openPage();
    expect(await caption(page)).toMatch(/^An invented build/);
    await page.evaluate(() => (location.hash = 'open'));
    await page.locator('textarea').fill(JSON.stringify({ ...firstBuild, title: 'Found in a drawer' }));
    await page.getByRole('button', { name: 'Open the text' }).click();
    await page.getByRole('heading', { level: 1, name: 'Found in a drawer' }).waitFor();
    await page.evaluate(() => (location.hash = ''));
    await expect.poll(() => caption(page)).toMatch(/^Your build: Found in a drawer/);
    await page.reload();
    await expect.poll(() => caption(page)).toMatch(/^Your build: Found in a drawer/);
    expect(wrongs).toEqual([]);
  });

  it('should offer in a new tab the build of last time beside the invented one', async () => {
    const { page } = await openPage('#open');
    await page.locator('textarea').fill(JSON.stringify({ ...firstBuild, title: 'Left in the drawer' }));
    await page.getByRole('button', { name: 'Open the text' }).click();
    await page.getByRole('heading', { level: 1, name: 'Left in the drawer' }).waitFor();
    const other = await page.context().newPage();
    await other.goto(page.url().split('#')[0] ?? '');
    await expect.poll(() => caption(other)).toMatch(/^An invented build/);
    await other.getByRole('button', { name: 'Open your build of last time' }).click();
    await other.getByRole('heading', { level: 1, name: 'Left in the drawer' }).waitFor();
  });
});
