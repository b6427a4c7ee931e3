import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vite';

/** In one file there is no script to start a thread from: it lies in the page, as one piece. */
const single =
  process.env.SINGLE_FILE === '1'
    ? {
        resolve: { alias: [{ find: './start-thread.ts', replacement: './start-thread-inline.ts' }] },
        worker: { format: 'iife' as const },
      }
    : {};

export default defineConfig({
  plugins: [sveltekit()],
  optimizeDeps: { include: ['mathjs', 'zod', 'konva/lib/Core'] },
  // in one piece: what the service worker keeps names no parts of a thread, and without a network none would come
  worker: { format: 'es', rolldownOptions: { output: { codeSplitting: false } } },
  build: { target: 'es2022' },
  ...single,
});
