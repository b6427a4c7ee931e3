import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type BrowserContext, type Page } from 'playwright';
import { describe, expect, inject, it } from 'vitest';
import { firstBuild } from '#state/begin/demos.ts';
import { LAUNCH_ARGS } from '#test/browser.mjs';
import { openPage, retitle } from './open-page.ts';
import { beforeLoad, hasBrowser } from './shared-browser.ts';

describe.skipIf(!hasBrowser())('keeping', () => {
  it('should have the build again after a reload amid the work', async () => {
    const { page } = await openPage('#sheet');
    await retitle(page, 'Kept over a reload');
    await page.waitForTimeout(600);
    await page.reload();
    await titled(page, 'Kept over a reload');
  });

  it('should undo and redo over a reload', async () => {
    const { page } = await openPage('#sheet');
    await retitle(page, 'First name');
    await retitle(page, 'Second name');
    await page.getByRole('button', { name: 'Undo' }).click();
    await titled(page, 'First name');
    await page.waitForTimeout(600);
    await page.reload();
    await titled(page, 'First name');
    await page.getByRole('button', { name: 'Redo' }).click();
    await titled(page, 'Second name');
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('button', { name: 'Undo' }).click();
    await titled(page, 'Wall supply of a greenhouse irrigation timer');
  });

  it('should take the figure in a field with it when it saves or is left', async () => {
    const { page } = await openPage('#sheet');
    await page.locator('[data-row="2"]').click();
    const field = page.locator('[data-field="layers[2].margins.left.width"]');
    await field.fill('2.9 mm');
    const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Control+s')]);
    const saved = JSON.parse(readFileSync(await download.path(), 'utf8')) as typeof firstBuild;
    expect(saved.layers[2]?.margins?.left?.width).toBe('2.9 mm');
    await expect.poll(() => field.evaluate((each) => each === document.activeElement)).toBe(true);
    await field.fill('2.8 mm');
    await page.reload();
    await page.locator('[data-row="2"]').click();
    await expect.poll(() => field.inputValue()).toBe('2.8 mm');
  });

  it('should keep what was changed a moment before leaving', async () => {
    const { page } = await openPage('#sheet');
    await retitle(page, 'Left at once');
    await page.waitForTimeout(100);
    await page.goto('about:blank');
    await page.goto(`${inject('url')}#open`);
    await page.getByRole('button', { name: 'Left at once' }).waitFor();
  });

  it('should lose nothing older than a second when the browser is killed', async () => {
    const profile = mkdtempSync(join(tmpdir(), 'layerwright-'));
    try {
      const first = await persistent(profile);
      const page = await sheetOf(first);
      await retitle(page, 'Survives the crash');
      await page.waitForTimeout(1000);
      await crash(page);
      await first.close().catch(() => {});
      const second = await persistent(profile);
      const again = await second.newPage();
      await again.goto(`${inject('url')}#open`);
      await again.getByRole('button', { name: 'Survives the crash' }).click();
      await titled(again, 'Survives the crash');
      await second.close();
    } finally {
      rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
    }
  });

  it('should not let two tabs overwrite each other unseen', async () => {
    const { page: one } = await openPage('#sheet');
    await retitle(one, 'In two tabs');
    await one.waitForTimeout(600);
    const two = await one.context().newPage();
    await two.goto(`${inject('url')}#open`);
    await two.getByRole('button', { name: 'In two tabs' }).click();
    await one.getByText('open in another tab').waitFor();
    await two.getByText('open in another tab').waitFor();
    await retitle(two, 'Changed in the second');
    await two.waitForTimeout(600);
    await retitle(one, 'Changed in the first');
    await one.getByText('changed in another tab').waitFor();
    await one.getByRole('button', { name: 'Keep this one as a copy' }).click();
    await two.evaluate(() => (location.hash = 'open'));
    await two.getByRole('button', { name: 'Changed in the first' }).waitFor();
    await expect.poll(() => two.getByRole('button', { name: 'Changed in the second' }).count()).toBe(1);
  });

  it('should keep the build on the sheet when another one is opened', async () => {
    const { page } = await openPage('#sheet');
    await retitle(page, 'Stays kept');
    await page.getByRole('button', { name: 'Open', exact: true }).click();
    await page.getByRole('button', { name: 'Supply of an aquarium light' }).click();
    await titled(page, 'Supply of an aquarium light');
    await page.getByRole('button', { name: 'Open', exact: true }).click();
    await page.getByRole('button', { name: 'Stays kept' }).click();
    await titled(page, 'Stays kept');
  });

  it('should say when the browser lets nothing be kept', async () => {
    const { page } = await openPage('#sheet');
    await beforeLoad(
      page,
      () => {
        Object.defineProperty(globalThis, 'indexedDB', {
          value: {
            open: () => {
              throw new DOMException('blocked', 'SecurityError');
            },
          },
        });
      },
      null,
    );
    await page.reload();
    await page.locator('#layers').waitFor();
    await retitle(page, 'Nowhere to go');
    await page.getByText('lets nothing be kept').waitFor();
  });
});

const titled = (page: Page, name: string): Promise<void> =>
  page.getByRole('heading', { level: 1, name, exact: true }).waitFor();

const persistent = (profile: string): Promise<BrowserContext> =>
  chromium.launchPersistentContext(profile, { executablePath: inject('browser'), args: [...LAUNCH_ARGS] });

async function sheetOf(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.goto(`${inject('url')}#sheet`);
  await page.locator('#layers').waitFor();
  return page;
}

/** Ends the whole browser at once, as a power cut would. */
async function crash(page: Page): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send('Browser.crash').catch(() => {});
}
