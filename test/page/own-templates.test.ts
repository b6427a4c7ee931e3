// What somebody keeps for other builds beside a layer: a former, the material of a tape, a wire. Kept in this browser over a
// reload, and in the file, which brings it to a browser that has never seen it.

import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { axeFaults, openDemo, openPage } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

interface Kept {
  readonly kind: 'former' | 'material' | 'wire';
  readonly name: string;
  /** Opens the row that holds it. */
  readonly open: (page: Page) => Promise<void>;
  /** A field that goes with it, and what stands there when it is kept. */
  readonly field: string;
  readonly text: string;
}

const row = async (page: Page, part: Locator, field: string): Promise<void> => {
  if (!(await page.locator(`[data-field="${field}"]`).isVisible())) await part.click();
};
const FORMER = 'former.chambers[0].width';
const PLY = 'layers[1].plyThickness';
const WIRE = 'windings[0].wire.conductor';

const KEPT: readonly Kept[] = [
  {
    kind: 'former',
    name: 'short bobbin',
    open: (page) => row(page, page.getByRole('button', { name: /former/i }).first(), FORMER),
    field: FORMER,
    text: '11.7 mm',
  },
  {
    kind: 'material',
    name: 'thin film',
    open: (page) => row(page, page.locator('[data-row="1"]'), PLY),
    field: PLY,
    text: '0.033 mm',
  },
  {
    kind: 'wire',
    name: 'fine wire',
    open: (page) => row(page, page.locator('[data-row="0"]'), WIRE),
    field: WIRE,
    text: '0.19 mm',
  },
];

const OTHER = 'Supply of an aquarium light';

describe.skipIf(!hasBrowser())('templates of one’s own', () => {
  it('should be kept over a reload for another build, and in the file for another browser', async () => {
    const { page, wrongs } = await openPage('#sheet');
    const field = (path: string): Locator => page.locator(`[data-field="${path}"]`);
    const held = (path: string) => expect.poll(() => field(path).inputValue());
    /** Each goes into its place by a press, and out by undo. */
    const useEach = async (): Promise<void> => {
      await openDemo(page, OTHER);
      for (const { name, open, field: path, text } of KEPT) {
        await open(page);
        await held(path).not.toBe(text);
        await page.getByRole('button', { name: `use “${name}”` }).click();
        await held(path).toBe(text);
        await page.getByRole('button', { name: 'Undo' }).click();
        await held(path).not.toBe(text);
      }
    };
    for (const { kind, name, open, field: path, text } of KEPT) {
      await open(page);
      await field(path).fill(text);
      await field(path).press('Enter');
      await held(path).toBe(text);
      await page.getByRole('button', { name: `keep this ${kind} for other builds` }).click();
      await page.getByLabel(`name of the ${kind}`).fill(name);
      expect(await axeFaults(page)).toEqual([]);
      await page.keyboard.press('Enter');
      await page.getByRole('button', { name: `use “${name}”` }).waitFor();
    }
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save', exact: true }).click(),
    ]);
    const text = readFileSync(await download.path(), 'utf8');

    await page.reload();
    await useEach();

    // a browser that has never seen them
    await page.evaluate(() => localStorage.clear());
    await page.reload();
    await page
      .getByRole('button', { name: 'Go on with this build' })
      .or(page.locator('#layers'))
      .first()
      .waitFor();
    await page.evaluate(() => (location.hash = 'sheet'));
    await KEPT[0]!.open(page);
    expect(await page.getByRole('button', { name: `use “${KEPT[0]!.name}”` }).count()).toBe(0);
    await page.getByRole('button', { name: 'Open', exact: true }).click();
    await page.locator('textarea').fill(text.replace('irrigation', 'misting'));
    await page.getByRole('button', { name: 'Open the text' }).click();
    await page.getByRole('heading', { level: 1, name: 'misting' }).waitFor();
    for (const { name, open, kind } of KEPT) {
      await open(page);
      await page.getByRole('button', { name: `use “${name}”` }).waitFor();
      await page.getByRole('button', { name: `forget “${name}”` }).click();
      await page.getByRole('button', { name: `use “${name}”` }).waitFor({ state: 'detached' });
      expect(await page.getByRole('button', { name: `keep this ${kind} for other builds` }).count()).toBe(1);
    }
    expect(wrongs).toEqual([]);
  });
});
