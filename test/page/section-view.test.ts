import type { Locator, Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { demos } from '#state/begin/demos.ts';
import { middle, openDemo, openPage, textsOf, verdictOf } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

const LEFT_OF_OUTPUT = 'layers[2].margins.left.width';

describe.skipIf(!hasBrowser())('section view', () => {
  const open = async (options = {}) => {
    const opened = await openPage('#sheet', options);
    await opened.page.locator('.stage canvas').first().waitFor();
    return opened;
  };

  it('should draw every demo build without an error', async () => {
    const { page, wrongs } = await openPage('#open');
    for (const { id, title } of demos) {
      await openDemo(page, title);
      await page.locator('.stage canvas').first().waitFor();
      await expect.poll(() => page.locator('[data-grip]').count(), { message: id }).toBeGreaterThan(5);
      expect(wrongs, id).toEqual([]);
    }
  });

  it('should paint as many pixels as the screen has', async () => {
    for (const deviceScaleFactor of [1, 2]) {
      const { page, wrongs } = await open({ deviceScaleFactor });
      const density = await page
        .locator('.stage canvas')
        .first()
        .evaluate((canvas: HTMLCanvasElement) => canvas.width / canvas.clientWidth);
      expect(density).toBeCloseTo(deviceScaleFactor, 1);
      expect(await colors(page)).toBeGreaterThan(50);
      expect(wrongs).toEqual([]);
    }
  });

  it('should judge while an edge is dragged past a winding, and put all back with Escape', async () => {
    const { page, wrongs } = await open();
    await openDemo(page, 'Charger of a cordless hedge trimmer');
    await page.locator('.stage canvas').first().waitFor();
    await expect.poll(() => verdictOf(page)).toContain('Meets');
    const barrier = (): Promise<string> => page.locator('article').first().innerText();
    const before = await barrier();
    const grip = gripOf(page, 'layers[3].inset.right');
    const [x, y] = await middle(grip);
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x - 100, y, { steps: 4 });
    await expect.poll(barrier).not.toBe(before);
    await page.mouse.move(x - 330, y, { steps: 8 });
    await expect.poll(() => verdictOf(page)).toContain('Falls short');
    await page.keyboard.press('Escape');
    await expect.poll(() => verdictOf(page)).toContain('Meets');
    await expect.poll(barrier).toBe(before);
    await page.mouse.move(x - 300, y);
    await page.mouse.up();
    await expect.poll(barrier).toBe(before);
    await expect.poll(() => undo(page).isDisabled()).toBe(true);
    expect(wrongs).toEqual([]);
  });

  it('should make one step of a whole drag, on the grid of 0.05 mm, finer with Alt', async () => {
    const { page, wrongs } = await open();
    const grip = gripOf(page, LEFT_OF_OUTPUT);
    const [x, y] = await middle(grip);
    await drag(page, [x, y], [x + 40, y]);
    const coarse = Number.parseFloat((await grip.getAttribute('aria-valuetext')) ?? '');
    expect(coarse).toBeGreaterThan(2);
    expect((coarse * 20) % 1).toBeCloseTo(0, 6);
    await page.keyboard.down('Alt');
    const from = await middle(grip);
    await drag(page, from, [from[0] + 1, from[1]]);
    await page.keyboard.up('Alt');
    const fine = Number.parseFloat((await grip.getAttribute('aria-valuetext')) ?? '');
    expect(fine - coarse).toBeGreaterThan(0);
    expect(fine - coarse).toBeLessThan(0.05);
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+z');
    await expect.poll(() => grip.getAttribute('aria-valuetext')).toBe('1.65 mm');
    await expect.poll(() => undo(page).isDisabled()).toBe(true);
    expect(wrongs).toEqual([]);
  });

  it('should move every edge by key, and take a figure typed at it', async () => {
    const { page, wrongs } = await open();
    const grip = gripOf(page, LEFT_OF_OUTPUT);
    await page.locator('.stage').focus();
    await page.keyboard.press('Tab');
    await walkTo(page, LEFT_OF_OUTPUT);
    await page.keyboard.press('ArrowRight');
    await expect.poll(() => grip.getAttribute('aria-valuetext')).toBe('1.7 mm');
    await page.keyboard.press('Shift+ArrowLeft');
    await expect.poll(() => grip.getAttribute('aria-valuetext')).toBe('1.69 mm');
    await page.keyboard.press('Enter');
    await page.keyboard.type('nonsense');
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('.stage input').getAttribute('aria-invalid')).toBe('true');
    await page.locator('.stage input').fill('.118"');
    await page.keyboard.press('Enter');
    await expect.poll(() => grip.getAttribute('aria-valuetext')).toBe('2.9972 mm');
    await expect.poll(() => focused(page)).toBe(LEFT_OF_OUTPUT);
    await page.keyboard.press('Control+z');
    await expect.poll(() => grip.getAttribute('aria-valuetext')).toBe('1.69 mm');
    expect(wrongs).toEqual([]);
  });

  it('should take the figure that a sum typed at a grip comes to', async () => {
    const { page, wrongs } = await open();
    const grip = gripOf(page, LEFT_OF_OUTPUT);
    await page.locator('.stage').focus();
    await page.keyboard.press('Tab');
    await walkTo(page, LEFT_OF_OUTPUT);
    await page.keyboard.press('Enter');
    await page.locator('.stage input').fill('2*0.8 mm + 0.05');
    await expect.poll(() => grip.getAttribute('aria-valuetext')).toBe('1.65 mm');
    await page.locator('.stage input').fill('2*1.2 mm + 0.05');
    await page.keyboard.press('Enter');
    await expect.poll(() => grip.getAttribute('aria-valuetext')).toBe('2.45 mm');
    expect(wrongs).toEqual([]);
  });

  it('should measure from a press to where it is let go, and change nothing', async () => {
    const { page, wrongs } = await open();
    const strip = page.locator('.strip');
    await page.locator('.stage').focus();
    await page.keyboard.press('m');
    await expect.poll(() => strip.innerText()).toContain('measuring');
    const [x, y] = await middle(gripOf(page, LEFT_OF_OUTPUT));
    // straight down from the middle of the left end of S, through the tape under it, into P's margin: both ends lie inside blocks
    await drag(page, [x - 10, y], [x - 10, y + 90]);
    await expect
      .poll(() => strip.getByRole('status').last().innerText())
      .toMatch(/^\d\.\d\d straight, through 3 plies, a margin; no way along surfaces$/);
    await expect.poll(() => undo(page).isDisabled()).toBe(true);
    await page.keyboard.press('m');
    await expect.poll(() => strip.innerText()).not.toContain('measuring');
    expect(wrongs).toEqual([]);
  });

  it('should zoom by key and wheel, about the pointer, and show all of it again', async () => {
    const { page } = await open();
    const stage = page.locator('.stage');
    const all = await middle(gripOf(page, LEFT_OF_OUTPUT));
    await stage.focus();
    await page.keyboard.press('+');
    await expect.poll(() => middle(gripOf(page, LEFT_OF_OUTPUT))).not.toEqual(all);
    await page.keyboard.press('0');
    await expect.poll(() => middle(gripOf(page, LEFT_OF_OUTPUT))).toEqual(all);
    await page.mouse.move(...all);
    await page.mouse.wheel(0, -300);
    await expect
      .poll(() => page.getByRole('button', { name: 'fit', exact: true }).getAttribute('aria-pressed'))
      .toBe('false');
    const [x] = await middle(gripOf(page, LEFT_OF_OUTPUT));
    expect(x).toBeCloseTo(all[0], 0);
  });

  it('should name both scales whenever they differ', async () => {
    const { page } = await open();
    const strip = page.locator('.strip');
    await expect.poll(() => strip.innerText()).toContain('same scale both ways');
    await strip.getByLabel('radial stretch').selectOption('4');
    await expect.poll(() => strip.innerText()).toContain('outward 4 times');
  });

  it('should go to the section of a spot that is pressed', async () => {
    const { page } = await open();
    await page
      .locator('.stage')
      .getByRole('button', { name: /weak spot 2, on section/ })
      .click();
    await expect.poll(() => page.locator('.strip b').innerText()).toBe('Section with a lead-out');
  });

  it('should tell the path piece by piece', async () => {
    const { page } = await open();
    const told = await textsOf(page.locator('.strip .says[role="status"]'));
    await page.getByRole('button', { name: 'read the path' }).click();
    await expect.poll(async () => (await told()).at(-1)).toBe('');
    const [first = '', ...next] = await told();
    expect(first).toContain('along the margin');
    expect(next.join(' ')).toContain('at the flange');
  });

  it('should wait for each press where motion is not wanted', async () => {
    const { page } = await open({ reducedMotion: 'reduce' });
    await page.getByRole('button', { name: 'read the path' }).click();
    await page.waitForTimeout(500);
    await expect
      .poll(() => page.locator('.strip .says[role="status"]').innerText())
      .toContain('along the margin');
    await page.getByRole('button', { name: 'read on' }).click();
    await expect
      .poll(() => page.locator('.strip .says[role="status"]').innerText())
      .toContain('at the flange');
  });

  it('should pick a layer on the drawing and carry it to another place', async () => {
    const { page } = await open();
    const [x, y] = await middle(gripOf(page, LEFT_OF_OUTPUT));
    const [, below] = await middle(gripOf(page, 'layers[0].margins.left.width'));
    await page.mouse.click(x + 60, y);
    await expect.poll(() => page.locator('li.picked').getAttribute('data-layer')).toBe('2');
    await drag(page, [x + 60, y], [x + 60, below + 30]);
    await expect.poll(() => page.locator('li.picked').getAttribute('data-layer')).toBe('0');
    await expect.poll(() => page.locator('[data-row="0"]').innerText()).toContain('Output');
    await page.keyboard.press('Control+z');
    await expect.poll(() => page.locator('[data-row="2"]').innerText()).toContain('Output');
  });

  it('should give a finger room on a narrow page', async () => {
    const { page, wrongs } = await open({
      viewport: { width: 390, height: 844 },
      hasTouch: true,
      isMobile: true,
    });
    const grip = gripOf(page, LEFT_OF_OUTPUT);
    await grip.scrollIntoViewIfNeeded();
    const [x, y] = await middle(grip);
    const touch = await page.context().newCDPSession(page);
    const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', at: number) =>
      touch.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: type === 'touchEnd' ? [] : [{ x: at, y: y + 15 }],
      });
    await send('touchStart', x + 12);
    for (const at of [20, 32, 44, 52]) await send('touchMove', x + at);
    await send('touchEnd', 0);
    const value = Number.parseFloat((await grip.getAttribute('aria-valuetext')) ?? '');
    expect(value).toBeGreaterThan(1.9);
    expect(wrongs).toEqual([]);
  });
});

