// The first ten minutes, done as they are written: what is a label is pressed, what is typed is typed, and what one is said to
// see must come.

import type { Locator, Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { minutes } from '#words/minutes/minutes.ts';
import { partsOf, type MinutePart } from '#words/minutes/parts-of.ts';
import { axeFaults, openPage } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

const LONG = { timeout: 60_000 };
const COUNTS = ['once', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight'];

/** `eight times` in the words that follow; once where they do not say. */
function times(after: MinutePart | undefined): number {
  const [, count] = /^ (\w+) times/.exec(after?.text ?? '') ?? [];
  return count === undefined ? 1 : COUNTS.indexOf(count) + 1;
}

/** By name, whatever kind of thing can be pressed under it. */
function pressed(page: Page, name: string): Locator {
  const words = name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  const begins = new RegExp(`^${words}\\b|^${words}$`);
  const kinds = (['link', 'button', 'radio'] as const).map((role) => page.getByRole(role, { name: begins }));
  return kinds.reduce((all, kind) => all.or(kind)).first();
}

async function doIt(page: Page, says: string): Promise<void> {
  const parts = partsOf(says);
  for (const [k, { kind, text }] of parts.entries()) {
    const [before, after, next] = [parts[k - 1], parts[k + 1], parts[k + 2]];
    if (kind === 'label' && / the grip $/.test(before?.text ?? ''))
      await page.getByRole('slider', { name: text, exact: true }).focus(LONG);
    else if (kind === 'label' && before?.text !== ' into ')
      for (let k = times(after); k > 0; k -= 1) await pressed(page, text).click(LONG);
    else if (kind === 'typed' && after?.text === ' into ') {
      const field = page.getByLabel(next!.text, { exact: true }).first();
      await field.fill(text, LONG);
      await field.press('Enter');
    } else if (kind === 'typed') for (let k = times(after); k > 0; k -= 1) await page.keyboard.press(text);
  }
}

describe.skipIf(!hasBrowser())('the first ten minutes', () => {
  for (const { id, steps } of minutes)
    it(`should be what happens when the ${id} does what they say`, async () => {
      const { page, wrongs } = await openPage();
      for (const { says, sees } of steps) {
        await doIt(page, says);
        await page
          .getByText(sees, { exact: false })
          .locator('visible=true')
          .first()
          .waitFor(LONG)
          .catch((error: unknown) => {
            throw new Error(`${says}: no “${sees}”`, { cause: error });
          });
      }
      expect(wrongs).toEqual([]);
    }, 300_000);

  it('should be reached from the first page and read by everyone', async () => {
    const { page } = await openPage();
    await page.getByRole('button', { name: 'first ten minutes' }).click();
    await page.getByRole('heading', { level: 1, name: 'First ten minutes' }).waitFor(LONG);
    expect(await page.getByRole('listitem').count()).toBeGreaterThan(12);
    expect(await axeFaults(page)).toEqual([]);
  });
});
