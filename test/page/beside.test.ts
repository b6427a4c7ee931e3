import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { answerWords } from '#words/verdict/answer-words.ts';
import { lengthDown } from '#words/text/number-words.ts';
import { spotFigure, worstFirst } from '#words/verdict/pair-words.ts';
import type { Verdict } from '#state/judging/judged.ts';
import { bundled, newFolder, run } from '#test/cli/command.ts';
import {
  gatherWrongs,
  hasBrowser,
  judged,
  launch,
  openDemo,
  openPage,
  textsOf,
  verdictOf,
} from './open-page.ts';

const TITLE = 'Charger of a flea-market cordless drill';
const GRIP = 'former.chambers[0].width';

describe.skipIf(!hasBrowser())('judging beside the page', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => browser.close());

  /** The build with many unknowns on the sheet; `told` lists what went to the thread and came from it, in order. */
  async function openDrill(thread: Thread = 'watched') {
    const { page, wrongs } = await openPage(browser);
    await page.addInitScript(standIn, thread);
    await page.reload();
    await openDemo(page, TITLE);
    await page.locator(`[data-grip="${GRIP}"]`).waitFor();
    const told = (): Promise<readonly string[]> => page.evaluate(() => globalThis.told);
    return { page, wrongs, told };
  }

  it('should move the edge with the hand while judging lasts, one question at a time', async () => {
    const { page, wrongs, told } = await openDrill();
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
    await page.mouse.up();
    const dropped = await grip.getAttribute('aria-valuetext');
    expect(dropped).toBe([...seen].at(-1));
    await judged(page);
    await expect.poll(() => grip.getAttribute('aria-valuetext')).toBe(dropped);
    const words = await told();
    expect(words.length).toBeGreaterThan(1);
    expect(words.length / 2).toBeLessThan(seen.size);
    expect(words).toEqual(words.map((_, i) => (i % 2 === 0 ? 'asked' : 'answered')));
    expect(await figures(page)).toEqual(await figuresOfCommandLine(page));
    expect(wrongs).toEqual([]);
  });

  it('should take every key and every letter, though the judgement comes later', async () => {
    const { page, wrongs, told } = await openDrill('silent');
    const grip = page.locator(`[data-grip="${GRIP}"]`);
    const before = await figures(page);
    await grip.focus();
    for (let i = 0; i < 4; i++) await page.keyboard.press('ArrowRight');
    await expect.poll(() => grip.getAttribute('aria-valuetext')).toBe('13.2 mm');
    await page.locator('[data-row="2"]').click();
    const field = page.locator('[data-field="layers[2].margins.left.width"]');
    await field.click();
    await field.press('Control+a');
    await page.keyboard.type('2.25 mm');
    await expect.poll(() => field.inputValue()).toBe('2.25 mm');
    await page.keyboard.press('Enter');
    await page.locator('.judging').waitFor();
    await expect.poll(() => figures(page)).toEqual(before);
    expect(await told()).toEqual(['asked']);
    expect(wrongs).toEqual([]);
  });

  it('should let layers come off while judging lasts, and be level with them on the sheet', async () => {
    const { page, wrongs } = await openDrill('silent');
    await page.evaluate(() => (location.hash = 'taking-apart'));
    await page.getByRole('button', { name: 'begin with an empty one' }).click();
    await page.getByRole('button', { name: /What comes off next/ }).click();
    const steps = page.locator('.bench > ol > li');
    const next = page.getByRole('button', { name: 'Next step' });
    const off = page.getByRole('group', { name: 'what came off' });
    let layers = 0;
    while ((await page.locator('.judging').count()) === 0 && layers < 12) {
      const what = layers % 2 === 0 ? 'tape from flange to flange' : 'a winding of Primary';
      await off.getByRole('button', { name: what }).click();
      await next.click();
      layers++;
    }
    const told = await page.locator('.side section').innerText();
    await off.getByRole('button', { name: 'a screen' }).click();
    layers++;
    await expect.poll(() => steps.count()).toBe(6 + layers);
    await expect.poll(() => page.locator('li.open').innerText()).toContain('creen');
    await expect.poll(() => page.locator('.side section').innerText()).toBe(told);
    await page.evaluate(() => (location.hash = 'sheet'));
    await page.locator('[data-row="0"]').waitFor();
    await judged(page);
    await expect.poll(() => page.locator('[data-row]').count()).toBe(layers);
    expect(wrongs).toEqual([]);
  });

  it('should not print a judgement of an older state', async () => {
    const { page } = await openDrill('silent');
    const title = page.locator('[data-field="title"]');
    if (!(await title.isVisible())) await page.getByText('Title and notes').click();
    await title.fill('Changed a moment ago');
    await title.press('Enter');
    await page.locator('.judging').waitFor({ state: 'attached' });
    await page.waitForFunction(() => {
      dispatchEvent(new Event('beforeprint'));
      return document.querySelector('#paper') !== null;
    });
    expect(await page.locator('#paper h1').textContent()).toContain('Changed a moment ago');
    expect(await page.locator('.judging').count()).toBe(0);
  });

  it('should read a verdict out once, when it is made', async () => {
    const { page } = await openDrill();
    const status = page.locator('.verdict [role="status"]');
    const read = await textsOf(status);
    await page.locator('[data-row="2"]').click();
    const field = page.locator('[data-field="layers[2].margins.right.width"]');
    for (const length of ['0.4 mm', '0.3 mm', '0.2 mm']) {
      await field.fill(length);
      await field.press('Enter');
    }
    await judged(page);
    const said = (await read()).filter((text) => text !== '');
    expect(said.length).toBeLessThan(2);
    await expect
      .poll(() => status.innerText())
      .toContain(await page.locator('.verdict .sentence').innerText());
  });

  it('should have the thread with the network gone, once the page was open', async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    const wrongs = await gatherWrongs(page);
    await page.addInitScript<Thread>(standIn, 'watched');
    await page.goto(inject('url'));
    await page.evaluate(() => navigator.serviceWorker.ready);
    await context.setOffline(true);
    await page.reload();
    await openDemo(page, TITLE);
    await page.locator(`[data-grip="${GRIP}"]`).focus();
    await page.keyboard.press('ArrowRight');
    await expect.poll(() => page.evaluate(() => globalThis.told)).toContain('answered');
    expect(wrongs).toEqual([]);
  });

  for (const thread of ['none', 'broken'] as const)
    it(`should judge on the page where the thread is ${thread === 'none' ? 'not to be had' : 'broken'}`, async () => {
      const { page, wrongs } = await openDrill(thread);
      await page.locator(`[data-grip="${GRIP}"]`).focus();
      for (let i = 0; i < 3; i++) await page.keyboard.press('ArrowRight');
      await judged(page);
      await expect
        .poll(() => page.locator(`[data-grip="${GRIP}"]`).getAttribute('aria-valuetext'))
        .toBe('13.15 mm');
      expect(await figures(page)).toEqual(await figuresOfCommandLine(page));
      expect(wrongs).toEqual([]);
    });
});

