import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readDesign } from '#model/read/read-design.ts';
import { finished } from '#field/solve/finished.ts';
import { FINE, fieldOf } from '#judge/field/field-of.ts';
import { fieldPicture } from '#judge/field/field-picture.ts';
import { compareFiles } from '#cli/verbs/searching/compare.ts';
import { makeExercise } from '#learn/exercise/make-exercise.ts';
import { templateOf } from '#learn/exercise/templates.ts';
import { exerciseAndAnswers } from '#papers/html/exercise-sheet.ts';
import { reportHtml } from '#papers/html/report/report.ts';
import { winderSheet } from '#papers/html/winder-sheet.ts';
import { study } from '#judge/study.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { hostileDesign } from '#test/papers/hostile-design.ts';
import { axeFaults } from './open-page.ts';
import { hasBrowser, ownContext } from './shared-browser.ts';

const pathOf = (name: string): string =>
  fileURLToPath(new URL(`../../static/demos/${name}.json`, import.meta.url));
const demoNamed = (name: string): unknown => JSON.parse(readFileSync(pathOf(name), 'utf8'));
const demo = demoNamed('greenhouse-timer');

function judgedBuild(json: unknown) {
  const read = readDesign(json, knownIds);
  if (read.kind === 'bad') throw new Error(JSON.stringify(read.faults));
  return { design: read.design, judgement: study(read.design) };
}

function exercisePaper(kind: string, seed: number): string {
  const exercise = makeExercise(templateOf(kind)!, seed)!;
  return exerciseAndAnswers({ exercise, ...judgedBuild(exercise.doc) });
}

function report(json: unknown, withField = false): string {
  const { design, judgement } = judgedBuild(json);
  const field = withField ? fieldPicture(finished(fieldOf(design, judgement, FINE))) : null;
  return reportHtml({ design, judgement, designText: JSON.stringify(json), ...(field && { field }) });
}

/** Every word that is seen, and how large it is printed. */
const wordSizes = (page: Page): Promise<readonly { readonly words: string; readonly points: number }[]> =>
  page.evaluate(() => {
    const found: { readonly words: string; readonly points: number }[] = [];
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walk.nextNode()) {
      const { parentElement, textContent } = walk.currentNode;
      const words = textContent?.trim() ?? '';
      const isSeen = parentElement !== null && parentElement.getBoundingClientRect().width > 0;
      if (!isSeen || words === '') continue;
      const drawn = parentElement instanceof SVGGraphicsElement ? parentElement.getScreenCTM() : null;
      const scale = drawn === null ? 1 : Math.hypot(drawn.a, drawn.b);
      // 96 pixels and 72 points an inch
      found.push({ words, points: parseFloat(getComputedStyle(parentElement).fontSize) * scale * 0.75 });
    }
    return found;
  });

