import { readFileSync } from 'node:fs';
import type { Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { firstBuild } from '#state/begin/demos.ts';
import { axeFaults, openPage } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

const NAME = 'wall-supply-of-a-greenhouse-irrigation-timer';

describe.skipIf(!hasBrowser())('report and drawing', () => {
  async function saved(page: Page, button: string): Promise<{ name: string; bytes: Buffer }> {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: button }).click(),
    ]);
    return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
  }
  const paper = (page: Page) => page.locator('section[aria-label]');

  it('should show the report under its own style and break no policy', async () => {
    const { page, wrongs } = await openPage('#report');
    await paper(page).getByRole('heading', { name: 'Falls short' }).waitFor();
    const style = await paper(page).evaluate((host) => {
      const cell = host.shadowRoot!.querySelector('td.figure')!;
      return [getComputedStyle(host).fontSize, getComputedStyle(cell).textAlign];
    });
    expect(style).toEqual(['12px', 'right']);
    await page.getByLabel('Winder’s sheet').check();
    await paper(page).getByRole('heading', { name: 'Falls short' }).waitFor({ state: 'detached' });
    await expect.poll(() => paper(page).locator('section.step').count()).toBeGreaterThan(5);
    expect(await axeFaults(page)).toEqual([]);
    expect(wrongs).toEqual([]);
  });

  it('should save the report, the winder’s sheet and the figures', async () => {
    const { page } = await openPage('#report');
    const report = await saved(page, 'Save as HTML');
    expect(report.name).toBe(`${NAME}.html`);
    expect(report.bytes.toString()).toContain('Falls short');
    await page.getByLabel('Winder’s sheet').check();
    const sheet = await saved(page, 'Save as HTML');
    expect(sheet.name).toContain('winding-sheet');
    expect(sheet.bytes.toString()).not.toBe(report.bytes.toString());
    const figures = await saved(page, 'as CSV');
    expect(figures.bytes.toString().split('\n').length).toBeGreaterThan(10);
  });

  it('should save the drawing as SVG, as DXF and as a picture of it in pixels', async () => {
    const { page, wrongs } = await openPage('#report');
    await page.getByLabel('section').selectOption('slumped left');
    const svg = await saved(page, 'SVG');
    expect(svg.name).toBe(`${NAME}-slumped-left.svg`);
    const [, width = '', height = ''] = /width="(\d+)" height="(\d+)"/.exec(svg.bytes.toString()) ?? [];
    await page.getByLabel('outward scale').selectOption('2');
    const stretched = await saved(page, 'SVG');
    expect(Number(/height="(\d+)"/.exec(stretched.bytes.toString())?.[1])).toBeGreaterThan(Number(height));
    await page.getByLabel('outward scale').selectOption('1');
    const png = await saved(page, 'PNG');
    expect(png.bytes.subarray(1, 4).toString()).toBe('PNG');
    // width and height stand at bytes 16 and 20 of a PNG
    expect([png.bytes.readUInt32BE(16), png.bytes.readUInt32BE(20)]).toEqual([
      2 * Number(width),
      2 * Number(height),
    ]);
    const colours = await page.evaluate(async (base64) => {
      const image = new Image();
      image.src = `data:image/png;base64,${base64}`;
      await image.decode();
      const canvas = new OffscreenCanvas(image.width, image.height);
      const pen = canvas.getContext('2d')!;
      pen.drawImage(image, 0, 0);
      return new Set(new Uint32Array(pen.getImageData(0, 0, image.width, image.height).data.buffer)).size;
    }, png.bytes.toString('base64'));
    expect(colours).toBeGreaterThan(20);
    const dxf = await saved(page, 'DXF');
    expect(dxf.bytes.toString()).toContain('ENTITIES');
    expect(wrongs).toEqual([]);
  });

  it('should print the paper that is shown', async () => {
    const { page, wrongs } = await openPage('#report');
    await paper(page).getByRole('heading', { name: 'Falls short' }).waitFor();
    await page.getByLabel('Winder’s sheet').check();
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
    await expect.poll(() => page.locator('#paper header').textContent()).toContain(firstBuild.title);
    await expect.poll(() => page.locator('#paper h2.answer').count()).toBe(0);
    await page.evaluate(() => dispatchEvent(new Event('afterprint')));
    await expect.poll(() => page.locator('#paper').count()).toBe(0);
    expect(wrongs).toEqual([]);
  });
});
