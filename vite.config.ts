import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vite';

export default defineConfig({
  plugins: [sveltekit()],
  optimizeDeps: { include: ['mathjs', 'zod', 'konva/lib/Core'] },
  worker: { format: 'es' },
  build: { target: 'es2022' },
});
