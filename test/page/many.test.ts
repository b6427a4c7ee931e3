import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { faultsOfLooks, openKept, openPage, seeMargin, typeMargin, verdictOf } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

const DEMOS = 'static/demos';

describe.skipIf(!hasBrowser())('many at once', () => {
  let folder: string;
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'many-'));
    for (const name of ['hedge-trimmer-charger', 'greenhouse-timer', 'toothbrush-stand'])
      writeFileSync(join(folder, `${name}.json`), readFileSync(join(DEMOS, `${name}.json`)));
    const wrong = JSON.parse(readFileSync(join(DEMOS, 'greenhouse-timer.json'), 'utf8')) as {
      former: object;
    };
    writeFileSync(
      join(folder, 'wrong-unit.json'),
      JSON.stringify({ ...wrong, former: { ...wrong.former, height: '3 kg' } }),
    );
    writeFileSync(join(folder, 'no-design.json'), '[1, 2');
    writeFileSync(join(folder, 'notes.txt'), 'not a design');
  });
  afterAll(async () => {
    rmSync(folder, { recursive: true });
  });

  const judged = async (page: Page): Promise<void> => {
    await page.goto(`${page.url().split('#')[0]}#many`);
    await page.locator('input[webkitdirectory]').setInputFiles(folder);
    await page.getByText('5 of 5 files').waitFor();
  };
  const titles = (page: Page): Promise<readonly string[]> => page.locator('tbody .open').allInnerTexts();

  it('should list a folder worst first, keep bad files with their reason, and say what it passed over', async () => {
    const { page, wrongs } = await openPage('#many');
    await judged(page);
    expect((await titles(page))[0]).toContain('greenhouse');
    const answers = await page.locator('tbody .verdict').allInnerTexts();
    expect(answers[0]).toContain('falls short');
    expect(answers.at(-1)).toContain('meets');
    const bad = await page.locator('main ul').innerText();
    expect(bad).toContain('wrong-unit.json');
    expect(bad).toContain('former.height');
    expect(bad).toContain('no-design.json');
    await expect.poll(() => page.locator('.progress').innerText()).toContain('Passed over: 1');
    expect(wrongs).toEqual([]);
  });

  it('should sort by a column, and the other way round', async () => {
    const { page } = await openPage('#many');
    await judged(page);
    const head = page.locator('thead th').first();
    await head.getByRole('button').click();
    const up = await titles(page);
    expect(up).toEqual([...up].sort((a, b) => a.localeCompare(b, 'en')));
    await expect.poll(() => head.getAttribute('aria-sort')).toBe('ascending');
    await head.getByRole('button').click();
    expect(await titles(page)).toEqual([...up].reverse());
  });

  it('should open a row on the sheet without losing what lay there, and come back to the list', async () => {
    const { page, wrongs } = await openPage('#sheet');
    await typeMargin(page, '1.23 mm');
    await judged(page);
    await page.getByRole('button', { name: 'Charger of a cordless hedge trimmer', exact: true }).click();
    await expect.poll(() => verdictOf(page)).toContain('Meets');
    await page.evaluate(() => (location.hash = 'many'));
    await expect.poll(async () => (await titles(page)).length).toBe(3);
    await openKept(page, 'Wall supply of a greenhouse irrigation timer');
    await seeMargin(page, '1.23 mm');
    expect(wrongs).toEqual([]);
  });

  it('should save the report of a row', async () => {
    const { page, wrongs } = await openPage('#many');
    await judged(page);
    const saving = page.waitForEvent('download');
    await page.locator('tbody tr').first().getByRole('button', { name: 'save' }).click();
    const download = await saving;
    expect(download.suggestedFilename()).toMatch(/greenhouse.*\.html$/);
    expect(readFileSync(await download.path(), 'utf8')).toContain('greenhouse');
    expect(wrongs).toEqual([]);
  });

  it('should have no fault that axe finds, and not scroll sideways', async () => {
    const { page } = await openPage('#many');
    await judged(page);
    expect(await faultsOfLooks(page)).toEqual([]);
  });
});
