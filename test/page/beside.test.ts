import { readFileSync } from 'node:fs';
import type { Page } from 'playwright';
import { describe, expect, inject, it } from 'vitest';
import { answerWords } from '#words/text/answer-words.ts';
import { lengthDown } from '#words/text/number-words.ts';
import { spotFigure, worstFirst } from '#words/verdict/pair-words.ts';
import { readDesign } from '#model/read/read-design.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { judge } from '#judge/judging/judge.ts';
import { gatherWrongs, judged, openPage, textsOf, verdictOf } from './open-page.ts';
import { beforeLoad, hasBrowser, ownContext } from './shared-browser.ts';

const GRIP = 'former.chambers[0].width';

describe.skipIf(!hasBrowser())('judging beside the page', () => {
  /** A build on the sheet, judged; `hush` holds back what is asked from then on, as if judging lasted long. */
  async function openSheet(thread: Thread = 'watched') {
    const { page, wrongs } = await openPage('#sheet', {}, (empty) => beforeLoad(empty, standIn, thread));
    await page.locator(`[data-grip="${GRIP}"]`).waitFor();
    await judged(page);
    const hush = (isHushed: boolean): Promise<void> =>
      page.evaluate((hushed) => globalThis.asking.hush(hushed), isHushed);
    return { page, wrongs, hush };
  }

  it('should move the edge with the hand while judging lasts, one question at a time', async () => {
    const { page, wrongs, hush } = await openSheet();
    const before = await page.evaluate(() => globalThis.asking.asked);
    await hush(true);
    const grip = page.locator(`[data-grip="${GRIP}"]`);
    const box = (await grip.boundingBox())!;
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    const seen = new Set<string | null>();
    for (let i = 1; i <= 30; i++) {
      await page.mouse.move(x - 4 * i, y);
      seen.add(await grip.getAttribute('aria-valuetext'));
    }
    expect(seen.size).toBeGreaterThan(20);
    await hush(false);
    await page.mouse.up();
    const dropped = await grip.getAttribute('aria-valuetext');
    expect(dropped).toBe([...seen].at(-1));
    await judged(page);
    await expect.poll(() => grip.getAttribute('aria-valuetext')).toBe(dropped);
    const { asked, mostOpen } = await page.evaluate(() => globalThis.asking);
    expect(asked - before).toBeGreaterThan(0);
    expect(asked - before).toBeLessThan(seen.size);
    expect(mostOpen).toBe(1);
    await expectAsJudgedHere(page);
    expect(wrongs).toEqual([]);
  });

  it('should take every key and every letter, though the judgement comes later', async () => {
    const { page, wrongs, hush } = await openSheet();
    const grip = page.locator(`[data-grip="${GRIP}"]`);
    const before = await figures(page);
    await hush(true);
    await grip.focus();
    for (let i = 0; i < 4; i++) await page.keyboard.press('ArrowRight');
    await expect.poll(() => grip.getAttribute('aria-valuetext')).toBe('12.2 mm');
    await page.locator('[data-row="2"]').click();
    const field = page.locator('[data-field="layers[2].margins.left.width"]');
    await field.click();
    await field.press('Control+a');
    await page.keyboard.type('2.25 mm');
    await expect.poll(() => field.inputValue()).toBe('2.25 mm');
    await page.keyboard.press('Enter');
    // never an older verdict under what says that it is judging
    await expect.poll(() => verdictOf(page)).toBe('Judging …');
    await hush(false);
    await judged(page);
    expect(await figures(page)).not.toEqual(before);
    await expectAsJudgedHere(page);
    expect(wrongs).toEqual([]);
  });

  it('should let layers come off while judging lasts, and be level with them on the sheet', async () => {
    const { page, wrongs, hush } = await openSheet();
    await page.evaluate(() => (location.hash = 'taking-apart'));
    await page.getByRole('button', { name: 'begin with an empty one' }).click();
    await judged(page);
    await hush(true);
    await page.getByRole('button', { name: /What comes off next/ }).click();
    const steps = page.locator('.apart > ol > li');
    const next = page.getByRole('button', { name: 'Next step' });
    const off = page.getByRole('group', { name: 'what came off' });
    let layers = 0;
    while (layers < 6) {
      const what = layers % 2 === 0 ? 'tape from flange to flange' : 'a winding of Primary';
      await off.getByRole('button', { name: what }).click();
      await next.click();
      layers++;
    }
    const told = await page.locator('.side section').innerText();
    await off.getByRole('button', { name: 'a screen' }).click();
    layers++;
    await expect.poll(() => steps.count()).toBe(6 + layers);
    await expect.poll(() => page.locator('.apart > ol > li.open').innerText()).toContain('creen');
    await expect.poll(() => page.locator('.side section').innerText()).toBe(told);
    await page.evaluate(() => (location.hash = 'sheet'));
    await hush(false);
    // seven layers of which nothing is known are much to judge on a loaded machine
    await page
      .locator('#verdict-words', { hasText: 'Judging' })
      .waitFor({ state: 'detached', timeout: 120_000 });
    await judged(page);
    await page.locator('[data-row="0"]').waitFor();
    await expect.poll(() => page.locator('[data-row]').count()).toBe(layers);
    expect(wrongs).toEqual([]);
  });

  it('should not print a judgement of an older state', async () => {
    const { page, hush } = await openSheet();
    await hush(true);
    const title = page.locator('[data-field="title"]');
    if (!(await title.isVisible())) await page.getByText('Title and notes').click();
    await title.fill('Changed a moment ago');
    await title.press('Enter');
    await page.locator('.judging, #verdict-words:has-text("Judging")').first().waitFor();
    const printed = async (): Promise<string> => {
      await page.waitForFunction(() => {
        dispatchEvent(new Event('beforeprint'));
        return document.querySelector('#paper') !== null;
      });
      return (await page.locator('#paper').textContent()) ?? '';
    };
    expect(await printed()).toContain('not judged yet');
    await hush(false);
    await judged(page);
    expect(await printed()).toContain('Changed a moment ago');
  });

  it('should read a verdict out once, when it is made', async () => {
    const { page } = await openSheet();
    const status = page.locator('.verdict [role="status"]');
    const read = await textsOf(status);
    await page.locator('[data-row="2"]').click();
    const field = page.locator('[data-field="layers[2].margins.right.width"]');
    for (const length of ['0.4 mm', '0.3 mm', '0.2 mm']) {
      await field.fill(length);
      await field.press('Enter');
    }
    await judged(page);
    const said = (await read()).filter((text) => text !== '' && text !== 'Judging.');
    expect(said.length).toBeLessThan(2);
    await expect
      .poll(() => status.innerText())
      .toContain(await page.locator('.verdict .sentence').innerText());
  });

  it('should have the thread with the network gone, once the page was open', async () => {
    const context = await ownContext();
    const page = await context.newPage();
    const wrongs = await gatherWrongs(page);
    await beforeLoad<Thread>(page, standIn, 'watched');
    await page.goto(inject('url'));
    await page.evaluate(() => navigator.serviceWorker.ready);
    await context.setOffline(true);
    await page.reload();
    await page.evaluate(() => (location.hash = 'sheet'));
    await page.locator(`[data-grip="${GRIP}"]`).focus();
    await page.keyboard.press('ArrowRight');
    await expect.poll(() => page.evaluate(() => globalThis.asking.answered)).toBeGreaterThan(0);
    expect(wrongs).toEqual([]);
  });

  for (const thread of ['none', 'broken'] as const)
    it(`should judge on the page where the thread is ${thread === 'none' ? 'not to be had' : 'broken'}`, async () => {
      const { page, wrongs } = await openSheet(thread);
      await page.locator(`[data-grip="${GRIP}"]`).focus();
      for (let i = 0; i < 3; i++) await page.keyboard.press('ArrowRight');
      await page.getByText('This browser gives the page no thread to judge in').waitFor();
      await judged(page);
      await expect
        .poll(() => page.locator(`[data-grip="${GRIP}"]`).getAttribute('aria-valuetext'))
        .toBe('12.15 mm');
      await expectAsJudgedHere(page);
      expect(wrongs).toEqual([]);
    });
});