const gripOf = (page: Page, id: string): Locator => page.locator(`[data-grip="${id}"]`);
const undo = (page: Page): Locator => page.getByRole('button', { name: /Undo/ });

async function drag(page: Page, from: [number, number], to: [number, number]): Promise<void> {
  await page.mouse.move(...from);
  await page.mouse.down();
  await page.mouse.move((from[0] + to[0]) / 2, (from[1] + to[1]) / 2);
  await page.mouse.move(...to, { steps: 4 });
  await page.mouse.up();
}

const focused = (page: Page): Promise<string | undefined> =>
  page.evaluate(() => (document.activeElement as HTMLElement | null)?.dataset.grip);

async function walkTo(page: Page, id: string): Promise<void> {
  for (let i = 0; i < 30 && (await focused(page)) !== id; i++) await page.keyboard.press('PageDown');
  await expect.poll(() => focused(page)).toBe(id);
}

/** How many colours the drawing has: a blank canvas has one. */
const colors = (page: Page): Promise<number> =>
  page
    .locator('.stage canvas')
    .first()
    .evaluate((canvas: HTMLCanvasElement) => {
      const pixels = canvas.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height).data ?? [];
      const found = new Set<number>();
      for (let i = 0; i < pixels.length; i += 4)
        found.add(((pixels[i] ?? 0) << 16) | ((pixels[i + 1] ?? 0) << 8) | (pixels[i + 2] ?? 0));
      return found.size;
    });
