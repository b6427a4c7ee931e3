// The page of the field in a browser: how long a look takes to stand on it, and its frames while the fine answer is worked
// out, while an edge is dragged on it, and while the build changes under it by steps undone and redone ten times a second.

/** `openSheet`, `take`: of the page's benchmark. Rows for its table. */
export async function fieldFrames({ openSheet, take }, text, id) {
  const page = await openSheet(text);
  const [x, y] = await take(page, id);
  await page.mouse.move(x + 12, y, { steps: 4 });
  await page.mouse.up();
  const cold = await page.evaluate(looked, 'location');
  await page.getByText('the fine answer is being worked out').waitFor({ timeout: 60_000 });
  const fine = await page.evaluate(framesUntil, 'two meshes agree');
  const warm = [];
  for (let i = 0; i < 9; i++) warm.push(await page.evaluate(looked, i % 2 === 0 ? 'z' : 'y'));
  await page.waitForTimeout(1000);
  const changing = await page.evaluate(framesWhileChanging, 180);
  await page.waitForTimeout(1000);
  const held = await take(page, id);
  const { spans, pictures } = await page.evaluate(framesWhileDragging, [...held, 240]);
  await page.mouse.up();
  await page.context().close();
  return [
    ['field, page opened to first look (judging and loading too), ms', { median: Math.round(cold) }],
    ['field, change to first look, ms', { ...spread(warm), aim: 300 }],
    ['frame while the fine field is worked out, ms', { ...spread(fine), aim: 16.7 }],
    ['frame while an edge is dragged, a step a frame, ms', { ...spread(spans), aim: 16.7 }],
    ['pictures of the field in those frames', { median: pictures }],
    ['frame while the build changes ten times a second, ms', { ...spread(changing), aim: 16.7 }],
  ];
}

/** Milliseconds until another picture stands there. */
async function looked(how) {
  const before = document.querySelector('[data-pictures]')?.dataset.pictures ?? '0';
  const start = performance.now();
  if (how === 'location') location.hash = 'field';
  else document.body.dispatchEvent(new KeyboardEvent('keydown', { key: how, ctrlKey: true, bubbles: true }));
  for (;;) {
    await new Promise((resolve) => requestAnimationFrame(resolve));
    const now = document.querySelector('[data-pictures]')?.dataset.pictures ?? '0';
    if (now !== '0' && now !== before) return performance.now() - start;
    if (performance.now() - start > 30_000) throw new Error('no other picture came');
  }
}

async function framesUntil(words) {
  const next = () => new Promise((resolve) => requestAnimationFrame(resolve));
  const spans = [];
  let last = await next();
  while (![...document.querySelectorAll('.basis')].some((line) => line.textContent.includes(words))) {
    const now = await next();
    spans.push(now - last);
    last = now;
  }
  return spans;
}

async function framesWhileChanging(count) {
  const next = () => new Promise((resolve) => requestAnimationFrame(resolve));
  const spans = [];
  let last = await next();
  for (let i = 0; i < count; i++) {
    if (i % 6 === 0) {
      const key = (i / 6) % 2 === 0 ? 'y' : 'z';
      document.body.dispatchEvent(new KeyboardEvent('keydown', { key, ctrlKey: true, bubbles: true }));
    }
    const now = await next();
    spans.push(now - last);
    last = now;
  }
  return spans;
}

async function framesWhileDragging([x, y, count]) {
  const stage = document.querySelector('.stage');
  const pictures = () => Number(document.querySelector('[data-pictures]').dataset.pictures);
  const next = () => new Promise((resolve) => requestAnimationFrame(resolve));
  const [spans, before] = [[], pictures()];
  let last = await next();
  for (let i = 0; i < count; i++) {
    // to and fro, a pixel a frame
    const clientX = x + 30 - Math.abs(30 - (i % 60));
    stage.dispatchEvent(new MouseEvent('mousemove', { clientX, clientY: y, bubbles: true }));
    const now = await next();
    spans.push(now - last);
    last = now;
  }
  return { spans, pictures: pictures() - before };
}

function spread(values) {
  const sorted = values.toSorted((a, b) => a - b);
  const at = (part) => Math.round(10 * sorted[Math.floor((sorted.length - 1) * part)]) / 10;
  return { median: at(0.5), p95: at(0.95), worst: at(1) };
}
