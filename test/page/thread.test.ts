// The thread beside the page: lost, stuck, stopped; and what the page shows meanwhile.

import { deflateRawSync } from 'node:zlib';
import type { Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { firstBuild } from '#state/begin/demos.ts';
import { judged, openPage, verdictOf } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

describe.skipIf(!hasBrowser())('the thread that judges', () => {
  /** The sheet, with every thread that the page starts at hand. */
  async function sheet(): Promise<Page> {
    const { page } = await openPage();
    await page.evaluate(() => {
      const started: Worker[] = [];
      const Real = Worker;
      Object.assign(globalThis, { started });
      globalThis.Worker = class extends Real {
        constructor(...words: ConstructorParameters<typeof Worker>) {
          super(...words);
          started.push(this);
        }
      };
      location.hash = 'sheet';
    });
    await page.locator('#layers').waitFor();
    return page;
  }

  /** Another margin, which is judged anew. */
  async function change(page: Page, margin: string): Promise<void> {
    const field = page.locator('[data-field="layers[2].margins.left.width"]');
    if (!(await field.isVisible())) await page.locator('[data-row="2"]').click();
    await field.fill(margin);
    await field.press('Enter');
  }

  it('should be started anew when it crashes, say so, and judge all the same', async () => {
    const page = await sheet();
    await change(page, '2.9 mm');
    await judged(page);
    await page.evaluate(() => {
      const [thread] = (globalThis as unknown as { started: Worker[] }).started;
      // what is asked of it from now on, it does not hear
      thread!.postMessage = () => setTimeout(() => thread!.dispatchEvent(new ErrorEvent('error')), 50);
    });
    await change(page, '2.8 mm');
    await page.getByText('another was started').waitFor();
    await judged(page);
    expect(await page.evaluate(() => (globalThis as unknown as { started: unknown[] }).started.length)).toBe(
      2,
    );
    expect(await verdictOf(page)).not.toMatch(/judg/i);
    await change(page, '2.7 mm');
    await page.getByText('another was started').waitFor({ state: 'detached' });
    await page.reload();
    await page.locator('[data-row="2"]').click();
    await expect
      .poll(() => page.locator('[data-field="layers[2].margins.left.width"]').inputValue())
      .toBe('2.7 mm');
  });

  it('should show no older verdict while it is stuck, and let judging be stopped and begun again', async () => {
    const page = await sheet();
    await change(page, '2.9 mm');
    await judged(page);
    await page.evaluate(() => {
      const [thread] = (globalThis as unknown as { started: Worker[] }).started;
      thread!.postMessage = () => {};
    });
    await change(page, '2.8 mm');
    await expect.poll(() => verdictOf(page)).toBe('Judging …');
    await page.getByRole('button', { name: 'Stop', exact: true }).click();
    await expect.poll(() => verdictOf(page)).toBe('Not judged');
    await page.getByRole('button', { name: 'Judge it' }).click();
    await judged(page);
    expect(await verdictOf(page)).not.toMatch(/judg/i);
  });

  it('should let the page be used while it judges what takes long', async () => {
    const page = await sheet();
    const many = Array.from({ length: 10 }, (_, k) => `W${k}`);
    const heavy = {
      ...firstBuild,
      windings: many.map((id, k) => ({ id, circuit: k % 2 ? 'pri' : 'out', wire: { conductor: '0.2 mm' } })),
      circuits: [
        { id: 'pri', role: 'mains' },
        { id: 'out', role: 'touchable' },
      ],
      workingVoltages: [],
      converter: undefined,
      core: { bond: 'floating' },
      layers: many.flatMap((winding) => [
        { kind: 'winding', winding, turns: 5 },
        { kind: 'tape', plies: 1, plyThickness: '0.05 mm' },
      ]),
      outside: [],
      bridges: [],
      parts: [],
      evidence: [],
    };
    const link = deflateRawSync(Buffer.from(JSON.stringify(heavy))).toString('base64url');
    await page.evaluate((hash) => (location.hash = hash), `build=${link}`);
    await page.locator('[data-row="19"]').waitFor();
    // it is drawn before it is judged
    await page.locator('.section canvas').first().waitFor();
    expect(await page.locator('.judging, #verdict-words:has-text("Judging")').count()).toBeGreaterThan(0);
    // the longest that the page stood still
    const longest = await page.evaluate(
      () =>
        new Promise<number>((done) => {
          let last = performance.now();
          let most = 0;
          const until = last + 1500;
          const tick = (): void => {
            const now = performance.now();
            most = Math.max(most, now - last);
            last = now;
            if (now < until) setTimeout(tick, 0);
            else done(most);
          };
          tick();
        }),
    );
    console.log(`heavy build: the page stood still for at most ${Math.round(longest)} ms`);
    await judged(page);
    expect(await verdictOf(page)).not.toMatch(/judg/i);
  });
});
