// The browser's store under attack: cleared, full, taken over by a newer version; a tab that crashed; a newer page waiting.

import { createReadStream, existsSync, readFileSync, statSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';
import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { openPage, retitle } from './open-page.ts';
import { hasBrowser, ownContext } from './shared-browser.ts';

describe.skipIf(!hasBrowser())('the store', () => {
  it('should keep what is changed after it was cleared under the open page', async () => {
    const { page } = await openPage('#sheet');
    await retitle(page, 'Before clearing');
    await page.waitForTimeout(600);
    await page.evaluate(
      () =>
        new Promise<void>((done, fail) => {
          const clearing = indexedDB.deleteDatabase('layerwright');
          clearing.onsuccess = () => done();
          clearing.onerror = () => fail(new Error('not cleared'));
        }),
    );
    await retitle(page, 'After clearing');
    await page.waitForTimeout(600);
    expect(await page.locator('.notice').count()).toBe(0);
    const other = await page.context().newPage();
    await other.goto(`${inject('url')}#open`);
    await other.getByRole('button', { name: 'After clearing' }).waitFor();
  });

  it('should give way to a newer version of the store, and say that it keeps nothing any more', async () => {
    const { page } = await openPage('#sheet');
    await retitle(page, 'In the old store');
    await page.waitForTimeout(600);
    const newer = await page.context().newPage();
    await newer.goto(`${inject('url')}icon.svg`);
    const isBlocked = await newer.evaluate(
      () =>
        new Promise<boolean>((done) => {
          const opening = indexedDB.open('layerwright', 2);
          opening.onblocked = () => done(true);
          opening.onsuccess = () => done(false);
        }),
    );
    expect(isBlocked).toBe(false);
    await retitle(page, 'Too late');
    await page.getByText('A newer version of this page is open in another tab').waitFor();
  });

  it('should say that the browser is full, and keep again once there is room', async () => {
    const { page } = await openPage('#sheet');
    const session = await page.context().newCDPSession(page);
    const { origin } = new URL(inject('url'));
    await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
    await retitle(page, 'No room');
    await page.getByText('has no room left').waitFor();
    await session.send('Storage.overrideQuotaForOrigin', { origin });
    await retitle(page, 'Room again');
    await expect.poll(() => page.getByText('has no room left').count()).toBe(0);
  });

  it('should not tell of another tab for long after that tab crashed', async () => {
    const { page: one } = await openPage('#sheet');
    await retitle(one, 'In a tab that crashes');
    await one.waitForTimeout(600);
    const two = await one.context().newPage();
    await two.goto(`${inject('url')}#open`);
    await two.getByRole('button', { name: 'In a tab that crashes' }).click();
    await one.getByText('open in another tab').waitFor();
    // answered for: it stays while the other tab is there
    await one.waitForTimeout(6500);
    expect(await one.getByText('open in another tab').count()).toBe(1);
    const session = await two.context().newCDPSession(two);
    void session.send('Page.crash').catch(() => {});
    await one.getByText('open in another tab').waitFor({ state: 'detached', timeout: 20_000 });
  });
});

describe.skipIf(!hasBrowser())('the page without a network', () => {
  let server: Server;
  let version = 1;
  let url = '';
  beforeAll(async () => {
    server = createServer((request, response) => {
      const path = new URL(request.url ?? '/', 'http://x').pathname;
      const file = join('build', path.endsWith('/') ? `${path}index.html` : path);
      if (!existsSync(file) || !statSync(file).isFile()) {
        response.writeHead(404).end();
        return;
      }
      response.setHeader('content-type', TYPES[extname(file)] ?? 'application/octet-stream');
      // a newer version is another service worker
      if (path === '/service-worker.js') response.end(`${readFileSync(file, 'utf8')}\n// ${version}`);
      else createReadStream(file).pipe(response);
    });
    await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
    url = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
  });
  afterAll(async () => {
    server.close();
  });

  /** With the service worker in charge, which it is from the second loading on. */
  async function controlled(): Promise<Page> {
    const page = await (await ownContext()).newPage();
    await page.goto(`${url}#sheet`);
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.reload();
    await page.locator('#layers').waitFor();
    return page;
  }

  it('should open, under the name of its file too', async () => {
    const page = await controlled();
    await page.context().setOffline(true);
    for (const name of ['', 'index.html', 'index.html?from=home']) {
      await page.goto(`${url}${name}#sheet`);
      await page.locator('#layers').waitFor();
    }
  });

  it('should say that a newer version waits, and take it without losing anything', async () => {
    const page = await controlled();
    version++;
    await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
    const notice = page.getByText('A newer version of this page is there');
    await notice.waitFor();
    await retitle(page, 'Changed before the newer version');
    await Promise.all([page.waitForEvent('load'), page.getByRole('button', { name: 'Load it' }).click()]);
    await page.getByRole('heading', { level: 1, name: 'Changed before the newer version' }).waitFor();
    expect(await notice.count()).toBe(0);
  });
});

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
};
