// What a term means, wherever it stands: marked on every page, told to the pointer and to the keys, with a way to its word, and
// without a stop of the tab key.

import type { Page } from 'playwright';
import { describe, expect, it } from 'vitest';

import { terms } from '#words/glossary/terms.ts';
import { judged, openPage } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

const PAGES = [
  ...['start', 'sheet', 'examine', 'design', 'learn/margin', 'learn/sheets', 'learn/write', 'words/margin'],
  ...['open', 'repair', 'stress', 'books', 'tables', 'field', 'mend', 'spread', 'compare', 'report'],
  ...['photographs', 'taking-apart', 'decide', 'many'],
];

/** Pages of many words, with how many marks are there once all has come. */
const FEWEST: Readonly<Record<string, number>> = {
  start: 5,
  sheet: 50,
  examine: 10,
  'learn/margin': 5,
  books: 10,
  report: 100,
  'taking-apart': 10,
};

const saysOf = new Map(
  terms.flatMap(({ term, also, says }) => [term, ...also].map((name) => [name.toLowerCase(), says])),
);

/** The letters under each mark, as they stand there. */
const markedOn = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() =>
    [...(CSS.highlights.get('terms') ?? [])].map(({ startContainer, startOffset, endOffset }) =>
      (startContainer.textContent ?? '').slice(startOffset, endOffset).toLowerCase(),
    ),
  );

describe.skipIf(!hasBrowser())('terms', () => {
  it('should be marked on every page by the names of the glossary, papers included', async () => {
    const { page, wrongs } = await openPage();
    const found = new Map<string, readonly string[]>();
    for (const place of PAGES) {
      await page.evaluate((to) => (location.hash = to === 'start' ? '' : to), place);
      await page.locator('main').first().waitFor({ timeout: 60_000 });
      if (FEWEST[place] !== undefined)
        await expect
          .poll(async () => (await markedOn(page)).length, { timeout: 60_000 })
          .toBeGreaterThan(FEWEST[place]);
      // marks follow what changes within a moment
      const strange = async () => (await markedOn(page)).filter((name) => !saysOf.has(name));
      await expect.poll(strange, { timeout: 20_000, message: place }).toEqual([]);
      found.set(place, await markedOn(page));
    }
    expect(new Set([...found.values()].flat()).size).toBeGreaterThan(60);
    expect(wrongs).toEqual([]);
  });

  it('should be told to a pointer that rests on them, and no longer when it has left', async () => {
    const { page, wrongs } = await openPage('#sheet');
    await judged(page);
    const box = (await page.locator('#verdict-words').boundingBox())!;
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    const note = page.getByRole('note', { name: 'what it means' });
    await note.waitFor();
    expect(await note.innerText()).toContain(saysOf.get('falls short'));
    const over = (await note.boundingBox())!;
    const middle = box.y + box.height / 2;
    expect(over.y > middle || over.y + over.height < middle).toBe(true);
    await page.mouse.move(700, 300);
    await note.waitFor({ state: 'detached' });
    expect(wrongs).toEqual([]);
  });

  it('should be told by one key from a field, lead to the word, and give the focus back', async () => {
    const { page, wrongs } = await openPage('#examine');
    const field = page
      .getByRole('textbox', { name: /margin/i })
      .or(page.locator('main input'))
      .first();
    await field.focus();
    const before = await page.evaluate(() => document.activeElement?.id);
    expect(await page.locator('[data-term-note]').count()).toBe(0);
    await page.keyboard.press('F2');
    const note = page.getByRole('note', { name: 'what it means' });
    await note.waitFor();
    const [name = '', says] = (await note.innerText()).split(/\n+/);
    expect(saysOf.get(name.toLowerCase())).toBe(says);
    await page.keyboard.press('F2');
    await expect.poll(async () => (await note.innerText()).split('\n')[0]).not.toBe(name);
    await page.keyboard.press('Escape');
    await note.waitFor({ state: 'detached' });
    expect(await page.evaluate(() => document.activeElement?.id)).toBe(before);
    await page.keyboard.press('F2');
    await note.getByRole('link', { name }).waitFor();
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: 'Words' }).waitFor();
    await page.getByRole('heading', { level: 2, name }).waitFor();
    expect(wrongs).toEqual([]);
  });
});
