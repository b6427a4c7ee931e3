import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vitest/config';

// Two projects: `unit` runs in Node (runes compiled for state tests), `page` drives the built site in a real browser.
export default defineConfig({
  test: {
    experimental: { fsModuleCache: true },
    projects: [
      {
        plugins: [svelte({ configFile: false })],
        resolve: { conditions: ['browser'] },
        test: {
          name: 'unit',
          environment: 'node',
          include: ['test/**/*.test.ts'],
          exclude: ['test/page/**'],
          // only against what never ends: a loaded machine may be many times slower
          testTimeout: 600_000,
        },
      },
      {
        test: {
          name: 'page',
          environment: 'node',
          include: ['test/page/**/*.test.ts'],
          globalSetup: ['test/page/setup.ts'],
          fileParallelism: false,
          testTimeout: 240_000,
          hookTimeout: 120_000,
          // a loaded machine may be seconds behind; what never comes fails all the same
          expect: { poll: { timeout: 45_000 } },
        },
      },
    ],
  },
});
