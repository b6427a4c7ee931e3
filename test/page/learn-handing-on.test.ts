// What a class hands on: progress as a file, a lesson as a file and as a link into another browser, lessons without a network;
// and every page of learning in the dark and in a narrow window.

import { readFileSync } from 'node:fs';
import type { Download, Page } from 'playwright';
import { describe, expect, inject, it } from 'vitest';
import { axeFaults, gatherWrongs, openPage } from './open-page.ts';
import { hasBrowser, ownContext } from './shared-browser.ts';

const LONG = { timeout: 60_000 };

/** Places of learning, with what stands there once they have come. */
const PLACES = [
  ['', 'button:text("I don’t know")'],
  ['exercises/margins/4182', ':text("sheet 4182")'],
  ['exercise/margins/4182', 'h2:text("sheet 4182")'],
  ['mark', 'h2:text-is("Mark answers")'],
  ['sheets', 'nav[aria-label="sheets"]'],
  ['write', 'h2:text-is("Write a lesson")'],
  ['given', 'label:has-text("a lesson as a file")'],
] as const;

const textOf = async (download: Promise<Download>): Promise<string> =>
  readFileSync(await (await download).path(), 'utf8');

const asFile = (text: string, name = 'file.json') => ({
  name,
  mimeType: 'application/json',
  buffer: Buffer.from(text),
});

/** One lesson done, by its stored solution. */
async function done(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'I don’t know' }).click(LONG);
  await page.getByRole('button', { name: 'a hint' }).click(LONG);
  await page.getByRole('button', { name: 'a hint' }).click();
  await page.getByRole('button', { name: 'show the stored solution' }).click();
  await page.getByText('Done.', { exact: true }).waitFor(LONG);
}

