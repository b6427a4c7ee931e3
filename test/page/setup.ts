// Serves the built page for the tests in a real browser, and says where it and the browser are.

import { existsSync } from 'node:fs';
import { preview } from 'vite';
import type { TestProject } from 'vitest/node';
import { ensureBrowser } from '#test/browser.mjs';

declare module 'vitest' {
  export interface ProvidedContext {
    url: string;
    browser: string;
  }
}

export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  if (!existsSync('build/index.html')) throw new Error('no built page: run `npx vite build` first');
  const browser = ensureBrowser();
  const mustHave = Boolean(process.env.CI ?? process.env.REQUIRE_BROWSER);
  if (browser === undefined && mustHave) throw new Error('no Chromium, Chrome or Edge found');
  const server = await preview({ preview: { port: 0, host: '127.0.0.1' }, logLevel: 'error' });
  const [url] = server.resolvedUrls?.local ?? [];
  if (url === undefined) throw new Error('the preview server has no address');
  project.provide('url', url);
  project.provide('browser', browser ?? '');
  return () => server.close();
}
