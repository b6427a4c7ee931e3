import { execSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import adapter from '@sveltejs/adapter-static';
import { vitePreprocess } from '@sveltejs/vite-plugin-svelte';

const { version } = JSON.parse(readFileSync(new URL('package.json', import.meta.url), 'utf8'));

/** The service worker's cache hangs on this name, so it must change with every change of the source. */
function buildName() {
  try {
    return `${version}-${execSync('git describe --always --dirty', { stdio: ['ignore', 'pipe', 'ignore'] })
      .toString()
      .trim()}`;
  } catch {
    return version;
  }
}

/** `SINGLE_FILE=1`: everything inside one HTML file that opens from a disk, for handing to a class. */
const isSingle = process.env.SINGLE_FILE === '1';

export default {
  preprocess: vitePreprocess(),
  compilerOptions: {
    runes: ({ filename }) => (/[\\/]node_modules[\\/]/.test(filename) ? undefined : true),
  },
  kit: {
    adapter: adapter({ strict: true, ...(isSingle ? { pages: 'dist/page', assets: 'dist/page' } : {}) }),
    ...(isSingle
      ? { output: { bundleStrategy: 'inline' }, serviceWorker: { register: false }, outDir: 'dist/kit' }
      : {}),
    version: { name: buildName() },
    paths: { relative: true },
    csp: {
      mode: 'hash',
      directives: {
        'default-src': ['self'],
        'script-src': ['self'],
        // in one file the thread runs from a blob
        'worker-src': [isSingle ? 'blob:' : 'self'],
        'connect-src': ['self'],
        // the hash is that of the framework's route announcer
        'style-src': ['self', 'unsafe-hashes', 'sha256-S8qMpvofolR8Mpjy4kQvEm7m1q8clzU4dfDH0AmvZjo='],
        'img-src': ['self', 'data:', 'blob:'],
        'object-src': ['none'],
        'base-uri': ['self'],
        'form-action': ['none'],
      },
    },
  },
};
