// Every page at 200 %, on a narrow window and in forced colours: nothing runs out of the window, no words lie over others, and
// axe finds no fault. One page of the browser walks through all of them.

import type { Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { PAGES } from '#state/app/page-list.ts';
import { axeFaults, openPage } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

/** Words whose boxes cross by more than a hair, within what is seen of the page; one line a pair. */
const crossings = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const HAIR = 2;
    const boxes: { words: string; at: Element; box: DOMRect }[] = [];
    const cutOff = (box: DOMRect, at: Element): DOMRect => {
      let { left, right, top, bottom } = box;
      for (let each: Element | null = at; each !== null; each = each.parentElement) {
        if (getComputedStyle(each).overflow === 'visible') continue;
        const frame = each.getBoundingClientRect();
        [left, right] = [Math.max(left, frame.left), Math.min(right, frame.right)];
        [top, bottom] = [Math.max(top, frame.top), Math.min(bottom, frame.bottom)];
      }
      return new DOMRect(left, top, Math.max(0, right - left), Math.max(0, bottom - top));
    };
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
      const at = walker.currentNode.parentElement;
      const words = walker.currentNode.textContent?.trim() ?? '';
      if (at === null || words === '' || at.closest('svg, .hidden-text, [hidden], option, datalist') !== null)
        continue;
      if (!at.checkVisibility({ opacityProperty: true, visibilityProperty: true })) continue;
      const range = document.createRange();
      range.selectNodeContents(walker.currentNode);
      for (const whole of range.getClientRects()) {
        const box = cutOff(whole, at);
        if (box.width > 2 && box.height > 2) boxes.push({ words, at, box });
      }
    }
    const isOver = (a: DOMRect, b: DOMRect): boolean =>
      Math.min(a.right, b.right) - Math.max(a.left, b.left) > HAIR &&
      Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > HAIR + 3;
    // what is scrolled out of its own frame, or lies under a bar with a ground of its own, is not seen
    const isSeen = ({ at, box }: (typeof boxes)[number]): boolean => {
      const stack = document.elementsFromPoint((box.left + box.right) / 2, (box.top + box.bottom) / 2);
      const own = stack.findIndex((each) => at.contains(each) || each === at);
      if (own < 0) return false;
      return stack
        .slice(0, own)
        .every((each) => each.contains(at) || getComputedStyle(each).backgroundColor === 'rgba(0, 0, 0, 0)');
    };
    const seen = boxes.filter(isSeen);
    return seen.flatMap((a, i) =>
      seen
        .slice(i + 1)
        .filter((b) => a.at !== b.at && !a.at.contains(b.at) && !b.at.contains(a.at) && isOver(a.box, b.box))
        .map((b) => `${a.words} | ${b.words}`),
    );
  });

const tooWide = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - innerWidth);

/** What tells the pages that do not have their title as a heading. */
const SHOWN: Readonly<Record<string, string>> = { start: '.opening', sheet: '#layers' };

/** What is wrong with each page, by its name; those without a fault are left out. */
async function faultsOfPages(page: Page, isAxed: boolean): Promise<Readonly<Record<string, unknown>>> {
  const faults: Record<string, unknown> = {};
  for (const { name, title } of PAGES) {
    await page.evaluate((to) => (location.hash = to), name);
    await page
      .locator(SHOWN[name] ?? `main h1:text-is("${title}")`)
      .first()
      .waitFor();
    // what is still being laid out may lie over another for a moment
    let crossed = await crossings(page);
    for (let look = 0; look < 5 && crossed.length > 0; look++) {
      await page.waitForTimeout(300);
      crossed = await crossings(page);
    }
    const wide = await tooWide(page);
    const found = isAxed ? await axeFaults(page) : [];
    if (wide > 0 || found.length + crossed.length > 0) faults[name] = { wide, found, crossed };
  }
  return faults;
}

describe.skipIf(!hasBrowser())('every page', () => {
  it('should be found out where words lie over others', async () => {
    const { page } = await openPage('#words');
    await page.evaluate(() => {
      for (const words of ['one over', 'the other']) {
        const line = document.body.appendChild(document.createElement('p'));
        line.textContent = words;
        Object.assign(line.style, { position: 'fixed', left: '40px', top: '200px', zIndex: '99' });
      }
    });
    expect(await crossings(page)).toContain('one over | the other');
  });

  const looks = [
    ['at 200 %', { viewport: { width: 720, height: 450 }, deviceScaleFactor: 2 }, true],
    ['390 pixels wide', { viewport: { width: 390, height: 844 } }, false],
    ['in forced colours', { forcedColors: 'active' }, false],
  ] as const;
  it.each(looks)('should be whole %s', { timeout: 180_000 }, async (_, options, isAxed) => {
    const { page, wrongs } = await openPage('#start', options);
    expect(await faultsOfPages(page, isAxed)).toEqual({});
    expect(wrongs).toEqual([]);
  });
});
