// The page of rule books and the page of tables in a real browser: a look by another book leaves the file as it is, a typed
// value is worked out, cells of memory that decide are marked, a cell confirmed from a copy of one's own travels.

import { readFileSync } from 'node:fs';
import type { Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { axeFaults, judged, openDemo, openPage } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

const TIMER = 'Wall supply of a greenhouse irrigation timer';
const LONG = { timeout: 60_000 };

/** The design as the page would save it. */
async function savedFile(page: Page): Promise<{ rules: string; confirmed?: readonly object[] }> {
  const loading = page.waitForEvent('download');
  await page.keyboard.press('Control+s');
  return JSON.parse(readFileSync(await (await loading).path(), 'utf8')) as { rules: string };
}

describe.skipIf(!hasBrowser())('books and tables', () => {
  async function openAt(place: 'books' | 'tables', options: Parameters<typeof openPage>[1] = {}) {
    const { page, wrongs } = await openPage('', options);
    await openDemo(page, TIMER);
    await judged(page);
    await page.evaluate((hash) => (location.hash = hash), place);
    await page.getByRole('heading', { level: 1, name: place === 'books' ? 'Books' : 'Tables' }).waitFor();
    return { page, wrongs };
  }

  const allBooks = (page: Page) =>
    expect.poll(() => page.locator('li[data-book] .verdict').count(), LONG).toBe(6);

  it('should judge by all six books, and look by another one without touching the file', async () => {
    const { page, wrongs } = await openAt('books');
    await allBooks(page);
    expect(await page.locator('li[data-book].own').getAttribute('data-book')).toBe('iec-62368-1');
    const before = await savedFile(page);
    // by key alone: down to the household book, Enter looks, Escape is back
    const rows = page.locator('li[data-book]');
    const at = await rows.evaluateAll((all) =>
      all.findIndex((one) => (one as HTMLElement).dataset['book'] === 'iec-60335-1'),
    );
    await rows.first().getByRole('button').first().focus();
    for (let i = 0; i < at; i++) await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: /As IEC 60335-1 judges it/ }).waitFor();
    expect(await savedFile(page)).toEqual(before);
    expect(await axeFaults(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await page.getByRole('heading', { name: /As IEC 60335-1 judges it/ }).waitFor({ state: 'detached' });
    // B sets it in the file, and one undo takes it back
    await page.keyboard.press('b');
    expect((await savedFile(page)).rules).toBe('iec-60335-1');
    await page.keyboard.press('Control+z');
    expect((await savedFile(page)).rules).toBe('iec-62368-1');
    expect(wrongs).toEqual([]);
  });

  it('should work a typed value out, draw it, and say where the table ends', async () => {
    const { page, wrongs } = await openAt('tables');
    const value = page.getByRole('textbox', { name: 'working voltage, V rms' });
    // 281 V between 250 and 320: 2.5 + 31/70 x 0.7 = 2.81, up to 2.9, twice 5.8
    await value.fill('.281kV');
    await page.getByRole('heading', { name: 'Worked: 2.9 mm' }).waitFor();
    const worked = await page.locator('aside dl').innerText();
    for (const figure of ['2.81', '2.9', '5.8']) expect(worked).toContain(figure);
    expect(await page.locator('tr.typed').innerText()).toContain('281');
    const plot = page.locator('figure svg');
    expect(await plot.getAttribute('aria-label')).toBe('IEC 62368-1, table 17: creepage');
    for (const words of ['>281<', '>5.8<', 'PD 3', 'Primary to Output, 4.83 mm: 0.77 short'])
      await expect.poll(() => plot.innerHTML(), { timeout: 30_000 }).toContain(words);
    await value.fill('20000');
    await expect.poll(() => page.locator('aside').innerText()).toContain('no reading beyond');
    await value.fill('much');
    await page.getByText('“much” is no figure').waitFor();
    const saving = page.waitForEvent('download');
    await value.fill('272');
    await page.getByRole('button', { name: 'Save the plot' }).click();
    expect(readFileSync(await (await saving).path(), 'utf8')).toContain(
      '<title>IEC 62368-1, table 17: creepage',
    );
    expect(wrongs).toEqual([]);
  });

  it('should search all tables by key, and mark the cells of memory that decide', async () => {
    const { page, wrongs } = await openAt('tables');
    await page.keyboard.press('/');
    await page.keyboard.type('clearance withstand');
    const list = page.getByRole('navigation', { name: 'tables', exact: true });
    await expect.poll(() => list.getByRole('button').count()).toBeLessThan(6);
    await page.keyboard.press('Control+a');
    await page.keyboard.type('no such table');
    await page.getByText('No table has these words.').waitFor();
    await page.keyboard.press('Control+a');
    await page.keyboard.press('Delete');
    await list
      .getByRole('button', { name: /verdict rests on/ })
      .first()
      .click();
    await page.locator('td button.decides').first().click();
    await page.getByText('The open verdict rests on this cell.').waitFor();
    expect(await axeFaults(page)).toEqual([]);
    expect(wrongs).toEqual([]);
  });

  it('should keep a cell corrected from a copy of one’s own in file, verdict, browser and export', async () => {
    const { page, wrongs } = await openAt('tables');
    await page
      .getByRole('button', { name: /^250 V rms, PD 2, IIIb|2\.5/ })
      .first()
      .waitFor();
    await page.locator('td button[title^="250 V rms, PD 2, IIIb:"]').click();
    await page.getByText('I have the standard here').click();
    await page.getByRole('button', { name: 'It says the same' }).click();
    await page.getByText('Which clause or table of your copy says so?').waitFor();
    await page.getByRole('textbox', { name: 'Clause or table in your copy' }).fill('5.4.3, table 17');
    await page.getByRole('textbox', { name: /What it says, in mm/ }).fill('3,1');
    await page.getByRole('button', { name: 'It says this' }).click();
    await page
      .getByText(/Confirmed by the user: 5\.4\.3, table 17/)
      .first()
      .waitFor();
    const file = await savedFile(page);
    expect(file.confirmed).toMatchObject([
      {
        standard: 'IEC 62368-1',
        table: 'creepage',
        cell: '250 V rms, PD 2, IIIb',
        value: 3.1,
        clause: '5.4.3, table 17',
      },
    ]);
    await judged(page);
    // 272 V: 3.1 + 22/70 x 0.1 = 3.13, up to 3.2, twice 6.4
    await page.keyboard.press('Escape');
    await expect.poll(() => page.locator('aside').innerText(), LONG).toContain('6.4');
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Export' }).click();
    const exported = JSON.parse(readFileSync(await (await saving).path(), 'utf8')) as { format: string };
    expect(exported).toMatchObject({ format: 'layerwright-confirmed/1', confirmed: file.confirmed });
    // kept by this browser: another build may take it over
    await openDemo(page, 'Charger of a flea-market cordless drill');
    await page.evaluate(() => (location.hash = 'tables'));
    await page.getByRole('button', { name: 'Take over 1 kept in this browser' }).click();
    await page.getByText('1 confirmed by the user in this file').waitFor();
    expect(wrongs).toEqual([]);
  });

  it.each(['books', 'tables'] as const)(
    'should hold in a narrow window and in the dark: %s',
    async (place) => {
      const { page, wrongs } = await openAt(place, {
        viewport: { width: 390, height: 844 },
        colorScheme: 'dark',
      });
      if (place === 'books') await allBooks(page);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(wide).toBeLessThanOrEqual(390);
      expect(await axeFaults(page)).toEqual([]);
      expect(wrongs).toEqual([]);
    },
  );
});
