import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vitest/config';

// Two projects: `unit` runs in Node (runes compiled for state tests), `page` drives the built site in a real browser.
export default defineConfig({
  test: {
    experimental: { fsModuleCache: true },
    // every core: the runner alone would leave one of two idle
    maxWorkers: '100%',
    projects: [
      {
        plugins: [svelte({ configFile: false })],
        resolve: { conditions: ['browser'] },
        test: {
          name: 'unit',
          environment: 'node',
          include: ['test/**/*.test.ts'],
          exclude: ['test/page/**'],
          // rooms keep no state, so files may share a worker's modules: most of the time went into loading them anew
          isolate: false,
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
          setupFiles: ['test/page/after-each.ts'],
          // the files of a worker share its browser
          isolate: false,
          // after the others: a browser has the machine for itself
          sequence: { groupOrder: 1 },
          testTimeout: 240_000,
          hookTimeout: 120_000,
          // a loaded machine may be seconds behind; what never comes fails all the same
          expect: { poll: { timeout: 45_000 } },
        },
      },
    ],
  },
});
