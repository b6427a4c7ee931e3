// Learning on the page, by keys alone: a lesson said, seen, changed and done; words; exercises answered and marked.

import type { Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { axeFaults, openPage } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

const LONG = { timeout: 60_000 };

/** Goes on by the tab key until this is reached; throws where it never is. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let presses = 0; presses < 120; presses += 1) {
    await page.keyboard.press('Tab');
    const reached = await page.evaluate(() => {
      const element = document.activeElement;
      const label =
        element instanceof HTMLInputElement
          ? [...(element.labels ?? [])].map((each) => each.innerText).join()
          : '';
      return `${element?.getAttribute('aria-label') ?? ''} ${label} ${(element as HTMLElement | null)?.innerText ?? ''}`;
    });
    if (name.test(reached)) return;
  }
  throw new Error(`the tab key never comes to ${name}`);
}

describe.skipIf(!hasBrowser())('learning', () => {
  it('should go through a lesson by keys alone, drawing the way included', async () => {
    const { page, wrongs } = await openPage('#learn/margin');
    await page.getByRole('button', { name: 'take the pen' }).waitFor(LONG);
    expect(await page.locator('main').innerText()).not.toContain('4.18');
    await tabTo(page, /take the pen/);
    await page.keyboard.press('Enter');
    await page.getByRole('application').focus();
    for (const key of ['ArrowUp', 'ArrowUp', 'ArrowUp']) await page.keyboard.press(key);
    await page.getByText(/3 corners, .* so far/).waitFor();
    await page.keyboard.press('Enter');
    await tabTo(page, /the length/);
    await page.keyboard.type('2.18');
    await tabTo(page, /reinforced/);
    await page.keyboard.press('Space');
    await tabTo(page, /See the solver/);
    await page.keyboard.press('Enter');
    await page.getByText('yours leaves out', { exact: false }).waitFor(LONG);
    expect(await axeFaults(page)).toEqual([]);
    await tabTo(page, /margin on both sides/);
    await page.keyboard.press('Control+A');
    await page.keyboard.type('2.4 mm');
    await page.keyboard.press('Enter');
    await page.getByText(/^Not yet\./).waitFor(LONG);
    await page.keyboard.press('Control+A');
    await page.keyboard.type('2.45 mm');
    await page.keyboard.press('Enter');
    await page.getByText('Done.', { exact: true }).waitFor(LONG);
    await page.getByText('1 of 23 done.').waitFor();
    expect(wrongs).toEqual([]);
  });

  it('should tell the same to those who cannot see it', async () => {
    const { page } = await openPage('#learn/enamel');
    await page.getByRole('button', { name: 'I don’t know' }).click(LONG);
    await page.getByRole('table').first().waitFor(LONG);
    const tree = await page.locator('main').ariaSnapshot();
    expect(tree).toContain('steps of the lesson');
    expect(tree).toMatch(/row "grade not said functional/);
    expect(tree).toContain('button "one ply of tape between the windings"');
    expect(tree).toContain('heading "Learnt"');
  });

  it('should take a hint, show the stored solution, and take a step back', async () => {
    const { page, wrongs } = await openPage('#learn/grades');
    await page.getByRole('button', { name: 'I don’t know' }).click(LONG);
    await page.getByRole('button', { name: 'a hint' }).click(LONG);
    await page.getByRole('button', { name: 'a hint' }).click();
    await page.getByRole('button', { name: 'show the stored solution' }).click();
    await page.getByText('Done.', { exact: true }).waitFor(LONG);
    await page.getByRole('button', { name: 'a step back' }).click();
    await page.getByText('Done.', { exact: true }).waitFor({ state: 'detached' });
    expect(wrongs).toEqual([]);
  });

  it('should find a word by a key and lead from word to word', async () => {
    const { page, wrongs } = await openPage('#words/margin');
    await page.locator('article .picture svg').waitFor(LONG);
    await page.keyboard.press('/');
    await page.keyboard.type('sleve');
    await page.getByText(/spelled alike: sleeve/).waitFor();
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 2, name: 'sleeve' }).waitFor();
    await page.locator('article .picture svg').waitFor(LONG);
    expect(await axeFaults(page)).toEqual([]);
    expect(wrongs).toEqual([]);
  });

  it('should open an exercise by its link and mark what was handed in by another', async () => {
    const { page, wrongs } = await openPage('#learn/exercise/margins/4182');
    await page.getByLabel('your name').fill('seat 7', LONG);
    const answers = page.locator('ol input');
    await answers.nth(0).fill('7.0');
    await answers.nth(1).fill('2,08');
    await page.getByRole('button', { name: 'A link to hand in' }).click();
    const link = await page.getByLabel('whoever opens').inputValue();
    await page.goto(link);
    await page.getByRole('heading', { name: 'seat 7: 1 of 10' }).waitFor(LONG);
    await page.getByText('2,08: only one margin counted').waitFor();
    expect(wrongs).toEqual([]);
  });
});
