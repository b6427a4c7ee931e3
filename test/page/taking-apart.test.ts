import type { Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { faultsOfLooks, judged, openKept, openPage, seeMargin, typeMargin } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

describe.skipIf(!hasBrowser())('taking apart', () => {
  it('should fill a build from the outermost layer inward and narrow its judgement', async () => {
    const { page, wrongs } = await openPage('#taking-apart');
    await begin(page);
    await page.getByRole('button', { name: /What comes off next/ }).click();
    for (const [i, what] of [
      'tape from flange to flange',
      'a winding of Output',
      'tape from flange to flange',
      'a winding of Primary',
    ].entries()) {
      await page
        .getByRole('group', { name: 'what came off' })
        .getByRole('button', { name: what, exact: true })
        .click();
      await expect.poll(() => page.locator('.apart > ol > li').count()).toBe(7 + i);
      // what came off lies open; on to the next thing
      await page.getByRole('button', { name: 'Next step' }).click();
    }
    // each piece lies in its tray, and what to look for is drawn
    await expect.poll(() => page.locator('.trays li').count()).toBe(5);
    await page.locator('.trays li').first().getByRole('button').click();
    await expect.poll(() => page.locator('.apart > ol > li.open').innerText()).toContain('Outer wrap');
    await expect.poll(() => page.locator('figure svg').count(), { timeout: 20_000 }).toBe(2);
    // what each answer would let a pair reach stands before it is given
    const decides = page.getByRole('region', { name: 'What this step decides' });
    await expect
      .poll(() => decides.locator('tbody th').allInnerTexts(), { timeout: 20_000 })
      .toEqual(['1', '2', '3', '4']);
    expect(await decides.locator('tr[aria-current]').count()).toBe(0);
    await page.locator('.apart > ol > li.open [data-field$=".plies"]').fill('3');
    await page.keyboard.press('Enter');
    await expect.poll(() => decides.locator('tr[aria-current] th').innerText()).toBe('3');
    expect(await decides.locator('tr[aria-current] td').innerText()).toMatch(/of reinforced: /);
    await page.locator('.apart > ol > li.open [data-field$=".plies"]').fill('?');
    await page.keyboard.press('Enter');
    await expect.poll(() => decides.locator('tr[aria-current]').count()).toBe(0);
    const open = async (): Promise<number> =>
      Number.parseInt(await page.locator('.side [role=status]').innerText());
    await judged(page);
    const before = await open();
    expect(before).toBeGreaterThan(5);
    await page.getByRole('button', { name: /Core off/ }).click();
    await page.locator('[data-field="core.bond"]').selectOption('floating');
    await expect.poll(open).toBe(before - 1);
    // one key puts it back to not known
    await page.locator('[data-field="core.bond"]').focus();
    await page.keyboard.press('?');
    await expect.poll(open).toBe(before);
    await page.locator('[data-field="core.outerGap"]').fill('?');
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('.side ol li').count()).toBeGreaterThan(2);
    expect(await page.locator('.side ol').innerText()).toMatch(/found/);
    await page.evaluate(() => (location.hash = 'sheet'));
    await page.locator('[data-row="0"]').waitFor();
    const rows = await page.locator('[data-row]').allInnerTexts();
    expect(rows.filter((row) => /Tape|Outer wrap/.test(row)).length).toBe(2);
    expect(wrongs).toEqual([]);
  });

  it('should keep the cautions in sight however far one scrolls', async () => {
    const { page } = await openPage('#taking-apart', { viewport: { width: 390, height: 600 } });
    await page.getByRole('button', { name: 'Next step' }).scrollIntoViewIfNeeded();
    await page.evaluate(() => scrollTo(0, 400));
    const top = await page
      .getByText('Before you touch it')
      .evaluate((node) => node.getBoundingClientRect().top);
    expect(top).toBeGreaterThanOrEqual(0);
    expect(top).toBeLessThan(100);
  });

  it('should not lose the build that lay on the sheet', async () => {
    const { page, wrongs } = await openPage('#sheet');
    await typeMargin(page, '1.23 mm');
    await page.evaluate(() => (location.hash = 'taking-apart'));
    await begin(page);
    await openKept(page, 'Wall supply of a greenhouse irrigation timer');
    await seeMargin(page, '1.23 mm');
    expect(wrongs).toEqual([]);
  });

  it('should have the same build after a reload, with every fact', async () => {
    const { page, wrongs } = await openPage('#taking-apart');
    await begin(page);
    await page.getByRole('button', { name: /Core off/ }).click();
    await page.locator('[data-field="core.bond"]').selectOption('floating');
    await page.waitForTimeout(400);
    await page.reload();
    await page.getByText('Transformer taken apart').first().waitFor();
    await page.getByRole('button', { name: /Core off/ }).click();
    await expect.poll(() => page.locator('[data-field="core.bond"]').inputValue()).toBe('floating');
    expect(wrongs).toEqual([]);
  });

  it('should have no fault that axe finds at any step, and not scroll sideways', async () => {
    const { page } = await openPage('#taking-apart');
    const count = await page.locator('.apart > ol > li').count();
    for (let step = 0; step < count; step++) {
      await page.locator('.apart > ol > li > button').nth(step).click();
      expect(await faultsOfLooks(page), `step ${step}`).toEqual([]);
    }
  });
});

async function begin(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'begin with an empty one' }).click();
  await page.getByText('Transformer taken apart').first().waitFor();
  await page.getByRole('heading', { name: 'Taking apart' }).waitFor();
}
