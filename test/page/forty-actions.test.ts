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

/** As the caliper finds a common former of this size. */
const EE16 = { width: '9 mm', height: '2.1 mm', wall: '0.7 mm', flange: '0.75 mm' };
const TITLE = 'EE16 of an invented charger';
/** Milliseconds of the script, with all that it waits for: what a hand would have to wait beside its own time. */
const THREE_MINUTES = 180_000;

describe.skipIf(!hasBrowser())('forty actions', () => {
  it('should take an EE16 of two plies apart from nothing to a printed report in three minutes', async () => {
    const begun = Date.now();
    const { page, wrongs } = await openPage('#taking-apart');
    const hands = new Hands(page);
    await hands.press('begin with an empty one');
    await page.getByText('Transformer taken apart').first().waitFor();
    await hands.type('title', TITLE);
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
      ['margins.left.width', '1.5 mm'],
      ['margins.right.width', '1.5 mm'],
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
    await hands.type('former.chambers[0].width', EE16.width);
    await hands.type('former.height', EE16.height);
    await hands.type('former.wall', EE16.wall);
    await hands.type('former.flange', EE16.flange);
    hands.actions += 1;
    await page.locator('[data-field="unopened"]').uncheck();
    hands.actions += 1;
    await page.getByRole('link', { name: 'Report and drawing' }).click();
    await page.evaluate(() => {
      globalThis.print = () => (document.documentElement.dataset.printed = 'yes');
    });
    const report = page.getByRole('region', { name: 'Report' });
    await report.getByText(TITLE).first().waitFor();
    await report.getByText('Primary').first().waitFor();
    await hands.press('Print, or save as PDF');
    await page.locator('html[data-printed]').waitFor();
    expect(hands.actions).toBeLessThanOrEqual(40);
    expect(Date.now() - begun).toBeLessThan(THREE_MINUTES);
    await page.evaluate(() => (location.hash = 'sheet'));
    await expect.poll(() => verdictOf(page)).toMatch(/Falls short|Not shown/);
    await page.getByRole('heading', { level: 1, name: TITLE }).waitFor();
    expect(await page.locator('[data-row] .words b').allInnerTexts()).toEqual([
      'Outer wrap',
      'Output, 9 turns',
      'Tape',
      'Primary, 80 turns',
    ]);
    expect(wrongs).toEqual([]);
  });
});
