import type { Browser } from 'playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { axeFaults, hasBrowser, launch, openDemo, openPage } from './open-page.ts';

const TIMER = 'Wall supply of a greenhouse irrigation timer';
const LONG = { timeout: 60_000 };

describe.skipIf(!hasBrowser())('the page of the field', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => browser.close());

  async function openField(options: Parameters<typeof openPage>[2] = {}) {
    const { page, wrongs } = await openPage(browser, '', options);
    await openDemo(page, TIMER);
    await page.evaluate(() => (location.hash = 'field'));
    await page.getByRole('heading', { level: 1, name: 'Field' }).waitFor();
    return { page, wrongs };
  }

  it('should show a coarse answer first and the fine one after', async () => {
    const { page, wrongs } = await openField();
    await page.getByText('coarse', { exact: false }).first().waitFor(LONG);
    await page.getByText(/two meshes agree within/).waitFor(LONG);
    await page.getByRole('heading', { name: /Nothing discharges at work/ }).waitFor();
    await expect.poll(() => page.locator('tbody tr').count()).toBeGreaterThan(8);
    expect(wrongs).toEqual([]);
    expect(await axeFaults(page)).toEqual([]);
  });

  it('should pick gaps by key, move the probe by arrows and read what is there', async () => {
    const { page, wrongs } = await openField();
    await page.getByText(/two meshes agree within/).waitFor(LONG);
    await page.keyboard.press('2');
    await page.getByRole('heading', { name: 'Gap 2, close' }).waitFor();
    await page.getByRole('application').focus();
    await page.keyboard.press('ArrowUp');
    await page.getByText(/x [\d.]+ mm, y [\d.]+ mm: .* V/).waitFor();
    await page.keyboard.press('t');
    await page.getByText('at the proving test of the pair').waitFor();
    expect(wrongs).toEqual([]);
  });

  it('should judge the touch current by the field once it is there, on the page of stress too', async () => {
    const { page, wrongs } = await openField();
    await page.getByText(/two meshes agree within/).waitFor(LONG);
    await page.getByRole('heading', { name: 'Touch current, by the field' }).waitFor(LONG);
    await page.evaluate(() => (location.hash = 'stress'));
    await page
      .getByText(/by the field solver/)
      .first()
      .waitFor();
    expect(wrongs).toEqual([]);
  });

  it('should keep the coarse answer when it is stopped', async () => {
    const { page } = await openField();
    await page.getByRole('button', { name: 'Stop' }).click(LONG);
    await page.getByText('coarse; stopped').waitFor();
    await page.getByRole('button', { name: 'Work out the fine answer' }).click();
    await page.getByText(/two meshes agree within/).waitFor(LONG);
  });
});