interface Asking {
  asked: number;
  answered: number;
  /** Questions that were out at one time. */
  mostOpen: number;
  hush: (isHushed: boolean) => void;
}

declare global {
  var asking: Asking;
}

type Thread = 'watched' | 'broken' | 'none';

/** Runs in the page before its own script: counts what is asked of the thread and answered, and can hold it back. */
function standIn(thread: Thread): void {
  const Real = globalThis.Worker;
  const open = new Set<number>();
  const known = new Set<number>();
  let held: (() => void)[] | null = null;
  globalThis.asking = {
    asked: 0,
    answered: 0,
    mostOpen: 0,
    hush: (isHushed) => {
      const waiting = held ?? [];
      held = isHushed ? [] : null;
      for (const send of waiting) send();
    },
  };
  const stand = {
    watched: class extends Real {
      constructor(address: string | URL, options?: WorkerOptions) {
        super(address, options);
        this.addEventListener('message', ({ data }: MessageEvent<{ kind: string; number: number }>) => {
          if (data.kind !== 'answer') return;
          open.delete(data.number);
          globalThis.asking.answered++;
        });
      }
      override postMessage(word: { kind: string; number: number }): void {
        if (word.kind === 'stop') open.delete(word.number);
        else if (!known.has(word.number)) {
          known.add(word.number);
          open.add(word.number);
          globalThis.asking.asked++;
        }
        globalThis.asking.mostOpen = Math.max(globalThis.asking.mostOpen, open.size);
        if (held === null) super.postMessage(word);
        else held.push(() => super.postMessage(word));
      }
    },
    broken: class {
      onerror: (() => void) | null = null;
      postMessage(): void {
        setTimeout(() => this.onerror?.());
      }
      terminate(): void {}
    },
    none: undefined,
  }[thread];
  Object.defineProperty(globalThis, 'Worker', { value: stand });
}

interface Figures {
  readonly answer: string;
  readonly pairs: readonly string[];
  readonly spots: readonly string[];
}

const figures = async (page: Page): Promise<Figures> => ({
  answer: (await verdictOf(page)).toLowerCase(),
  pairs: await page.locator('article .figure b').allInnerTexts(),
  spots: await page.locator('section:has(#weak-spots) .figure').allInnerTexts(),
});

/** The first spots stand open on the sheet, the rest behind a button. */
async function expectAsJudgedHere(page: Page): Promise<void> {
  const [shown, told] = [await figures(page), await figuresOfFile(page)];
  expect(shown.spots.length).toBeGreaterThan(0);
  expect(shown).toEqual({ ...told, spots: told.spots.slice(0, shown.spots.length) });
}

/** Of the file as the page saves it, judged here, in the words of the sheet. */
async function figuresOfFile(page: Page): Promise<Figures> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save', exact: true }).click(),
  ]);
  const file = readFileSync(await download.path(), 'utf8');
  const read = readDesign(JSON.parse(file), knownIds);
  if (read.kind === 'bad') throw new Error(JSON.stringify(read.faults));
  const { verdict } = judge(read.design);
  return {
    answer: answerWords(verdict.verdict),
    pairs: worstFirst(verdict).flatMap(({ limiting, required }) =>
      required === null || limiting?.length == null ? [] : [lengthDown(limiting.length)],
    ),
    spots: verdict.weakSpots.map(spotFigure),
  };
}
