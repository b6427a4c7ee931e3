import { describe, expect, it } from 'vitest';
import { boxesOf, overlapsOf } from './boxes.ts';
import { openDemo, openPage } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

const DEMOS = ['Wall supply of a greenhouse irrigation timer', 'Charger of a flea-market cordless drill'];

describe.skipIf(!hasBrowser())('words, flags and grips', () => {
  it('should see an overlap where there is one', () => {
    const box = { what: 'a', left: 0, top: 0, right: 10, bottom: 10 };
    expect(overlapsOf([box, { ...box, what: 'b', left: 8 }])).toEqual(['a | b']);
    expect(overlapsOf([box, { ...box, what: 'b', left: 10 }])).toEqual([]);
  });

  it.each([
    ['360 pixels', { viewport: { width: 360, height: 780 } }],
    ['820 pixels', { viewport: { width: 820, height: 1180 } }],
    ['1440 pixels', { viewport: { width: 1440, height: 900 } }],
    ['2560 pixels', { viewport: { width: 2560, height: 1440 } }],
    ['200 %', { viewport: { width: 720, height: 450 }, deviceScaleFactor: 2 }],
  ])('should not lie over one another at %s', async (_, options) => {
    const { page } = await openPage('#open', options);
    for (const title of DEMOS) {
      await openDemo(page, title);
      await page.locator('.stage canvas').first().waitFor();
      await expect.poll(async () => (await boxesOf(page)).length, { timeout: 20_000 }).toBeGreaterThan(15);
      await expect
        .poll(async () => overlapsOf(await boxesOf(page)), { message: title, timeout: 20_000 })
        .toEqual([]);
    }
  });
});
