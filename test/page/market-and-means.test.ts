// The fields of the market and of what an output protects, clicked in a real browser: what the market lays down is counted
// where the file is silent, and means of protection are the operator's only where somebody says so.

import { readFileSync } from 'node:fs';
import type { Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { axeFaults, judged, openPage } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

interface File {
  rules: string;
  readonly supply: Record<string, unknown>;
  readonly surroundings: Record<string, unknown>;
  readonly circuits: readonly { readonly role: string; readonly means?: string }[];
}

const TIMER = (): File => JSON.parse(readFileSync('static/demos/greenhouse-timer.json', 'utf8')) as File;

describe.skipIf(!hasBrowser())('market and means', () => {
  async function opened(file: File) {
    const { page, wrongs } = await openPage('#open');
    await page.locator('textarea').fill(JSON.stringify(file));
    await page.getByRole('button', { name: 'Open the text' }).click();
    await page.locator('.stage canvas').first().waitFor();
    await judged(page);
    return { page, wrongs };
  }

  const unfold = (page: Page, title: string) => page.locator('summary', { hasText: title }).click();

  async function saved(page: Page): Promise<File> {
    const loading = page.waitForEvent('download');
    await page.keyboard.press('Control+s');
    return JSON.parse(readFileSync(await (await loading).path(), 'utf8')) as File;
  }

  it('should count the altitude of the market that is chosen, and say so beside the field and as an assumption', async () => {
    const file = TIMER();
    delete file.supply['overvoltageCategory'];
    delete file.surroundings['altitude'];
    const { page, wrongs } = await opened(file);
    await unfold(page, 'Supply and surroundings');
    const altitude = page.locator('[data-field="surroundings.altitude"]');
    const left = () => altitude.getAttribute('placeholder');
    expect(await left()).toBe('2000 m');
    await page.locator('[data-field="supply.market"]').selectOption({ label: 'China, 220 V' });
    expect(await left()).toBe('5000 m, as for China, 220 V');
    await judged(page);
    const unknowns = page.locator('section[aria-labelledby="unknown"]');
    const says = () => unknowns.evaluate((section) => section.textContent);
    await expect
      .poll(says, { timeout: 30_000 })
      .toContain('5000 m, as for China, 220 V (second-hand copy: GB 4943.1-2022)');
    expect(await says()).toContain('the file names no altitude, so they count');
    // what is typed wins, and the market is told beside it
    await altitude.fill('1500 m');
    await altitude.press('Enter');
    await expect.poll(says, { timeout: 30_000 }).toContain('the file states 1500 m, which counts');
    expect((await saved(page)).surroundings['altitude']).toBe('1500 m');
    expect(await axeFaults(page)).toEqual([]);
    expect(wrongs).toEqual([]);
  });

  it('should count a patient until the operator is chosen, by key as by hand, and take it back', async () => {
    const file = TIMER();
    file.rules = 'iec-60601-1';
    const at = file.circuits.findIndex(({ role }) => role === 'touchable');
    const { page, wrongs } = await opened(file);
    await unfold(page, 'Circuits and windings');
    const means = page.locator(`[data-field="circuits[${at}].means"]`);
    const unknowns = page.locator('section[aria-labelledby="unknown"]');
    const says = () => unknowns.evaluate((section) => section.textContent);
    await expect.poll(says, { timeout: 30_000 }).toContain('protecting a patient');
    await means.focus();
    // not said, a patient, an operator
    for (const key of ['ArrowDown', 'ArrowDown']) await page.keyboard.press(key);
    expect(await means.inputValue()).toBe('operator');
    await judged(page);
    await expect.poll(says, { timeout: 30_000 }).not.toContain('protecting a patient');
    expect((await saved(page)).circuits[at]).toMatchObject({ means: 'operator' });
    // a choice has no steps of its own: the build's are taken back, the operator's and the patient's
    await page.keyboard.press('Control+z');
    await expect.poll(() => means.inputValue()).toBe('patient');
    await page.keyboard.press('Control+z');
    await expect.poll(() => means.inputValue()).toBe('');
    await expect.poll(says, { timeout: 30_000 }).toContain('protecting a patient');
    await means.selectOption('patient');
    await judged(page);
    await expect.poll(says, { timeout: 30_000 }).not.toContain('protecting a patient');
    expect((await saved(page)).circuits[at]).toMatchObject({ means: 'patient' });
    expect(wrongs).toEqual([]);
  });
});
