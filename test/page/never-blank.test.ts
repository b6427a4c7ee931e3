import { deflateRawSync } from 'node:zlib';
import type { Page } from 'playwright';
import { describe, expect, inject, it } from 'vitest';
import { firstBuild } from '#state/begin/demos.ts';
import { openPage, verdictOf } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

const [pri, out, ...circuits] = firstBuild.circuits;
const faulty: readonly (readonly [string, unknown])[] = [
  ['doubled ids of circuits', { ...firstBuild, circuits: [pri, { ...out, id: pri!.id }, ...circuits] }],
  ['a circuit without an id', { ...firstBuild, circuits: [pri, { ...out, id: undefined }, ...circuits] }],
  ['layers that are no list', { ...firstBuild, layers: 'three' }],
  ['windings of null', { ...firstBuild, windings: [null] }],
  ['a former without chambers', { ...firstBuild, former: {} }],
];

const linkOf = (json: unknown): string =>
  `#build=${deflateRawSync(Buffer.from(JSON.stringify(json))).toString('base64url')}`;

describe.skipIf(!hasBrowser())('never blank', () => {
  it.each(faulty)('should name the faults of a link with %s, and again after a reload', async (_, json) => {
    const { page, wrongs } = await openPage(linkOf(json));
    const heading = page.getByRole('heading', { name: 'To be put right' });
    await heading.waitFor();
    expect(await page.locator('ol li').count()).toBeGreaterThan(0);
    await page.reload();
    await heading.waitFor();
    expect(await page.locator('ol li').count()).toBeGreaterThan(0);
    await page.getByRole('button', { name: 'Put it away' }).click();
    await page.getByRole('heading', { name: 'Open', exact: true }).waitFor();
    expect(wrongs).toEqual([]);
  });

  it('should lay a build on the sheet once its fault is put right', async () => {
    const { page } = await openPage(linkOf(faulty[0]![1]));
    await page.getByLabel('circuits[1].id', { exact: true }).fill(out!.id);
    await page.keyboard.press('Enter');
    await expect.poll(() => verdictOf(page)).toContain('Falls short');
  });

  it('should take up the other kept builds where one is damaged', async () => {
    const { page } = await openPage('#sheet');
    await keptThere(page, {
      id: 'damaged',
      title: 7,
      doc: { format: 'layerwright-design/1' },
      version: 'x',
      saved: null,
    });
    await keptThere(page, {
      id: 'whole',
      title: 'Whole',
      doc: { ...firstBuild, title: 'Whole' },
      version: 1,
      saved: 5,
    });
    await page.goto(`${inject('url')}#open`);
    await page.reload();
    await page.getByRole('button', { name: 'without a title' }).waitFor();
    await page.getByRole('button', { name: 'Whole' }).click();
    await page.getByRole('heading', { level: 1, name: 'Whole' }).waitFor();
    await page.goto(`${inject('url')}#open`);
    await page.getByRole('button', { name: 'without a title' }).click();
    await page.getByRole('heading', { name: 'To be put right' }).waitFor();
  });

  it('should show the rest of the sheet where one part of it breaks, and offer the file', async () => {
    const { page } = await openPage();
    await page.evaluate(() => {
      HTMLCanvasElement.prototype.getContext = () => {
        throw new Error('no such canvas');
      };
      location.hash = 'sheet';
    });
    const failed = page.getByRole('alert').filter({ hasText: 'cannot be shown' });
    await failed.waitFor();
    expect(await failed.innerText()).toContain('no such canvas');
    expect(await verdictOf(page)).toContain('Falls short');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      failed.getByRole('button', { name: 'Save the file' }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/\.json$/);
  });
});

/** Writes into the browser's store past everything that the page checks. */
const keptThere = (page: Page, build: unknown): Promise<void> =>
  page.evaluate(
    (kept) =>
      new Promise<void>((done, fail) => {
        const opening = indexedDB.open('layerwright');
        opening.onerror = () => fail(new Error('no store'));
        opening.onsuccess = () => {
          const db = opening.result;
          const tx = db.transaction('builds', 'readwrite');
          tx.objectStore('builds').put(kept);
          tx.oncomplete = () => {
            db.close();
            done();
          };
          tx.onerror = () => fail(new Error('not written'));
        };
      }),
    build,
  );