describe.skipIf(!hasBrowser())('report', () => {
  const folder = mkdtempSync(join(tmpdir(), 'layerwright-report-'));
  beforeAll(async () => {});
  afterAll(async () => {
    rmSync(folder, { recursive: true });
  });

  /** Opens the report from the disk; `wrongs` gathers what it says, asks for or runs. */
  async function open(
    json: unknown,
    name: string,
    withField = false,
  ): Promise<{ page: Page; wrongs: string[] }> {
    const file = join(folder, name);
    writeFileSync(file, report(json, withField));
    const page = await (await ownContext()).newPage();
    const wrongs: string[] = [];
    page.on('console', (message) => wrongs.push(message.text()));
    page.on('pageerror', (error) => wrongs.push(error.message));
    page.on('dialog', (dialog) => {
      wrongs.push(dialog.message());
      void dialog.dismiss();
    });
    page.on('request', (request) => {
      if (request.url() !== pathToFileURL(file).href) wrongs.push(request.url());
    });
    await page.goto(pathToFileURL(file).href);
    return { page, wrongs };
  }

  it('should open from the disk, ask for nothing and fit its paper', async () => {
    const { page, wrongs } = await open(demo, 'report.html');
    await expect.poll(() => page.locator('h2.answer').innerText()).toContain('Falls short');
    await page.emulateMedia({ media: 'print' });
    // A4 less its margins: 180 mm at 96 pixels an inch
    await page.setViewportSize({ width: 680, height: 900 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(680);
    expect(wrongs).toEqual([]);
  });

  it.each(['A4', 'Letter'])('should print to several pages of %s', async (format) => {
    const { page } = await open(demo, 'print.html');
    const pdf = (await page.pdf({ format, printBackground: true })).toString('latin1');
    const pages = pdf.match(/\/Type \/Page\b/g)?.length ?? 0;
    expect(pages).toBeGreaterThan(2);
    expect(pages).toBeLessThan(16);
  });

  it.each(['greenhouse-timer', 'garden-robot-dock', 'aquarium-light'])(
    'should have the field of %s on a page of its own, A4 and Letter',
    async (name) => {
      const json: unknown = JSON.parse(readFileSync(`static/demos/${name}.json`, 'utf8'));
      const { page, wrongs } = await open(json, `${name}.html`, true);
      await page.emulateMedia({ media: 'print' });
      // less the margins, at 96 pixels an inch: 180 mm by 263, and 186 by 245
      for (const [width, height] of [
        [680, 994],
        [703, 927],
      ] as const) {
        await page.setViewportSize({ width, height });
        const box = (await page.locator('.own-page').boundingBox())!;
        expect(box.height, `${width}`).toBeGreaterThan(500);
        expect(box.height, `${width}`).toBeLessThanOrEqual(height);
        const close = (await page.locator('.gap-row figure svg').boundingBox())!;
        expect(close.width).toBeLessThan(width / 2);
      }
      expect(wrongs).toEqual([]);
    },
  );

  it('should print no words smaller than 8 pt, those of the sections included', async () => {
    const { page } = await open(demo, 'small.html', true);
    await page.emulateMedia({ media: 'print' });
    await page.setViewportSize({ width: 680, height: 994 });
    const sizes = await wordSizes(page);
    expect(sizes.length).toBeGreaterThan(400);
    expect(sizes.filter(({ points }) => points < 8)).toEqual([]);
    const feet = await page.evaluate(() => document.querySelector('style')!.textContent!);
    const margins = [...feet.matchAll(/@(?:top|bottom)-\w+ \{[^}]*font: ([\d.]+)px/g)].map((found) =>
      Number(found[1]),
    );
    expect(margins).toHaveLength(3);
    expect(Math.min(...margins) * 0.75).toBeGreaterThanOrEqual(8);
  });
  it('should print every other paper so too, an exercise and its answers on a page each of Letter', async () => {
    const exercises = ['margins', 'plies', 'leads'].flatMap((kind) =>
      [20, 21].map((seed) => exercisePaper(kind, seed)),
    );
    const names = ['greenhouse-timer', 'flea-market-drill'] as const;
    const compared = join(folder, 'compared.html');
    expect(compareFiles([...names.map(pathOf), '--out', compared])).toMatchObject({ code: 0 });
    const papers = [
      ...exercises,
      ...names.map(demoNamed).flatMap((json) => [report(json), winderSheet(judgedBuild(json))]),
      readFileSync(compared, 'utf8'),
    ];
    const page = await (await ownContext()).newPage();
    await page.emulateMedia({ media: 'print' });
    for (const [i, html] of papers.entries()) {
      await page.setViewportSize({ width: 680, height: 994 });
      await page.setContent(html);
      expect(
        (await wordSizes(page)).filter(({ points }) => points < 8),
        `${i}`,
      ).toEqual([]);
      if (i >= exercises.length) continue;
      const pdf = await page.pdf({ format: 'Letter', preferCSSPageSize: false });
      expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g), `${i}`).toHaveLength(2);
    }
  });

  it('should be fit for a screen reader', async () => {
    const { page } = await open(demo, 'axe.html');
    expect(await axeFaults(page)).toEqual([]);
  });

  it('should run nothing of a hostile design, and stay on its paper', async () => {
    const { page, wrongs } = await open(hostileDesign, 'hostile.html');
    await page.waitForTimeout(300);
    await expect.poll(() => page.locator('img').count()).toBe(0);
    await page.emulateMedia({ media: 'print' });
    await page.setViewportSize({ width: 680, height: 900 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(680);
    expect(wrongs).toEqual([]);
  });
});
