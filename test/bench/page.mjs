// `npm run bench:page`: what the built page costs in a browser, as a table. Readings depend on the machine; they are told,
// never tested. A drag is 120 moves of one margin's grip, one a frame, each judged and drawn before the next.

import { gzipSync } from 'node:zlib';
import { chromium } from 'playwright';
import { preview } from 'vite';
import { ensureBrowser, LAUNCH_ARGS } from '../browser.mjs';
import { sandwich } from './builds.ts';

const server = await preview({ preview: { port: 0, host: '127.0.0.1' }, logLevel: 'error' });
const url = server.resolvedUrls.local[0];
const browser = await chromium.launch({ executablePath: ensureBrowser(), args: [...LAUNCH_ARGS] });
const rows = [...(await opening()), await dragging(12), await dragging(40)];
await browser.close();
await server.close();
console.table(Object.fromEntries(rows));

async function opening() {
  const times = [];
  let script = 0;
  for (let i = 0; i < 5; i++) {
    const page = await newPage();
    const bodies = [];
    page.on('response', (answer) => {
      if (answer.url().endsWith('.js')) bodies.push(answer.body());
    });
    const start = Date.now();
    await page.goto(url);
    await page.locator('html[data-ready]').waitFor();
    times.push(Date.now() - start);
    const sizes = await Promise.all(bodies.map(async (body) => gzipSync(await body).length));
    script = sizes.reduce((sum, size) => sum + size, 0);
    await page.context().close();
  }
  return [
    ['script before the first judgement, kB gzip', { median: Math.round(script / 1000), aim: 300 }],
    ['first judgement with hands on it, ms', { median: middle(times), worst: Math.max(...times), aim: 1500 }],
  ];
}

async function dragging(layers) {
  const page = await newPage();
  await page.goto(`${url}#open`);
  await page.locator('textarea').fill(JSON.stringify(sandwich(layers)));
  await page.getByRole('button', { name: 'Open the text' }).click();
  const grip = page.locator('[data-grip="layers[2].margins.left.width"]');
  const box = await grip.boundingBox();
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  const frames = await page.evaluate(
    async ([x, y]) => {
      const stage = document.querySelector('.stage');
      const next = () => new Promise((resolve) => requestAnimationFrame(resolve));
      const spans = [];
      let last = await next();
      for (let i = 0; i < 120; i++) {
        const clientX = x + (i < 60 ? i : 120 - i);
        stage.dispatchEvent(
          new PointerEvent('pointermove', { pointerId: 1, clientX, clientY: y, bubbles: true }),
        );
        const now = await next();
        spans.push(now - last);
        last = now;
      }
      return spans.slice(1);
    },
    [x, y],
  );
  await page.mouse.up();
  await page.context().close();
  const sorted = frames.toSorted((a, b) => a - b);
  const p95 = Math.round(sorted[Math.floor(sorted.length * 0.95)] * 10) / 10;
  return [
    `frame while dragging, ${layers} layers, ms`,
    { median: middle(frames), p95, aim: layers > 12 ? 33 : 16.7 },
  ];
}

async function newPage() {
  const context = await browser.newContext({
    serviceWorkers: 'block',
    viewport: { width: 1440, height: 900 },
  });
  return context.newPage();
}

function middle(values) {
  const sorted = values.toSorted((a, b) => a - b);
  return Math.round(sorted[Math.floor(sorted.length / 2)] * 10) / 10;
}
