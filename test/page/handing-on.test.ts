import { readFileSync } from 'node:fs';
import type { Page } from 'playwright';
import { describe, expect, inject, it } from 'vitest';
import { firstBuild } from '#state/begin/demos.ts';
import { gatherWrongs, openPage, verdictOf } from './open-page.ts';
import { hasBrowser, ownContext } from './shared-browser.ts';

describe.skipIf(!hasBrowser())('handing on', () => {
  it('should put the whole build into a link and take it out again', async () => {
    const { page } = await openPage('#sheet');
    await page.getByRole('button', { name: 'Share' }).click();
    const link = await page.getByRole('textbox', { name: 'inside this link' }).inputValue();
    const { page: other, wrongs } = await openPage(`#${link.split('#')[1] ?? ''}`);
    await other.getByRole('heading', { level: 1, name: firstBuild.title }).waitFor();
    await expect.poll(() => verdictOf(other)).toContain('Falls short');
    expect(wrongs).toEqual([]);
  });

  it('should say that a damaged link is damaged', async () => {
    const { page } = await openPage('#build=abcdef');
    await expect.poll(() => page.getByRole('alert').innerText()).toContain('damaged');
  });

  it('should save the design file and open it again', async () => {
    const { page } = await openPage('#sheet');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save', exact: true }).click(),
    ]);
    expect(download.suggestedFilename()).toBe('wall-supply-of-a-greenhouse-irrigation-timer.json');
    const text = readFileSync(await download.path(), 'utf8');
    expect(JSON.parse(text)).toEqual(firstBuild);
    await page.getByRole('button', { name: 'Open', exact: true }).click();
    await page.locator('textarea').fill(text.replace('irrigation', 'misting'));
    await page.getByRole('button', { name: 'Open the text' }).click();
    await page.getByRole('heading', { level: 1, name: 'misting' }).waitFor();
  });

  it('should open a dropped file, and refuse one that is no build without harm to the sheet', async () => {
    const { page } = await openPage('#sheet');
    await page.locator('#layers').waitFor();
    await drop('{"format": 1', page);
    await expect.poll(() => page.getByRole('alert').innerText()).toContain('no design file');
    await page.getByRole('link', { name: 'Sheet', exact: true }).click();
    await page.getByRole('heading', { level: 1, name: firstBuild.title }).waitFor();
    await drop(JSON.stringify({ ...firstBuild, title: 'Dropped' }), page);
    await page.getByRole('heading', { level: 1, name: 'Dropped' }).waitFor();
  });

  it('should print the report, not the screen', async () => {
    const { page, wrongs } = await openPage('#sheet');
    await startPrinting(page);
    await page.locator('#paper').waitFor({ state: 'attached' });
    await expect.poll(() => page.locator('#paper').isVisible()).toBe(false);
    await page.emulateMedia({ media: 'print' });
    await expect.poll(() => page.locator('#paper').isVisible()).toBe(true);
    await expect.poll(() => page.locator('#layers').isVisible()).toBe(false);
    await expect.poll(() => page.locator('#paper').innerText()).toContain('4.83');
    await page.evaluate(() => dispatchEvent(new Event('afterprint')));
    await expect.poll(() => page.locator('#paper').count()).toBe(0);
    expect(wrongs).toEqual([]);
  });

  it('should work with the network gone, once it was open', async () => {
    const context = await ownContext();
    const page = await context.newPage();
    const wrongs = await gatherWrongs(page);
    await page.goto(inject('url'));
    await page.evaluate(() => navigator.serviceWorker.ready);
    await context.setOffline(true);
    await page.reload();
    await page.getByRole('button', { name: 'Go on with this build' }).click();
    await expect.poll(() => verdictOf(page)).toContain('Falls short');
    expect(wrongs).toEqual([]);
  });

  it('should show hostile text as text, wherever text may stand', async () => {
    const hostile = [
      '<img src=x onerror="document.title=1">',
      'javascript:alert(1)',
      '"><script>document.title=1</script>',
      '\u202Egnp.exe\u202C',
    ];
    for (const text of hostile) {
      const design = {
        ...firstBuild,
        title: text,
        notes: text,
        circuits: firstBuild.circuits.map((circuit) => ({ ...circuit, name: text })),
        outside: [{ between: ['pri', 'out'], what: text, clearance: '1 mm' }],
        evidence: [{ id: 'E1', kind: 'photo', says: text, fields: [], file: text }],
      };
      const { page, wrongs } = await openPage('#open');
      await page.locator('textarea').fill(JSON.stringify(design));
      await page.getByRole('button', { name: 'Open the text' }).click();
      await page.locator('#layers').waitFor();
      await expect.poll(() => page.locator('h1').innerText()).toBe(text);
      await expect.poll(() => page.locator('img, main script, a[href^="javascript"]').count()).toBe(0);
      await startPrinting(page);
      await page.locator('#paper').waitFor({ state: 'attached' });
      expect(
        await page.locator('#paper script, #paper img:not([src^="data:"]), #paper [onerror]').count(),
      ).toBe(0);
      expect(wrongs).toEqual([]);
      await page.close();
    }
  });

  it('should refuse a text of a hundred kilobytes with its reason', async () => {
    const { page } = await openPage('#sheet');
    await page.getByText('Title and notes').click();
    await page.locator('[data-field="title"]').fill('x'.repeat(100_000));
    await page.locator('[data-field="title"]').press('Enter');
    await expect.poll(() => page.locator('.stale').innerText()).toContain('200 characters');
  });
});

async function drop(text: string, page: Page): Promise<void> {
  await page.evaluate((content) => {
    const data = new DataTransfer();
    data.items.add(new File([content], 'build.json', { type: 'application/json' }));
    dispatchEvent(new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true }));
  }, text);
}

/** What the browser says when it is about to print, once the page is ready to answer. */
async function startPrinting(page: Page): Promise<void> {
  await page.locator('#layers').waitFor();
  await page.waitForLoadState('networkidle');
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
}
