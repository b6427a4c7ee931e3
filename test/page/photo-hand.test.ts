// What a hand does with a photograph beside measuring: counting turns, sending one figure to several fields, and looking at
// picture and section over each other.

import type { Locator, Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { type DrawnPicture, openPicture, pickAt, type Point } from './drawn-picture.ts';
import { openPage } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

const PICTURE: DrawnPicture = {
  type: 'image/png',
  width: 1500,
  height: 1000,
  turned: 0,
  blur: 0,
  noise: 0,
  bars: [{ x: -500, y: -300, width: 1000, height: 600 }],
};

/** A photograph of which 1000 px are 10 mm, and 4 mm measured on it. */
async function openMeasured(page: Page): Promise<void> {
  await openPicture(page, PICTURE);
  await pickAt(page, { x: 250, y: 100 });
  await pickAt(page, { x: 1250, y: 100 });
  await page.getByLabel('known length').fill('10 mm');
  await page.getByRole('button', { name: 'Set the scale' }).click();
  await pickAt(page, { x: 300, y: 500 });
  await pickAt(page, { x: 700, y: 500 });
  await page.locator('.side li').first().waitFor();
}

/** A window of 1000 px with a block of turns in it, 200 px from its left end. */
const WINDOW: DrawnPicture = {
  ...PICTURE,
  bars: [
    { x: -500, y: -300, width: 1000, height: 30 },
    { x: -300, y: -100, width: 560, height: 80 },
  ],
};
const WOUND_FROM = { x: 450, y: 440 };
const CORNER = { x: 0, y: 0 };

async function scaleBy(page: Page, length: string): Promise<void> {
  await pickAt(page, { x: 250, y: 215 });
  await pickAt(page, { x: 1250, y: 215 });
  await page.getByLabel('known length').fill(length);
  await page.getByRole('button', { name: 'Set the scale' }).click();
}

async function laidUnder(page: Page): Promise<Locator> {
  const over = page.getByRole('group', { name: 'photograph and section' });
  await over.locator('.wiped img').waitFor();
  await over.scrollIntoViewIfNeeded();
  return over;
}

/** Where a pixel of the photograph that lies under the section comes to lie on its stage. */
const onStage = (page: Page, point: Point): Promise<[number, number]> =>
  page
    .getByRole('group', { name: 'photograph and section' })
    .locator('.wiped img')
    .evaluate((node, { x, y }) => {
      const at = new DOMMatrix(getComputedStyle(node).transform).transformPoint(new DOMPoint(x, y));
      return [at.x, at.y] as [number, number];
    }, point);

/** Left margins of the three windings, as the sheet shows them. */
async function margins(page: Page): Promise<readonly string[]> {
  await page.evaluate(() => (location.hash = '#sheet'));
  const found: string[] = [];
  for (const layer of [0, 2, 4]) {
    const field = page.locator(`[data-field="layers[${layer}].margins.left.width"]`);
    if (!(await field.isVisible())) await page.locator(`[data-row="${layer}"]`).click();
    found.push(await field.inputValue());
  }
  return found;
}

describe.skipIf(!hasBrowser())('a photograph in the hand', () => {
  it('should send a figure to its field alone, whatever other fields read', async () => {
    const { page, wrongs } = await openPage('#photographs');
    await openMeasured(page);
    const row = page.locator('.side li').first();
    await row.getByRole('combobox').selectOption('layers[2].margins.left.width');
    // the margin of layer 5 reads 4 mm, which is what was measured
    await row.getByText('as near as this tells').waitFor();
    expect(await row.getByRole('checkbox', { checked: true }).count()).toBe(0);
    await row.getByRole('button', { name: 'send to this field' }).click();
    const [inner, middle, outer] = await margins(page);
    expect([inner, outer]).toEqual(['3 mm', '4 mm']);
    expect(middle).toMatch(/^(4|3\.99|4\.0\d*)\b.*± /);
    expect(wrongs).toEqual([]);
  });

  it('should send it to those that are ticked as one step', async () => {
    const { page, wrongs } = await openPage('#photographs');
    await openMeasured(page);
    const row = page.locator('.side li').first();
    await row.getByRole('combobox').selectOption('layers[2].margins.left.width');
    await row.getByLabel(/left margin, layer 1/).check();
    await row.getByRole('button', { name: 'send to 2 fields' }).click();
    const [inner, middle] = await margins(page);
    expect(inner).toBe(middle);
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Undo' }).click();
    expect((await margins(page)).slice(0, 2)).toEqual(['3 mm', '1.65 mm']);
    expect(wrongs).toEqual([]);
  });

  it('should make marks the turns of a layer, a second press taking one away', async () => {
    const { page, wrongs } = await openPage('#photographs');
    await openMeasured(page);
    await page.getByRole('button', { name: 'Count turns' }).click();
    for (const x of [300, 400, 500, 600, 700, 800]) await pickAt(page, { x, y: 650 });
    await pickAt(page, { x: 500, y: 650 });
    await page.getByLabel('these are the turns of').selectOption({ label: 'A, layer 5' });
    await page.getByRole('button', { name: 'Send 5 turns' }).click();
    await page.evaluate(() => (location.hash = '#sheet'));
    const turns = page.locator('[data-field="layers[4].turns"]');
    if (!(await turns.isVisible())) await page.locator('[data-row="4"]').click();
    await expect.poll(() => turns.inputValue()).toBe('5');
    expect(wrongs).toEqual([]);
  });

  it('should ring the next likely turn and add the marks up by rows', async () => {
    const { page, wrongs } = await openPage('#photographs');
    await openMeasured(page);
    await page.getByRole('button', { name: 'Count turns' }).click();
    const ring = page.locator('svg[role=application] .next');
    await pickAt(page, { x: 400, y: 600 });
    expect(await ring.count()).toBe(0);
    for (const x of [500, 600]) await pickAt(page, { x, y: 600 });
    await expect.poll(() => ring.getAttribute('transform')).toContain('translate(700 600)');
    for (const x of [400, 500]) await pickAt(page, { x, y: 700 });
    await page.getByText('By rows: 3, 2.').waitFor();
    await page.getByRole('button', { name: 'Send 5 turns' }).waitFor();
    expect(wrongs).toEqual([]);
  });

  it('should lie under the section as it is laid: fainter, shifted, turned and mirrored', async () => {
    const { page, wrongs } = await openPage('#photographs');
    await openMeasured(page);
    const over = await laidUnder(page);
    const image = over.locator('.wiped img');
    const figures = page.getByRole('region', { name: 'Under the section' });
    const before = await onStage(page, CORNER);
    await figures.getByLabel('picture').fill('0.25');
    expect(await image.evaluate((node) => getComputedStyle(node).opacity)).toBe('0.25');
    const right = figures.getByLabel('shift right, mm');
    await right.fill(String(Number(await right.inputValue()) + 1));
    const up = figures.getByLabel('shift up, mm');
    await up.fill(String(Number(await up.inputValue()) + 1));
    const moved = await onStage(page, CORNER);
    // one millimetre is as many pixels to the right as upward
    expect(moved[0] - before[0]).toBeGreaterThan(20);
    expect(before[1] - moved[1]).toBeCloseTo(moved[0] - before[0], 0);
    await figures.getByLabel('turn, °').fill('90');
    const [[ax, ay], [bx, by]] = [await onStage(page, CORNER), await onStage(page, { x: 100, y: 0 })];
    expect(bx - ax).toBeCloseTo(0, 1);
    expect(by - ay).toBeGreaterThan(20);
    await figures.getByLabel('turn, °').fill('0');
    await figures.getByLabel('mirrored').check();
    const [[cx], [dx]] = [await onStage(page, CORNER), await onStage(page, { x: 100, y: 0 })];
    expect(dx - cx).toBeCloseTo(-(by - ay), 1);
    await figures.getByRole('button', { name: 'lay it on the flanges' }).click();
    await expect.poll(() => onStage(page, CORNER)).toEqual(before);
    expect(wrongs).toEqual([]);
  });

  it('should measure an edge that is dragged onto it, with what the picture leaves uncertain, as one step', async () => {
    const { page, wrongs } = await openPage('#photographs');
    await openPicture(page, WINDOW);
    await scaleBy(page, '12 mm');
    const over = await laidUnder(page);
    const grip = (await over.getByRole('slider', { name: /left margin of layer 3/ }).boundingBox())!;
    const y = grip.y + grip.height / 2;
    const { x: left } = (await over.locator('.stage').boundingBox())!;
    const edge = left + (await onStage(page, WOUND_FROM))[0];
    await page.mouse.move(grip.x + grip.width / 2, y);
    await page.mouse.down();
    await page.mouse.move(edge - 8, y, { steps: 3 });
    await page.mouse.move(edge, y);
    await page.mouse.up();
    const row = page.locator('.side li').filter({ hasText: 'stands behind left margin, layer 3' });
    await row.waitFor();
    await page.getByRole('heading', { name: 'How far to trust measure-1' }).waitFor();
    const [value = NaN, plusMinus = NaN] = (await row.locator('.figure b').innerText())
      .split('±')
      .map((part) => Number.parseFloat(part));
    // 200 px of 1000 that are 12 mm
    expect(Math.abs(value - 2.4)).toBeLessThanOrEqual(plusMinus);
    expect(plusMinus).toBeLessThan(0.15);
    expect((await margins(page))[1]).toMatch(/^2\.\d+ mm.*± /);
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Undo' }).click();
    expect((await margins(page))[1]).toBe('1.65 mm');
    await page.evaluate(() => (location.hash = '#photographs'));
    await page.getByText('Nothing yet.').waitFor();
    expect(wrongs).toEqual([]);
  });

  it('should offer the fields first near which it was measured', async () => {
    const { page, wrongs } = await openPage('#photographs');
    await openPicture(page, WINDOW);
    await scaleBy(page, '12 mm');
    await laidUnder(page);
    // the wound block of the picture onto the third layer, which begins 1.06 mm above the tube
    const region = page.getByRole('region', { name: 'Under the section' });
    await region.getByLabel('shift up, mm').fill('6.9');
    await page.locator('svg[role=application]').scrollIntoViewIfNeeded();
    await page.getByRole('button', { name: 'Distance', exact: true }).click();
    await pickAt(page, { x: 250, y: 440 });
    await pickAt(page, WOUND_FROM);
    const offered = page.locator('.side li').first().getByRole('combobox');
    expect(await offered.locator('optgroup').first().getAttribute('label')).toBe('near what was measured');
    expect(await offered.inputValue()).toBe('layers[2].margins.left.width');
    expect(await offered.locator('optgroup').first().locator('option').allInnerTexts()).not.toContain(
      'height of former',
    );
    expect(wrongs).toEqual([]);
  });

  it('should belong to the step that it was taken at, and be found there', async () => {
    const { page, wrongs } = await openPage('#photographs');
    await openMeasured(page);
    const step = page.getByLabel('taken at the step');
    expect(await step.inputValue()).toBe('');
    await step.selectOption({ label: '4. core' });
    await page.evaluate(() => (location.hash = '#taking-apart'));
    await page.getByRole('button', { name: /Core off/ }).click();
    await page.locator('.apart > ol > li.open img').first().waitFor();
    await page.getByRole('button', { name: /Parts that bridge/ }).click();
    await page.getByText('Before you touch it').waitFor();
    expect(await page.locator('.apart > ol > li.open img').count()).toBe(0);
    expect(wrongs).toEqual([]);
  });

  it('should lie under the section, be wiped away and magnified', async () => {
    const { page, wrongs } = await openPage('#photographs');
    await openMeasured(page);
    const over = page.getByRole('group', { name: 'photograph and section' });
    await over.scrollIntoViewIfNeeded();
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    const { x, y, width, height } = (await over.locator('.stage').boundingBox())!;
    await page.mouse.move(x + width / 2, y + height / 2);
    const lens = over.locator('span', { hasText: /^× \d/ });
    await lens.waitFor();
    await page.keyboard.press('z');
    await lens.waitFor({ state: 'detached' });
    const shown = (): Promise<string> => over.locator('.wiped').evaluate((part) => part.style.clipPath);
    expect(await shown()).toBe('inset(0px 0% 0px 0px)');
    await page.keyboard.press('w');
    await expect.poll(shown).toContain('50%');
    await page.keyboard.down('x');
    await expect.poll(shown).toBe('none');
    await page.keyboard.up('x');
    await expect.poll(shown).toContain('50%');
    expect(wrongs).toEqual([]);
  });
});
