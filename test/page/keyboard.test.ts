import type { Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { openPage, verdictOf } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';
import { tabTo } from './tab-keys.ts';

describe.skipIf(!hasBrowser())('keyboard alone', () => {
  it('should wind a transformer of six layers from an empty former', async () => {
    const { page, wrongs } = await openPage();
    await press(page, 'Design', 'Enter');
    await page.getByRole('heading', { level: 1, name: 'Design' }).waitFor();
    for (const [label, figure] of [
      ['between the flanges', '10 mm'],
      ['tube to rim', '4 mm'],
      ['highest mains', '240 V'],
    ] as const) {
      await page.getByLabel(label).focus();
      await page.keyboard.type(figure);
    }
    await press(page, 'construction', 'ArrowUp');
    // every kind is judged before one is taken
    const lay = page.getByRole('button', { name: 'Lay it on the sheet' });
    await expect.poll(() => lay.getAttribute('aria-disabled')).toBeNull();
    await press(page, 'Lay it on the sheet', 'Enter');
    await page.locator('#layers').waitFor();

    await press(page, 'Circuits and windings', 'Enter');
    await press(page, 'add a winding of Primary', 'Enter');
    await press(page, 'add a winding of Output', 'Enter');
    await insert(page, 1, 'tape');
    await insert(page, 3, 'tape');
    await insert(page, 4, 'winding P');
    await insert(page, 5, 'tape');
    await expect.poll(() => page.locator('[data-layer]').count()).toBe(6);

    for (const layer of [0, 2, 4]) {
      await openRow(page, layer);
      for (const side of ['left', 'right']) {
        await type(page, `layers[${layer}].margins.${side}.width`, '3.2 mm');
        await focusOn(page, `[data-field="layers[${layer}].margins.${side}.filled"]`);
        await page.keyboard.press('Space');
      }
    }
    await openRow(page, 0);
    await type(page, 'layers[0].turns', '40');
    await expect.poll(() => page.locator('[data-row="0"]').innerText()).toContain('40 turns');
    await expect.poll(() => verdictOf(page)).toMatch(/Meets|Not shown|Falls short/);
    await expect.poll(() => page.locator('article').innerText()).toContain('of');
    expect(wrongs).toEqual([]);
  });

  it('should walk, move, copy, take out and bring back layers in the list', async () => {
    const { page } = await openPage('#sheet');
    await focusOn(page, '[data-row="0"]');
    await page.keyboard.press('ArrowUp');
    await expect.poll(() => focused(page)).toBe('1');
    await page.keyboard.press('Alt+ArrowUp');
    await expect.poll(() => focused(page)).toBe('2');
    await expect.poll(() => page.locator('[data-row="2"]').innerText()).toContain('Tape');
    await page.keyboard.press('Control+z');
    await expect.poll(() => page.locator('[data-row="2"]').innerText()).toContain('Output');
    await focusOn(page, '[data-row="1"]');
    await page.keyboard.press('Control+d');
    await expect.poll(() => page.locator('[data-layer]').count()).toBe(7);
    await page.keyboard.press('Delete');
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+z');
    await expect.poll(() => page.locator('[data-layer]').count()).toBe(6);
  });

  it('should move all picked layers together, and back in one step', async () => {
    const { page } = await openPage('#sheet');
    const rows = async (): Promise<readonly string[]> =>
      (await page.locator('[data-row]').allInnerTexts()).map((row) => row.split('\n').slice(1).join(' '));
    await focusOn(page, '[data-row="0"]');
    await page.keyboard.press('ArrowUp');
    await expect.poll(() => focused(page)).toBe('1');
    await page.keyboard.press('Shift+ArrowUp');
    await expect.poll(() => focused(page)).toBe('2');
    const before = await rows();
    await page.keyboard.press('Alt+ArrowUp');
    await expect.poll(() => page.locator('[data-layer].picked').count()).toBe(2);
    const [five, four, three, two, one, nought] = before;
    // outermost on top: 1 and 2 have passed 3
    await expect.poll(() => rows()).toEqual([five, four, two, one, three, nought]);
    await page.keyboard.press('Control+z');
    await expect.poll(() => rows()).toEqual(before);
  });

  it('should pick the copies of layers, and nothing after a step back', async () => {
    const { page } = await openPage('#sheet');
    const picked = (): Promise<readonly (string | null)[]> =>
      page
        .locator('[data-layer].picked')
        .evaluateAll((rows) => rows.map((row) => row.getAttribute('data-layer')));
    await focusOn(page, '[data-row="1"]');
    await page.keyboard.press('ArrowUp');
    await expect.poll(() => focused(page)).toBe('2');
    await page.keyboard.press('Shift+ArrowUp');
    await expect.poll(() => focused(page)).toBe('3');
    await page.keyboard.press('Control+d');
    // outermost on top: 2 and 3 are copied just outside themselves
    await expect.poll(picked).toEqual(['5', '3']);
    await page.keyboard.press('Delete');
    await expect.poll(() => page.locator('[data-layer]').count()).toBe(6);
    await page.keyboard.press('Control+z');
    await expect.poll(picked).toEqual([]);
  });

  it('should stay in the list when its last layer is taken out', async () => {
    const { page } = await openPage('#sheet');
    await focusOn(page, '[data-row="5"]');
    for (let left = 5; left >= 0; left--) {
      await page.keyboard.press('Delete');
      await expect.poll(() => page.locator('[data-layer]').count()).toBe(left);
      if (left > 0) await expect.poll(() => focused(page)).not.toBe(null);
    }
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getAttribute('data-insert')))
      .toBe('0');
  });

  it('should reach every control of the sheet with Tab and show where it is', async () => {
    const { page } = await openPage('#sheet');
    await page.locator('#layers').waitFor();
    const all = await page.evaluate(() => {
      const seen = [
        ...document.querySelectorAll<HTMLElement>('button, select, input, textarea, summary, [tabindex="0"]'),
      ];
      return seen.filter((each) => each.checkVisibility() && !each.matches(':disabled, [tabindex="-1"]'))
        .length;
    });
    const met = new Set<string>();
    for (let i = 0; i < all + 5; i++) {
      await page.keyboard.press('Tab');
      const found = await page.evaluate(() => {
        const on = document.activeElement;
        if (on === null || on === document.body) return null;
        const { outlineStyle, outlineWidth } = getComputedStyle(on);
        const place = [...document.querySelectorAll('*')].indexOf(on);
        return { place: String(place), isMarked: outlineStyle !== 'none' && outlineWidth !== '0px' };
      });
      if (found === null) continue;
      met.add(found.place);
      expect(found.isMarked).toBe(true);
    }
    expect(met.size).toBeGreaterThanOrEqual(all);
  });

  it('should list its keys under a question mark, and go to a weak spot by its number', async () => {
    const { page } = await openPage('#sheet');
    await page.locator('#layers').waitFor();
    await page.keyboard.press('?');
    await page.getByRole('dialog').waitFor();
    await page.keyboard.press('Escape');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    await page.keyboard.press('2');
    await expect.poll(() => page.locator('section:has(#weak-spots) li.picked').innerText()).toContain('2');
    // a spot shows its layers; what is done to a row is done to that row
    await expect.poll(() => page.locator('[data-layer].marked').count()).toBeGreaterThan(1);
    await expect.poll(() => page.locator('[data-layer].picked').count()).toBe(0);
    await focusOn(page, '[data-row="1"]');
    await page.keyboard.press('Delete');
    await expect.poll(() => page.locator('[data-layer]').count()).toBe(5);
    await page.keyboard.press('Control+z');
    await expect.poll(() => page.locator('[data-layer]').count()).toBe(6);
    await page.keyboard.press(']');
    await expect
      .poll(() => page.locator('[aria-label="section"] [aria-pressed="true"]').count())
      .toBeLessThan(2);
  });
});

async function press(page: Page, words: string, key: string): Promise<void> {
  await tabTo(page, { words });
  await page.keyboard.press(key);
}

const focusOn = (page: Page, css: string): Promise<void> => tabTo(page, { css });

async function insert(page: Page, at: number, option: string): Promise<void> {
  await focusOn(page, `[data-insert="${at}"]`);
  await page.keyboard.press('Enter');
  await press(page, option, 'Enter');
}

async function openRow(page: Page, layer: number): Promise<void> {
  await focusOn(page, `[data-row="${layer}"]`);
  const isOpen = await page.locator(`[data-row="${layer}"]`).getAttribute('aria-expanded');
  if (isOpen !== 'true') await page.keyboard.press('Enter');
}

async function type(page: Page, path: string, text: string): Promise<void> {
  await focusOn(page, `[data-field="${path}"]`);
  await page.keyboard.press('Control+a');
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
}

const focused = (page: Page): Promise<string | null | undefined> =>
  page.evaluate(() => document.activeElement?.getAttribute('data-row'));
