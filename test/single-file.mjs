// npm run build:single: the page as one HTML file that opens from a disk, without a server or a network.

import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { build } from 'vite';

process.env.SINGLE_FILE = '1';
await build({ logLevel: 'warn' });

const icon = Buffer.from(readFileSync('static/icon.svg')).toString('base64');
const page = readFileSync('dist/page/index.html', 'utf8')
  .replace('href="./icon.svg"', `href="data:image/svg+xml;base64,${icon}"`)
  .replace(/\s*<link rel="manifest"[^>]*>/, '');
for (const scratch of ['dist/page', 'dist/kit']) rmSync(scratch, { recursive: true, force: true });
writeFileSync('dist/layerwright.html', page);
console.log(`dist/layerwright.html, ${Math.round(page.length / 1000)} kB`);
