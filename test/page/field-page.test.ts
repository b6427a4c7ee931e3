import type { Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { rampColor, STEPS } from '#drawing/field/ramp.ts';
import { axeFaults, openDemo, openPage } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

const TIMER = 'Wall supply of a greenhouse irrigation timer';
const LONG = { timeout: 60_000 };

describe.skipIf(!hasBrowser())('the page of the field', () => {
  async function openField(options: Parameters<typeof openPage>[1] = {}) {
    const { page, wrongs } = await openPage('', options);
    await openDemo(page, TIMER);
    await page.evaluate(() => (location.hash = 'field'));
    await page.getByRole('heading', { level: 1, name: 'Field' }).waitFor();
    return { page, wrongs };
  }

  it('should show a coarse answer first and the fine one after, and tell what it says by key and flag', async () => {
    const { page, wrongs } = await openField();
    await page.getByText('coarse', { exact: false }).first().waitFor(LONG);
    await page.getByText(/two meshes agree within/).waitFor(LONG);
    await page.getByRole('heading', { name: /Nothing discharges at work/ }).waitFor();
    await expect.poll(() => page.locator('tbody tr').count()).toBeGreaterThan(8);
    // the colours of the scale lie on the drawing, strong ones among them
    const colors = await page
      .locator('.stage canvas')
      .first()
      .evaluate((canvas: HTMLCanvasElement) => {
        const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
        const seen = new Map<string, number>();
        for (let i = 0; i < data.length; i += 4) {
          const color = `#${[0, 1, 2].map((k) => data[i + k]!.toString(16).padStart(2, '0')).join('')}`;
          seen.set(color, (seen.get(color) ?? 0) + 1);
        }
        return [...seen].filter(([, count]) => count > 20).map(([color]) => color);
      });
    const steps = Array.from({ length: STEPS }, (_, step) => rampColor('light', step));
    expect(steps.filter((color) => colors.includes(color)).length).toBeGreaterThan(4);
    expect(await axeFaults(page)).toEqual([]);
    await readByKeyAndFlag(page);
    await seeTouchCurrent(page);
    expect(wrongs).toEqual([]);
  });

  /** Gaps are picked by their number and by their flags, the probe is moved by arrows. */
  async function readByKeyAndFlag(page: Page): Promise<void> {
    await page.keyboard.press('2');
    await page.getByRole('heading', { name: 'Gap 2, close' }).waitFor();
    await page.getByRole('group', { name: 'drawing of the section' }).focus();
    await page.keyboard.press('ArrowUp');
    await page.getByText(/x [\d.]+ mm, y [\d.]+ mm: .* V/).waitFor();
    await page.keyboard.press('t');
    await page.getByText('at the proving test of the pair').waitFor();
    await page.getByRole('button', { name: 'gap 4', exact: true }).click();
    await page.getByRole('heading', { name: 'Gap 4, close' }).waitFor();
  }

  /** Judged by the field once that is there, on the page of stress too. */
  async function seeTouchCurrent(page: Page): Promise<void> {
    await page.getByRole('heading', { name: 'Touch current, by the field' }).waitFor(LONG);
    await page.evaluate(() => (location.hash = 'stress'));
    await page
      .getByText(/by the field solver/)
      .first()
      .waitFor();
  }

  it('should keep the coarse answer when it is stopped', async () => {
    const { page } = await openField();
    await page.getByRole('button', { name: 'Stop' }).click(LONG);
    await page.getByText('coarse; stopped').waitFor();
    await page.getByRole('button', { name: 'Work out the fine answer' }).click();
    await page.getByText(/two meshes agree within/).waitFor(LONG);
  });

  const MARGIN = '[data-grip="layers[0].margins.left.width"]';
  const FINE = /two meshes agree within/;

  /** What the fine answer says of couplings: it changes with every edge that moves. */
  async function fineCouplings(page: Page): Promise<string> {
    await page.getByText(FINE).waitFor(LONG);
    return page.locator('[aria-labelledby="couples"] table').innerText();
  }
  const pictures = async (page: Page): Promise<number> =>
    Number(await page.locator('[data-pictures]').getAttribute('data-pictures'));

  it('should follow an edge under mouse and key coarsely, finely when it rests, and go back', async () => {
    const { page, wrongs } = await openField();
    const before = await fineCouplings(page);
    await followMouse(page, before);
    await followKeys(page, before);
    expect(await axeFaults(page)).toEqual([]);
    expect(wrongs).toEqual([]);
  });

  /** The whole drag is one step. */
  async function followMouse(page: Page, before: string): Promise<void> {
    const grip = page.locator(MARGIN);
    const width = await grip.getAttribute('aria-valuenow');
    const box = (await grip.boundingBox())!;
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    const shown = await pictures(page);
    // the hand never rests, and pictures come all the same
    const until = Date.now() + 60_000;
    for (let i = 1; (await pictures(page)) < shown + 2; i++) {
      await page.mouse.move(x + 8 + (i % 30), y);
      await page.waitForTimeout(20);
      expect(Date.now()).toBeLessThan(until);
    }
    expect(await page.locator('.state').innerText()).toContain('coarse');
    expect(await page.getByText(FINE).count()).toBe(0);
    await page.mouse.up();
    expect(await grip.getAttribute('aria-valuenow')).not.toBe(width);
    expect(await fineCouplings(page)).not.toBe(before);
    expect(await page.locator('.state').innerText()).not.toContain('coarse');
    await page.keyboard.press('Control+z');
    await expect.poll(() => grip.getAttribute('aria-valuenow')).toBe(width);
    await page.getByText('a first look on a coarse mesh').waitFor(LONG);
    expect(await fineCouplings(page)).toBe(before);
  }

  async function followKeys(page: Page, before: string): Promise<void> {
    const grip = page.locator(MARGIN);
    const width = Number(await grip.getAttribute('aria-valuenow'));
    await grip.focus();
    for (let i = 0; i < 6; i++) await page.keyboard.press('ArrowRight');
    await expect.poll(() => grip.getAttribute('aria-valuenow')).toBe(`${Number((width + 0.3).toFixed(2))}`);
    await page.getByText('a first look on a coarse mesh').waitFor(LONG);
    expect(await fineCouplings(page)).not.toBe(before);
    for (let i = 0; i < 6; i++) await page.keyboard.press('Control+z');
    await expect.poll(() => grip.getAttribute('aria-valuenow')).toBe(`${width}`);
    await page.getByText('a first look on a coarse mesh').waitFor(LONG);
    expect(await fineCouplings(page)).toBe(before);
  }
});
