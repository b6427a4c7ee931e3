import { describe, expect, it } from 'vitest';
import { axeFaultsInBoth, openDemo, openPage, sideways } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

const DOCK = 'Charging dock of a garden robot';

describe.skipIf(!hasBrowser())('the page of stress', () => {
  async function openStress(options: Parameters<typeof openPage>[1] = {}, title = DOCK) {
    const { page, wrongs } = await openPage('', options);
    await openDemo(page, title);
    await page.evaluate(() => (location.hash = 'stress'));
    await page.getByRole('heading', { level: 1, name: 'Stress' }).waitFor();
    return { page, wrongs };
  }

  it('should show every pair, the ends that decide, and draw them', async () => {
    const { page, wrongs } = await openStress();
    await expect.poll(() => page.locator('section:has(#working) li').count()).toBe(3);
    const plot = page.getByRole('img', { name: /Computed .* from the switched end of Primary P/ });
    await plot.waitFor();
    await expect.poll(() => plot.getAttribute('aria-label')).toContain('to the return of Output S');
    await expect.poll(() => plot.locator('polyline').count()).toBe(4);
    await page.getByRole('button', { name: 'rms', exact: true }).click();
    await page
      .getByRole('img', { name: /to the switched end of Output S, rectifier in the return lead/ })
      .waitFor();
    expect(wrongs).toEqual([]);
  });

  it('should stand beside its section, each layer of turns with a bar of volts at its own height', async () => {
    const { page } = await openStress();
    const drawn = page.getByRole('region', { name: 'the section and its voltages' });
    await drawn.locator('svg').waitFor();
    // two halves of the primary, the auxiliary, the output
    await expect.poll(() => drawn.locator('path[stroke-dasharray="1.5 3"]').count()).toBe(4);
    await expect.poll(() => drawn.locator('text', { hasText: /\d V$/ }).count()).toBe(1);
    await expect.poll(() => drawn.locator('title').first().textContent()).toContain('Primary to Output');
    const { page: plain } = await openStress({}, 'Wall supply of a greenhouse irrigation timer');
    const without = plain.getByRole('region', { name: 'the section and its voltages' });
    await without.locator('svg').waitFor();
    expect(await without.locator('text', { hasText: / V$/ }).count()).toBe(0);
  });

  it('should change its drawing with the picked pair', async () => {
    const { page } = await openStress();
    await page.locator('section:has(#working) button').first().click();
    await page.getByRole('img', { name: /to the return of Auxiliary A/ }).waitFor();
    await expect.poll(() => page.locator('#drawn').innerText()).toBe('Primary to Auxiliary');
  });

  it('should say what one fault of the capacitor does, and what a passed test would hide', async () => {
    const { page } = await openStress();
    const main = page.locator('main');
    await expect.poll(() => main.innerText()).toContain('CX1, Primary to Output: unsafe bridge');
    const text = await main.innerText();
    expect(text).toContain('A pass would mislead here');
    expect(text).toContain('Test voltages kill.');
    expect(text).toContain('rule of thumb');
  });

  it('should give the voltage between two chosen turns', async () => {
    const { page } = await openStress();
    const picker = page.getByRole('group', { name: 'voltage between two places' });
    const before = await picker.locator('output').innerText();
    await picker.getByLabel('to layer').selectOption('2');
    await picker.getByLabel('after turn').nth(1).fill('31');
    await picker.getByLabel('after turn').nth(1).press('Enter');
    // from the start of the primary to its finish: the whole bulk, 339 V
    await expect.poll(() => picker.locator('output').innerText()).toContain('339 V peak');
    expect(before).not.toContain('339 V peak');
  });

  it('should do without a converter', async () => {
    const { page, wrongs } = await openStress({}, 'Charger of a cordless hedge trimmer');
    await expect.poll(() => page.locator('main').innerText()).toContain('Nothing is computed for this pair');
    expect(wrongs).toEqual([]);
  });

  it('should be reached from the sheet and by keyboard alone', async () => {
    const { page } = await openPage('#sheet', { viewport: { width: 1000, height: 800 } });
    await page.locator('summary', { hasText: /^Sheet$/ }).focus();
    await page.keyboard.press('Enter');
    const link = page.getByRole('link', { name: 'Stress', exact: true });
    await link.waitFor();
    await page.keyboard.press('Escape');
    await link.waitFor({ state: 'hidden' });
    await page.keyboard.press('Enter');
    await link.focus();
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: 'Stress' }).waitFor();
  });

  it('should have no fault that axe finds, and not scroll sideways', async () => {
    const { page } = await openStress();
    expect(await axeFaultsInBoth(page)).toEqual([]);
    expect(await sideways(page, 820, 2560, 360)).toEqual([0, 0, 0]);
    expect(await axeFaultsInBoth(page)).toEqual([]);
  });
});
