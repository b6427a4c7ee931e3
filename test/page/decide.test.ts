import type { Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { faultsOfLooks, judged, openDemo, openPage, verdictOf } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

describe.skipIf(!hasBrowser())('what would decide', () => {
  it('should name both verdicts and the figure between them, and the figure should hold', async () => {
    const { page, wrongs } = await openPage();
    await forgetMargin(page);
    await expect.poll(() => verdictOf(page)).toContain('Not shown');
    await page.evaluate(() => (location.hash = 'decide'));
    const row = page.locator('main li').filter({ hasText: 'Left margin, layer 1'.toLowerCase() });
    await row.getByText('Below').waitFor();
    const text = await row.innerText();
    await expect
      .poll(() => page.locator('.now').innerText())
      .toContain('with every unknown at its worst: not shown');
    expect(text).toContain('with this at its best: meets');
    const [, short, enough] =
      /Below ([\d.]+) mm falls short, .*from ([\d.]+) mm meets/.exec(text)?.map(Number) ?? [];
    const under = (figure = NaN): string => `${(figure - 0.01).toFixed(2)} mm`;
    await page.getByRole('button', { name: 'left margin, layer 1' }).first().click();
    const field = page.locator('[data-field="layers[0].margins.left.width"]');
    await expect.poll(() => field.evaluate((input) => input === document.activeElement)).toBe(true);
    await field.fill(`${enough} mm`);
    await page.keyboard.press('Enter');
    await expect.poll(() => verdictOf(page)).toContain('Meets');
    await field.fill(under(enough));
    await page.keyboard.press('Enter');
    await expect.poll(() => verdictOf(page)).not.toContain('Meets');
    await field.fill(under(short));
    await page.keyboard.press('Enter');
    await expect.poll(() => verdictOf(page)).toContain('Falls short');
    expect(wrongs).toEqual([]);
  });

  it('should stop when asked and go on from there', async () => {
    const { page, wrongs } = await openPage();
    await forgetMargin(page);
    await openAndStop(page);
    await page.getByText('Stopped at').waitFor();
    const found = await page.locator('main .figure p').filter({ hasText: '.' }).count();
    await page.waitForTimeout(300);
    await expect.poll(() => page.locator('main .figure p').filter({ hasText: '.' }).count()).toBe(found);
    await page.getByRole('button', { name: 'Go on' }).click();
    await page.getByRole('button', { name: 'Stop' }).waitFor({ state: 'detached' });
    await expect.poll(() => page.locator('main .progress').innerText()).not.toContain('Stopped');
    expect(wrongs).toEqual([]);
  });

  it('should search anew when a step is taken back', async () => {
    const { page, wrongs } = await openPage();
    await forgetMargin(page);
    await page.evaluate(() => (location.hash = 'decide'));
    await page.getByText('Below').first().waitFor();
    await page.locator('h1').click();
    await page.keyboard.press('Control+z');
    await page.getByText(/^Nothing (?:is|that is still) unknown/).waitFor();
    await expect
      .poll(() => page.locator('main li').filter({ hasText: 'left margin, layer 1' }).count())
      .toBe(0);
    await page.keyboard.press('Control+y');
    await page.getByText('Below').first().waitFor();
    expect(wrongs).toEqual([]);
  });

  it('should have no fault that axe finds, and not scroll sideways', async () => {
    const { page } = await openPage('#open');
    await forgetMargin(page);
    await page.evaluate(() => (location.hash = 'decide'));
    await page.getByText('Below').first().waitFor();
    expect(await faultsOfLooks(page)).toEqual([]);
  });
});

/** Presses stop in the moment in which it appears: the search may be over before a hand could reach it. */
async function openAndStop(page: Page): Promise<void> {
  await page.evaluate(() => {
    const watch = new MutationObserver(() => {
      const buttons = [...document.querySelectorAll<HTMLButtonElement>('main .progress button')];
      const stop = buttons.find(({ textContent }) => textContent.includes('Stop'));
      if (stop === undefined) return;
      watch.disconnect();
      stop.click();
    });
    watch.observe(document.body, { childList: true, subtree: true });
    location.hash = 'decide';
  });
}

/** A build that meets, with one margin that nobody knows. */
async function forgetMargin(page: Page): Promise<void> {
  await openDemo(page, 'Charger of a cordless hedge trimmer');
  await page.locator('[data-row="0"]').click();
  await page.locator('[data-field="layers[0].margins.left.width"]').fill('?');
  await page.keyboard.press('Enter');
  await judged(page);
}
