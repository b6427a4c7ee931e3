// What attacks a page amid the work, again and again: after each attack the last edit is there and the page can be used. A few
// times in the suite, for time; as often as ATTACKS and EDITS ask for where there is time.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type BrowserContext, type Page } from 'playwright';
import { describe, expect, inject, it } from 'vitest';
import { firstBuild } from '#state/begin/demos.ts';
import { LAUNCH_ARGS } from '#test/browser.mjs';
import { brokenFile, randomFrom } from '#test/fuzz/broken-file.ts';
import { judged, openKept, openPage, retitle, verdictOf } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

const KILLS = Number(process.env['ATTACKS'] ?? 2);
const IMPORTS = Number(process.env['ATTACKS'] ?? 16);
const EDITS = Number(process.env['EDITS'] ?? 120);
const ENDLESS = { timeout: 2 ** 31 - 1 };
const MARGIN = 'layers[2].margins.left.width';

describe.skipIf(!hasBrowser())('a page under attack', () => {
  it('should have the last edit after each kill amid the next one, and be of use', ENDLESS, async () => {
    const profile = mkdtempSync(join(tmpdir(), 'layerwright-'));
    const random = randomFrom(1);
    let cutOffKept = 0;
    try {
      for (let kill = 0; kill <= KILLS; kill++) {
        const context = await persistent(profile);
        const page = await context.newPage();
        await page.goto(`${inject('url')}#${kill === 0 ? 'sheet' : 'open'}`);
        if (kill > 0) {
          await page.locator('button.take').first().click();
          await page.locator('#facts').waitFor();
          const title = await page.locator('h1').innerText();
          // an edit is kept within a second; of the one cut off either may be there
          expect([`Kept ${kill}`, `Cut off ${kill}`]).toContain(title);
          if (title === `Cut off ${kill}`) cutOffKept++;
        }
        await isOfUse(page);
        if (kill === KILLS) return void (await context.close());
        await retitle(page, `Kept ${kill + 1}`);
        await page.waitForTimeout(1000);
        await retitle(page, `Cut off ${kill + 1}`);
        await page.waitForTimeout(random.below(600));
        const session = await context.newCDPSession(page);
        await session.send('Browser.crash').catch(() => {});
        await context.close().catch(() => {});
      }
    } finally {
      console.log(`${KILLS} kills: ${cutOffKept} times the edit that was cut off was kept too`);
      rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
    }
  });

  it('should have the last edit after many files that are broken, and be of use', ENDLESS, async () => {
    const { page, wrongs } = await openPage('#sheet');
    await retitle(page, 'Before the broken files');
    const seen = new Map<string, number>();
    for (let seed = 1; seed <= IMPORTS; seed++) {
      await page.evaluate(() => (location.hash = 'open'));
      await page.locator('textarea').fill(brokenFile(randomFrom(seed), [firstBuild]));
      await page.getByRole('button', { name: 'Open the text' }).click();
      const where = page.locator('#layers, h1:text-is("To be put right"), [role="alert"]').first();
      await where.waitFor();
      const found = await where.evaluate((node) => node.id || node.textContent || '');
      const kind =
        found === 'layers' ? 'laid out' : found === 'To be put right' ? 'to be put right' : 'refused';
      seen.set(kind, (seen.get(kind) ?? 0) + 1);
      expect(found, `seed ${seed}`).not.toContain('cannot be shown');
    }
    console.log(`${IMPORTS} broken files: ${[...seen].map((each) => each.join(' ')).join(', ')}`);
    // among some dozens all three kinds are
    expect(seen.size).toBeGreaterThan(IMPORTS < 60 ? 1 : 2);
    await openKept(page, 'Before the broken files');
    await isOfUse(page);
    expect(wrongs).toEqual([]);
  });

  it('should hold no more memory after many edits', ENDLESS, async () => {
    const { page } = await openPage('#sheet');
    const session = await page.context().newCDPSession(page);
    const heap = async (): Promise<number> => {
      await judged(page);
      await session.send('HeapProfiler.collectGarbage');
      const { usedSize } = await session.send('Runtime.getHeapUsage');
      return usedSize / 1e6;
    };
    const grip = page.locator(`[data-grip="${MARGIN}"]`);
    await grip.focus();
    const edit = async (times: number): Promise<void> => {
      for (let n = 0; n < times; n++) await page.keyboard.press(n % 20 < 10 ? 'ArrowRight' : 'ArrowLeft');
    };
    const sizes: number[] = [];
    for (let part = 0; part < 6; part++) {
      await edit(EDITS / 6);
      sizes.push(await heap());
    }
    console.log(`${EDITS} edits, heap in MB: ${sizes.map((size) => size.toFixed(1)).join(' ')}`);
    await expect.poll(() => grip.getAttribute('aria-valuetext')).toBe('1.65 mm');
    expect(sizes.at(-1)! - sizes[1]!).toBeLessThan(2);
  });
});

/** Takes an edit, judges it, and takes it back. */
async function isOfUse(page: Page): Promise<void> {
  const field = page.locator(`[data-field="${MARGIN}"]`);
  if (!(await field.isVisible())) await page.locator('[data-row="2"]').click();
  await field.fill('2.9 mm');
  await field.press('Enter');
  await judged(page);
  await expect.poll(() => verdictOf(page)).toMatch(/Falls short|Not shown|Meets/);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => field.inputValue()).toBe('1.65 mm');
}

const persistent = (profile: string): Promise<BrowserContext> =>
  chromium.launchPersistentContext(profile, { executablePath: inject('browser'), args: [...LAUNCH_ARGS] });
