import { describe, expect, it } from 'vitest';
import { firstBuild } from '#state/begin/demos.ts';
import { openPage, verdictOf } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

describe.skipIf(!hasBrowser())('starts', () => {
  it('should judge a build of which nothing is known', async () => {
    const { page, wrongs } = await openPage('#examine');
    await page.getByRole('button', { name: 'Judge it' }).click();
    await page.locator('#verdict-words').waitFor();
    // every unknown at both ends is much to judge on a loaded machine
    await expect.poll(() => verdictOf(page), { timeout: 200_000 }).toContain('Not shown');
    await expect.poll(() => page.locator('section:has(#unknown) li').count()).toBeGreaterThan(5);
    expect(wrongs).toEqual([]);
  });

  it('should take answers with their figures, and hold back one that cannot be read', async () => {
    const { page } = await openPage('#examine');
    await page.getByRole('radio', { name: 'measured' }).check();
    await page.getByLabel('between the flanges').fill('wide');
    await expect.poll(() => page.getByRole('button', { name: 'Judge it' }).isDisabled()).toBe(true);
    await page.getByLabel('between the flanges').fill('14 mm');
    await page.getByRole('radio', { name: 'they reach the flanges' }).check();
    await page.getByRole('radio', { name: 'enamelled wire' }).check();
    await page.getByRole('button', { name: 'Judge it' }).click();
    await page.locator('#verdict-words').waitFor();
    // of the primary's wire nobody was asked: it may have a cover of its own
    await expect.poll(() => verdictOf(page), { timeout: 200_000 }).toContain('Not shown');
  });

  it('should say what is asked before anything is wound, and follow the voltage', async () => {
    const { page } = await openPage('#design');
    const asked = page.locator('.end');
    await expect.poll(() => asked.innerText()).toContain('First say between the flanges, tube to rim');
    await page.getByLabel('between the flanges').fill('10 mm');
    await page.getByLabel('tube to rim').fill('4 mm');
    await page.getByLabel('highest mains').fill('240 V');
    await expect.poll(() => asked.innerText()).toContain('reinforced insulation is asked');
    const before = await asked.innerText();
    await page.getByLabel('highest mains').fill('400 V');
    await expect.poll(() => asked.innerText()).not.toBe(before);
    await page.getByRole('radio', { name: 'Two chambers' }).check();
    await page.getByRole('button', { name: 'Lay it on the sheet' }).click();
    await page.getByText('Chamber 2').first().waitFor();
  });

  it('should offer to put right what keeps an opened build from being judged', async () => {
    const { page } = await openPage('#open');
    const design = { ...firstBuild, former: { ...firstBuild.former, height: '3 kg' } };
    await page.locator('textarea').fill(JSON.stringify(design));
    await page.getByRole('button', { name: 'Open the text' }).click();
    await page.getByRole('heading', { name: 'To be put right' }).waitFor();
    await page.getByLabel('former.height', { exact: true }).fill('4.2 mm');
    await page.keyboard.press('Enter');
    await expect.poll(() => verdictOf(page)).toContain('Falls short');
  });

  it('should move a layer that is drawn to another place in the list', async () => {
    const { page } = await openPage('#sheet');
    const grip = await page.locator('[data-layer="2"] .grip').boundingBox();
    const target = await page.locator('[data-layer="0"]').boundingBox();
    if (grip === null || target === null) throw new Error('no list');
    await page.mouse.move(grip.x + 5, grip.y + 5);
    await page.mouse.down();
    await page.mouse.move(grip.x + 5, target.y + target.height - 4, { steps: 6 });
    await page.mouse.up();
    await expect.poll(() => page.locator('[data-row="0"]').innerText()).toContain('Output');
    await page.keyboard.press('Control+z');
    await expect.poll(() => page.locator('[data-row="2"]').innerText()).toContain('Output');
  });
});