describe.skipIf(!hasBrowser())('handing on what is learnt', () => {
  it('should save how far one has come, and take it over in another browser', async () => {
    const here = await openPage('#learn/grades');
    await done(here.page);
    await here.page.getByText('1 of 23 done.').waitFor();
    const loading = here.page.waitForEvent('download');
    await here.page.getByRole('button', { name: 'save how far you have come' }).click();
    const saved = await textOf(loading);
    expect(JSON.parse(saved)).toMatchObject({
      format: 'layerwright-progress/1',
      lessons: { grades: { done: true, hints: 3 } },
    });
    const there = await openPage('#learn/enamel');
    await there.page.getByText('0 of 23 done.').waitFor(LONG);
    const field = there.page.getByLabel('take over what was saved');
    await field.setInputFiles(asFile('{"format":"something"}'));
    await there.page.getByText('This file says nothing of lessons').waitFor();
    await field.setInputFiles(asFile(saved));
    await there.page.getByText('1 of 23 done.').waitFor();
    await done(there.page);
    await there.page.getByText('2 of 23 done.').waitFor();
    // kept by that browser from now on
    await there.page.reload();
    await there.page.getByText('2 of 23 done.').waitFor(LONG);
    expect([...here.wrongs, ...there.wrongs]).toEqual([]);
  });

  it('should hand a written lesson on, as a file and as a link, to another browser', async () => {
    const { page, wrongs } = await openPage('#learn/write/margin');
    const fill = (label: string | RegExp, text: string) => page.getByLabel(label).fill(text);
    await page.getByLabel('title', { exact: true }).fill('A margin of one’s own', LONG);
    await fill('short name on the row', 'own margin');
    await fill(/^question/, 'Which grade stands here?');
    await fill(/^why it is so/, 'The way is the sum of both margins and the tape.');
    await fill(/^the task/, 'Widen the output’s margins.');
    await fill(
      /^a solution/,
      'layers[2].margins.left.width = 2.9 mm\nlayers[2].margins.right.width = 2.9 mm',
    );
    await fill(/^what undoes/, 'layers[2].margins.left.width = 1 mm');
    await fill(/^what is learnt/, 'Both margins count.');
    await fill(/^common practice/, 'Common practice: measured after winding.');
    await page.getByRole('button', { name: 'Have it proved by the solver' }).click();
    await page.getByText(/^It holds:/).waitFor(LONG);
    const loading = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save as a file' }).click();
    const saved = await textOf(loading);
    await page.getByRole('button', { name: 'A link' }).click();
    const link = await page.getByLabel('opens the lesson').inputValue();
    // the whole lesson is behind the sign that no browser sends on
    expect(link.indexOf('#learn/given/')).toBeGreaterThan(0);

    const byLink = await openPage(link.slice(link.indexOf('#')));
    await byLink.page.getByText('a lesson that was handed on').waitFor(LONG);
    await byLink.page.getByRole('button', { name: 'I don’t know' }).click(LONG);
    await byLink.page.getByText('The way is the sum of both margins').waitFor(LONG);

    const byFile = await openPage('#learn/given');
    const field = byFile.page.getByLabel('a lesson as a file');
    await field.setInputFiles(asFile(saved.replace('"Both margins count."', '""')), LONG);
    await byFile.page.getByRole('alert').getByText('learnt').first().waitFor();
    await field.setInputFiles(asFile(saved));
    await byFile.page.getByRole('heading', { name: 'Which grade stands here?' }).waitFor(LONG);
    expect([...wrongs, ...byLink.wrongs, ...byFile.wrongs]).toEqual([]);
  });

  it('should teach without a network, from what was kept at the first visit', async () => {
    const context = await ownContext({ serviceWorkers: 'allow' });
    const page = await context.newPage();
    const wrongs = await gatherWrongs(page);
    await page.goto(inject('url'));
    await page.locator('html[data-ready]').waitFor(LONG);
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    await expect
      .poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null || 'waiting'), LONG)
      .toBeTruthy();
    await page.close();
    await context.setOffline(true);
    const offline = await context.newPage();
    const offlineWrongs = await gatherWrongs(offline);
    await offline.goto(`${inject('url')}#learn/grades`);
    await offline.locator('html[data-ready]').waitFor(LONG);
    await done(offline);
    await offline.goto(`${inject('url')}#learn/exercises/margins/4182`);
    await offline.getByText('sheet 4182').first().waitFor(LONG);
    await offline.goto(`${inject('url')}#words/margin`);
    await offline.locator('article .picture svg').waitFor(LONG);
    expect([...wrongs, ...offlineWrongs]).toEqual([]);
    await context.close();
  });

  it('should read the figure of the very voltage on a sheet to explore', async () => {
    const { page, wrongs } = await openPage('#learn/sheets/asked');
    const says = page.locator('p.read');
    // 550 V: between 500 (5.0) and 630 (6.3) 5.5 for basic, twice that for reinforced
    await page.getByText('working voltage 550 V rms: reinforced 11 mm, basic 5.5 mm').waitFor(LONG);
    await page.getByRole('slider').focus();
    await page.keyboard.press('ArrowLeft');
    await expect.poll(() => says.innerText()).toContain('500 V rms: reinforced 10 mm, basic 5 mm');
    expect(wrongs).toEqual([]);
  });

  it('should hold in a narrow window and in the dark', async () => {
    const { page, wrongs } = await openPage('#learn', {
      viewport: { width: 390, height: 844 },
      colorScheme: 'dark',
    });
    for (const [place, mark] of PLACES) {
      await page.evaluate((to) => (location.hash = to), `learn/${place}`.replace(/\/$/, ''));
      await page.locator('main nav[aria-label="learn"]').waitFor(LONG);
      await page.locator(mark).first().waitFor(LONG);
      if (place === '') await page.locator(mark).click(LONG);
      expect(await page.evaluate(() => document.documentElement.scrollWidth), place).toBeLessThanOrEqual(390);
      expect(await axeFaults(page), place).toEqual([]);
    }
    expect(wrongs).toEqual([]);
  });
});
