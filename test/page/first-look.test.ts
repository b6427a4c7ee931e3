import { describe, expect, it } from 'vitest';
import { axeFaultsInBoth, openDemo, openPage, sideways, verdictOf } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

describe.skipIf(!hasBrowser())('first look', () => {
  it('should open on a judged build without an error or a breach of the policy', async () => {
    const { page, wrongs } = await openPage();
    await expect.poll(() => page.locator('#opening-verdict').innerText()).toContain('Falls short');
    await expect.poll(() => page.getByRole('button', { name: /Examine|Design|Learn|Open/ }).count()).toBe(4);
    expect(wrongs).toEqual([]);
  });

  it('should show the verdict, the pairs and the weak spots on the sheet', async () => {
    const { page, wrongs } = await openPage();
    await page.getByRole('button', { name: 'Go on with this build' }).click();
    await expect.poll(() => verdictOf(page)).toContain('Falls short');
    await expect.poll(() => page.locator('article').first().innerText()).toContain('4.83');
    await expect.poll(() => page.locator('section:has(#weak-spots) li').count()).toBeGreaterThan(0);
    expect(wrongs).toEqual([]);
  });

  it('should judge anew when a ply is taken out, and draw another path', async () => {
    const { page, wrongs } = await openPage();
    await openDemo(page, 'Charger of a cordless hedge trimmer');
    await expect.poll(() => verdictOf(page)).toContain('Meets');
    const before = await page.locator('article').first().innerText();
    await page.locator('[data-row="3"]').click();
    await page.locator('[data-field="layers[3].plies"]').fill('1');
    await page.keyboard.press('Enter');
    await expect.poll(() => verdictOf(page)).toContain('Falls short');
    await expect.poll(() => page.locator('article').first().innerText()).not.toBe(before);
    await page.locator('[data-row="3"]').focus();
    await page.keyboard.press('Control+z');
    await expect.poll(() => verdictOf(page)).toContain('Meets');
    expect(wrongs).toEqual([]);
  });

  it('should keep a wrong entry in view with its reason, and the last judgement beside it', async () => {
    const { page, wrongs } = await openPage('#sheet');
    await page.locator('[data-row="2"]').click();
    const field = page.locator('[data-field="layers[2].margins.left.width"]');
    await field.fill('0.8 kg');
    await page.keyboard.press('Enter');
    await expect.poll(() => field.inputValue()).toBe('0.8 kg');
    await expect.poll(() => field.getAttribute('aria-invalid')).toBe('true');
    await expect
      .poll(() => page.locator('.stale').innerText())
      .toMatch(/^.*Left margin, layer 3 is "0.8 kg"; expected a length/s);
    await expect.poll(() => verdictOf(page)).toContain('Falls short');
    await field.fill('.118"');
    await page.keyboard.press('Enter');
    await expect.poll(() => field.inputValue()).toContain('2.9972 mm');
    expect(wrongs).toEqual([]);
  });

  it.each(['', '#sheet', '#examine', '#design', '#learn', '#open'])(
    'should have no fault that axe finds, light and dark, and not scroll sideways: page %s',
    async (fragment) => {
      const { page } = await openPage(fragment);
      await page.locator('h1').first().waitFor();
      if (fragment === '#sheet') await page.locator('[data-row="2"]').click();
      expect(await axeFaultsInBoth(page)).toEqual([]);
      expect(await sideways(page, 360, 820, 2560)).toEqual([0, 0, 0]);
    },
  );
});
