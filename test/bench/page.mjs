// `npm run bench:page`: what the built page costs in a browser, as a table. Readings depend on the machine; they are told,
// never tested. A drag is 120 moves of one edge, one a frame; what is judged at once is drawn before the next.

import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { chromium } from 'playwright';
import { preview } from 'vite';
import { ensureBrowser, LAUNCH_ARGS } from '#test/browser.mjs';
import { sandwich } from './builds.ts';
import { fieldFrames } from './field-frames.mjs';
import { yardstick } from './yardstick.ts';

const server = await preview({ preview: { port: 0, host: '127.0.0.1' }, logLevel: 'error' });
const url = server.resolvedUrls.local[0];
const browser = await chromium.launch({ executablePath: ensureBrowser(), args: [...LAUNCH_ARGS] });
const drill = JSON.parse(readFileSync('static/demos/flea-market-drill.json', 'utf8'));
const timer = readFileSync('static/demos/greenhouse-timer.json', 'utf8');
const margin = 'layers[0].margins.left.width';
const fieldRows = () => fieldFrames({ openSheet, take }, timer, margin);
// one part alone: `npm run bench:page -- field`
const rows = process.argv[2] === 'field' ? await fieldRows() : await all();
const stick = await onPage(yardstick);
rows.unshift(['yardstick: a million heap operations, ms', { median: rounded(stick) }]);
for (const [name, row] of rows.slice(1))
  if (name.endsWith(', ms') && row.median !== undefined) row.yardsticks = rounded(row.median / stick);
await browser.close();
await server.close();
console.table(Object.fromEntries(rows));

/** A function that is whole in itself, as the page runs it. */
async function onPage(work) {
  const page = await newPage();
  // what runs this file may have wrapped the names of functions
  const answer = await page.evaluate(`(() => { const __name = (named) => named; return (${work})(); })()`);
  await page.context().close();
  return answer;
}

async function all() {
  return [
    ...(await fieldRows()),
    ...(await opening()),
    ...(await changing(margin, 16)),
    await dragging('the demo', JSON.parse(timer), margin, 16.7),
    await dragging('12 layers', sandwich(12), 'layers[2].margins.left.width', 16.7),
    await dragging('40 layers', sandwich(40), 'layers[2].margins.left.width', 33),
    await dragging('many unknowns', drill, margin, 33),
  ];
}

async function opening() {
  const times = [];
  let script = 0;
  for (let i = 0; i < 5; i++) {
    const page = await newPage();
    const bodies = [];
    const weigh = (answer) => {
      if (answer.url().endsWith('.js')) bodies.push(answer.body());
    };
    page.on('response', weigh);
    const start = Date.now();
    await page.goto(url);
    await page.locator('html[data-ready]').waitFor();
    times.push(Date.now() - start);
    page.off('response', weigh);
    const sizes = await Promise.all(bodies.map(async (body) => gzipSync(await body).length));
    script = sizes.reduce((sum, size) => sum + size, 0);
    await page.context().close();
  }
  return [
    ['script before the first judgement, kB gzip', { median: Math.round(script / 1000), aim: 300 }],
    ['first judgement with hands on it, ms', { median: middle(times), worst: Math.max(...times), aim: 1500 }],
  ];
}

/**
 * The demo after a change: from the event to the last stroke of what shows its judgement, and to the end of that frame,
 * when the browser has laid out and painted. The wait for the frame is left out; where it is judged beside the page all of
 * the wait counts.
 */
async function changing(id, aim) {
  const page = await openSheet(timer);
  const [x, y] = await take(page, id);
  const times = await page.evaluate(
    async ([x, y]) => {
      const stage = document.querySelector('.stage');
      const frame = () => new Promise((resolve) => requestAnimationFrame(() => resolve(performance.now())));
      const turn = () =>
        new Promise((resolve) => {
          const channel = new MessageChannel();
          channel.port1.onmessage = resolve;
          channel.port2.postMessage(null);
        });
      const times = [];
      for (let i = 0; times.length < 160; i++) {
        await new Promise((resolve) => setTimeout(resolve, 50));
        let begun = 0;
        void frame().then((at) => (begun = at));
        const start = performance.now();
        // far enough for another figure at each step
        const clientX = x + 6 * (i % 12) - 30;
        stage.dispatchEvent(new MouseEvent('mousemove', { clientX, clientY: y, bubbles: true }));
        await turn();
        const done = performance.now();
        const isJudged = document.querySelector('.judging') === null;
        // a frame that came between tells nothing of the wait for it
        if (begun !== 0) continue;
        await frame();
        while (document.querySelector('.judging') !== null) await frame();
        const waits = isJudged ? begun - done : 0;
        const drawn = performance.now() - start - waits;
        await turn();
        times.push([drawn, performance.now() - start - waits]);
      }
      return times.slice(80);
    },
    [x, y],
  );
  await page.mouse.up();
  await page.context().close();
  const ends = [
    'to the last stroke',
    'to the end of the frame (layout, paint and compositing by the browser)',
  ];
  return ends.map((until, k) => {
    const each = times.map((spans) => spans[k]).toSorted((a, b) => a - b);
    const p95 = rounded(each[Math.floor(each.length * 0.95)]);
    return [`judge and redraw the demo, ${until}, ms`, { median: middle(each), p95, aim }];
  });
}

/** A design on the sheet. */
async function openSheet(text) {
  const page = await newPage();
  await page.goto(`${url}#open`);
  await page.locator('textarea').fill(text);
  await page.getByRole('button', { name: 'Open the text' }).click();
  return page;
}

/** Takes a grip; where it lies. */
async function take(page, id) {
  const box = await page.locator(`[data-grip="${id}"]`).boundingBox();
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  return [x, y];
}

async function dragging(build, design, id, aim) {
  const page = await openSheet(JSON.stringify(design));
  const [x, y] = await take(page, id);
  const frames = await page.evaluate(
    async ([x, y]) => {
      const stage = document.querySelector('.stage');
      const next = () => new Promise((resolve) => requestAnimationFrame(resolve));
      const spans = [];
      let last = await next();
      for (let i = 0; i < 120; i++) {
        const clientX = x + (i < 60 ? i : 120 - i);
        stage.dispatchEvent(new MouseEvent('mousemove', { clientX, clientY: y, bubbles: true }));
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
  const p95 = rounded(sorted[Math.floor(sorted.length * 0.95)]);
  const worst = rounded(sorted.at(-1));
  return [`frame while dragging, ${build}, ms`, { median: middle(frames), p95, worst, aim }];
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
  return rounded(sorted[Math.floor(sorted.length / 2)]);
}

function rounded(value) {
  return Math.round(value * 10) / 10;
}
