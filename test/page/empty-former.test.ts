import type { Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { blankDesign } from '#model/begin/blank-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { axeFaults, openPage, verdictOf } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

/** A former that was measured, with nothing on it. */
const measured: DesignFile = {
  ...blankDesign(),
  former: { height: '3 mm', wall: '0.8 mm', flange: '0.8 mm', chambers: [{ width: '10 mm' }] },
};

const rows = (page: Page): Promise<readonly string[]> => page.locator('[data-row]').allInnerTexts();

describe.skipIf(!hasBrowser())('empty former', () => {
  const open = async () => {
    const opened = await openPage('#open');
    const { page } = opened;
    await page.locator('textarea').fill(JSON.stringify(measured));
    await page.getByRole('button', { name: 'Open the text' }).click();
    await page.locator('.stage canvas').first().waitFor();
    await expect.poll(() => page.locator('[data-grip]').count()).toBeGreaterThan(2);
    return opened;
  };

  it('should raise no alarm over an empty sheet, and say what makes a barrier', async () => {
    const { page } = await open();
    expect(await verdictOf(page)).toBe('Nothing to judge yet');
    await page.getByRole('heading', { name: 'Four things make a barrier to judge' }).waitFor();
  });

  it('should take a winding drawn along the tube, and nothing before it is put in', async () => {
    const { page, wrongs } = await open();
    const stage = await page.locator('.stage').boundingBox();
    if (stage === null) throw new Error('no stage');
    const y = stage.y + stage.height * 0.7;
    const at = (part: number): number => stage.x + stage.width * part;
    await page.mouse.move(at(0.4), y);
    await page.mouse.down();
    await page.mouse.move(at(0.5), y, { steps: 3 });
    await page.mouse.move(at(0.7), y, { steps: 3 });
    await page.mouse.up();
    const card = page.getByRole('dialog', { name: 'What lies here?' });
    await card.waitFor();
    expect(await axeFaults(page)).toEqual([]);
    await page.keyboard.type('60x0.25');
    await expect.poll(async () => (await rows(page))[0]).toContain('Primary, 60 turns');
    await page.keyboard.press('Escape');
    await expect.poll(() => rows(page)).toEqual([]);
    await expect.poll(() => page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
    await page.mouse.click(at(0.5), y);
    await card.waitFor();
    await page.keyboard.type('60x0.25');
    await page.keyboard.press('Enter');
    await expect.poll(async () => (await rows(page))[0]).toContain('Primary, 60 turns');
    expect(await card.count()).toBe(0);
    expect(wrongs).toEqual([]);
  });

  it('should build two circuits and a tape by keyboard alone, until the first judgement stands', async () => {
    const { page, wrongs } = await open();
    const put = async (...keys: readonly string[]): Promise<void> => {
      const before = (await rows(page)).length;
      await page.locator('.stage').focus();
      await page.keyboard.press('Enter');
      await page.getByRole('dialog', { name: 'What lies here?' }).waitFor();
      for (const key of keys) await page.keyboard.type(key);
      await page.keyboard.press('Enter');
      await expect.poll(async () => (await rows(page)).length).toBe(before + 1);
    };
    await put('60x0.25');
    await put();
    await put('8x0.6');
    await expect
      .poll(() => page.locator('[data-row] .words b').allInnerTexts())
      .toEqual(['Output, 8 turns', 'Tape', 'Primary, 60 turns']);
    await expect.poll(() => verdictOf(page)).toMatch(/Falls short|Not shown/);
    expect(wrongs).toEqual([]);
  });
});