declare global {
  var told: string[];
}

type Thread = 'watched' | 'silent' | 'broken' | 'none';

/** Runs in the page before its own script. */
function standIn(thread: Thread): void {
  globalThis.told = [];
  const Real = globalThis.Worker;
  const stand = {
    watched: class extends Real {
      constructor(address: string | URL, options?: WorkerOptions) {
        super(address, options);
        this.addEventListener('message', () => globalThis.told.push('answered'));
      }
      override postMessage(question: unknown): void {
        globalThis.told.push('asked');
        super.postMessage(question);
      }
    },
    silent: class {
      postMessage(): void {
        globalThis.told.push('asked');
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

/** Of the file as the page saves it, in the words of the sheet. */
async function figuresOfCommandLine(page: Page): Promise<Figures> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save', exact: true }).click(),
  ]);
  const file = readFileSync(await download.path(), 'utf8');
  const verdict = JSON.parse(run(bundled(newFolder()), ['judge', '--json', '-'], file).out) as Verdict;
  return {
    answer: answerWords(verdict.verdict),
    pairs: worstFirst(verdict).flatMap(({ limiting, required }) =>
      required === null || limiting?.length == null ? [] : [lengthDown(limiting.length)],
    ),
    spots: verdict.weakSpots.map(spotFigure),
  };
}
