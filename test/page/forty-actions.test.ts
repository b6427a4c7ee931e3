import type { Locator, Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { openPage, verdictOf } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

/** Every click, choice and filled field is one action of the hand. */
class Hands {
  actions = 0;
  readonly #page: Page;

  constructor(page: Page) {
    this.#page = page;
  }

  async press(name: string, within: Page | Locator = this.#page): Promise<void> {
    this.actions += 1;
    await within.getByRole('button', { name, exact: true }).click();
  }

  async type(path: string, text: string): Promise<void> {
    this.actions += 1;
    const field = this.#page.locator(`[data-field="${path}"]`);
    await field.fill(text);
    await field.press('Enter');
  }

  async choose(path: string, value: string): Promise<void> {
    this.actions += 1;
    await this.#page.locator(`[data-field="${path}"]`).selectOption(value);
  }
}

describe.skipIf(!hasBrowser())('forty actions', () => {
  it('should take a small build of two plies apart from nothing to a printed report', async () => {
    const { page, wrongs } = await openPage('#taking-apart');
    const hands = new Hands(page);
    await hands.press('begin with an empty one');
    await page.getByText('Transformer taken apart').first().waitFor();
    // the label, what lies outside, what bridges
    for (let step = 0; step < 3; step++) await hands.press('Next step');
    await hands.choose('core.bond', 'floating');
    await hands.type('core.outerGap', '0.4 mm');
    await hands.press('Next step');
    const came = page.getByRole('group', { name: 'what came off' });
    /** What came off is the innermost so far. */
    const takeOff = async (
      what: string,
      ...fields: readonly (readonly [string, string])[]
    ): Promise<void> => {
      await hands.press(what, came);
      for (const [field, text] of fields)
        await hands.type(field.startsWith('windings') ? field : `layers[0].${field}`, text);
      await hands.press('Next step');
    };
    await takeOff('tape from flange to flange', ['plies', '2'], ['plyThickness', '0.06 mm']);
    const wound = [
      ['margins.left.width', '3 mm'],
      ['margins.right.width', '3 mm'],
    ] as const;
    await takeOff('a winding of Output', ['turns', '9'], ['windings[0].wire.conductor', '0.5 mm'], ...wound);
    await takeOff('tape from flange to flange', ['plies', '2'], ['plyThickness', '0.06 mm']);
    await takeOff(
      'a winding of Primary',
      ['turns', '80'],
      ['windings[1].wire.conductor', '0.2 mm'],
      ...wound,
    );
    await hands.press('Next step');
    await hands.type('former.chambers[0].width', '8.6 mm');
    await hands.type('former.height', '3.1 mm');
    await hands.type('former.wall', '0.8 mm');
    await hands.type('former.flange', '0.8 mm');
    hands.actions += 1;
    await page.locator('[data-field="unopened"]').uncheck();
    hands.actions += 1;
    await page.getByRole('link', { name: 'Report and drawing' }).click();
    await page.evaluate(() => {
      globalThis.print = () => (document.documentElement.dataset.printed = 'yes');
    });
    const report = page.getByRole('region', { name: 'Report' });
    await report.getByText('Primary').first().waitFor();
    await hands.press('Print, or save as PDF');
    await page.locator('html[data-printed]').waitFor();
    expect(hands.actions).toBeLessThanOrEqual(40);
    await page.evaluate(() => (location.hash = 'sheet'));
    await expect.poll(() => verdictOf(page)).toMatch(/Falls short|Not shown/);
    expect(await page.locator('[data-row] .words b').allInnerTexts()).toEqual([
      'Outer wrap',
      'Output, 9 turns',
      'Tape',
      'Primary, 80 turns',
    ]);
    expect(wrongs).toEqual([]);
  });
});
