// What the format takes besides plain lengths, entered by hand on the sheet: a wire by its gauge, two windings side by side,
// the tube, what was measured in figures, how the temperature was taken. Each is drawn or told, changed, taken back, kept.

import { readFileSync } from 'node:fs';
import type { Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import type { DesignFile } from '#model/schema/schema.ts';
import { judged, openPage } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

const field = (page: Page, path: string) => page.locator(`[data-field="${path}"]`);

async function type(page: Page, path: string, text: string): Promise<void> {
  await field(page, path).fill(text);
  await field(page, path).press('Enter');
}

async function saved(page: Page): Promise<DesignFile> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Control+s')]);
  return JSON.parse(readFileSync(await download.path(), 'utf8')) as DesignFile;
}

const undo = (page: Page): Promise<void> => page.getByRole('button', { name: 'Undo' }).click();

/** The drawing as it stands once all is judged. */
async function drawn(page: Page): Promise<string> {
  await judged(page);
  await page.mouse.move(2, 2);
  await page.waitForTimeout(300);
  return (await page.locator('.stage').screenshot()).toString('base64');
}

async function reloaded(page: Page): Promise<void> {
  await page.waitForTimeout(700);
  await page.reload();
  await page.locator('[data-row]').first().waitFor();
}

const openRow = (page: Page, layer: number): Promise<void> => page.locator(`[data-row="${layer}"]`).click();
const openGroup = (page: Page, name: string): Promise<void> =>
  page.locator('summary', { hasText: name }).click();

describe.skipIf(!hasBrowser())('fields of the format', () => {
  it('should take a wire by its gauge, draw it, and keep it as it was typed', async () => {
    const { page, wrongs } = await openPage('#sheet');
    const before = await drawn(page);
    await openRow(page, 0);
    await type(page, 'windings[0].wire.overallDiameter', '');
    await type(page, 'windings[0].wire.conductor', '33 AWG');
    // ASTM B258: 0.127 mm x 92^((36 - 33) / 39) = 0.1798 mm
    await expect.poll(() => page.locator('[data-row="0"]').innerText()).toContain('0.1798');
    await openRow(page, 0);
    expect(await drawn(page)).not.toBe(before);
    expect((await saved(page)).windings[0]?.wire.conductor).toBe('33 AWG');
    await openRow(page, 0);
    await type(page, 'windings[0].wire.conductor', '30 AWG');
    await undo(page);
    await reloaded(page);
    await openRow(page, 0);
    await expect.poll(() => field(page, 'windings[0].wire.conductor').inputValue()).toBe('33 AWG');
    expect(wrongs).toEqual([]);
  });

  it('should lay two windings side by side in one band', async () => {
    const { page, wrongs } = await openPage('#sheet');
    await page.locator('[data-insert="1"]').focus();
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'winding S', exact: true }).click();
    // P lies from 3 to 9 mm of 12, and 4 turns of 0.65 mm take 2.6 mm
    await type(page, 'layers[1].turns', '4');
    await type(page, 'layers[1].margins.left.width', '9.2 mm');
    const over = await drawn(page);
    const beside = field(page, 'layers[1].beside');
    await beside.check();
    expect(await drawn(page)).not.toBe(over);
    expect((await saved(page)).layers[1]).toMatchObject({
      kind: 'winding',
      winding: 'S',
      turns: 4,
      beside: true,
    });
    await undo(page);
    await expect.poll(() => beside.isChecked()).toBe(false);
    await page.getByRole('button', { name: 'Redo' }).click();
    await reloaded(page);
    await openRow(page, 1);
    await expect.poll(() => beside.isChecked()).toBe(true);
    expect(wrongs).toEqual([]);
  });

  it('should take the tube, without a fault while only its shape is said', async () => {
    const { page, wrongs } = await openPage('#sheet');
    await page.locator('[data-part="former"] > button').click();
    await field(page, 'former.tube').selectOption('round');
    await expect.poll(() => page.locator('section.verdict .stale').count()).toBe(0);
    await judged(page);
    await type(page, 'former.tube.width', '8 mm');
    await type(page, 'former.tube.depth', '1/2 in');
    await expect.poll(() => field(page, 'former.tube.depth').inputValue()).toBe('12.7 mm');
    expect((await saved(page)).former.tube).toEqual({ shape: 'round', width: '8 mm', depth: '12.7 mm' });
    await undo(page);
    await expect.poll(() => field(page, 'former.tube.depth').inputValue()).toBe('');
    await reloaded(page);
    await page.locator('[data-part="former"] > button').click();
    await expect.poll(() => field(page, 'former.tube.width').inputValue()).toBe('8 mm');
    await field(page, 'former.tube').selectOption('');
    expect((await saved(page)).former.tube).toBeUndefined();
    expect(wrongs).toEqual([]);
  });

  it('should take what was measured in figures, and give it up again', async () => {
    const { page, wrongs } = await openPage('#sheet');
    await openGroup(page, 'Evidence');
    const entries = (await saved(page)).evidence?.length ?? 0;
    await page.getByRole('button', { name: 'add evidence' }).click();
    const path = `evidence[${entries}]`;
    expect(await page.locator('.fault').count()).toBe(0);
    expect((await saved(page)).evidence?.length ?? 0).toBe(entries);
    await type(page, `${path}.says`, 'left margin under the glass');
    await field(page, `${path}.measured`).selectOption('distance');
    await type(page, `${path}.measured.value`, '3.02 mm');
    await type(page, `${path}.measured.plusMinus`, '0.04 mm');
    expect((await saved(page)).evidence?.[entries]).toMatchObject({
      measured: { kind: 'distance', value: '3.02 mm', plusMinus: '0.04 mm' },
    });
    await type(page, `${path}.measured.value`, '3.05 mm');
    await undo(page);
    await field(page, `${path}.measured`).selectOption('diameter');
    await reloaded(page);
    await openGroup(page, 'Evidence');
    await expect.poll(() => field(page, `${path}.measured.value`).inputValue()).toBe('3.02 mm');
    await expect.poll(() => field(page, `${path}.measured`).inputValue()).toBe('diameter');
    await field(page, `${path}.measured`).selectOption('');
    expect((await saved(page)).evidence?.[entries]).not.toHaveProperty('measured');
    expect(wrongs).toEqual([]);
  });

  it('should begin a working voltage without a fault, in the build once a voltage is given', async () => {
    const { page, wrongs } = await openPage('#sheet');
    await openGroup(page, 'Working voltages');
    const given = (await saved(page)).workingVoltages?.length ?? 0;
    await page.getByRole('button', { name: 'add a working voltage' }).click();
    const path = `workingVoltages[${given}]`;
    expect(await page.locator('.fault').count()).toBe(0);
    expect((await saved(page)).workingVoltages?.length ?? 0).toBe(given);
    await field(page, `${path}.rms`).fill('251 V');
    await page.keyboard.press('Tab');
    await expect
      .poll(() => field(page, `${path}.peak`).evaluate((it) => it === document.activeElement))
      .toBe(true);
    expect((await saved(page)).workingVoltages?.[given]).toMatchObject({ rms: '251 V', basis: 'measured' });
    await undo(page);
    await page.getByRole('button', { name: 'take out' }).last().click();
    expect((await saved(page)).workingVoltages?.length ?? 0).toBe(given);
    expect(wrongs).toEqual([]);
  });

  it('should take how the temperature was measured, and say what it changes', async () => {
    const { page, wrongs } = await openPage('#sheet');
    await openGroup(page, 'Supply and surroundings');
    await type(page, 'surroundings.hottestInsulation', '121 degC');
    await field(page, 'surroundings.temperature.method').selectOption('resistance');
    await field(page, 'surroundings.temperature.condition').selectOption('abnormal');
    expect((await saved(page)).surroundings).toMatchObject({
      hottestInsulation: '121 degC',
      temperature: { method: 'resistance', condition: 'abnormal' },
    });
    await undo(page);
    await reloaded(page);
    await openGroup(page, 'Supply and surroundings');
    await expect.poll(() => field(page, 'surroundings.temperature.method').inputValue()).toBe('resistance');
    await expect.poll(() => field(page, 'surroundings.temperature.condition').inputValue()).toBe('');
    expect(wrongs).toEqual([]);
  });

  it('should read an unfilled converter as not stated, once, and judge on', async () => {
    const { page, wrongs } = await openPage('#sheet', { viewport: { width: 390, height: 844 } });
    await judged(page);
    const before = await page.locator('#verdict-words').innerText();
    const group = page.locator('details', { has: page.locator('summary', { hasText: 'Converter' }) });
    await group.locator('summary').click();
    const takeOut = group.getByRole('button', { name: 'take it out' });
    if ((await takeOut.count()) > 0) await takeOut.last().click();
    await group.getByRole('button', { name: 'give the converter' }).click();
    await group.getByRole('button', { name: 'give the bulk capacitor' }).click();
    await judged(page);
    expect(await page.locator('section.verdict .stale').count()).toBe(0);
    expect(await page.locator('#verdict-words').innerText()).toBe(before);
    expect(await group.locator('[aria-invalid="true"]').count()).toBe(0);
    await expect.poll(() => group.locator('summary').innerText()).toContain('not stated yet');
    expect(wrongs).toEqual([]);
  });

  it('should show every button of a place or part in full on a narrow screen', async () => {
    const { page } = await openPage('#sheet', { viewport: { width: 390, height: 844 } });
    for (const [name, add] of [
      ['Outside the window', 'add a distance'],
      ['Bridging parts', 'add a bridging part'],
    ] as const) {
      await openGroup(page, name);
      await page.getByRole('button', { name: add, exact: true }).click();
    }
    const cut = await page.locator('details[open] button').evaluateAll((buttons) =>
      buttons
        .filter((button) => {
          const frame = button.closest('.grid, details')!.getBoundingClientRect();
          const box = button.getBoundingClientRect();
          return button.scrollWidth > button.clientWidth + 1 || box.right > frame.right + 1;
        })
        .map((button) => button.textContent?.trim()),
    );
    expect(cut).toEqual([]);
  });

  it('should keep a former, a material and a wire of one\u2019s own in the browser and in the file', async () => {
    const { page, wrongs } = await openPage('#sheet');
    await page.locator('[data-row="1"]').press('Enter');
    await page.getByRole('button', { name: 'keep this material for other builds' }).click();
    await page.getByLabel('name of the material').fill('yellow roll');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'use “yellow roll”' }).waitFor();
    const [saved] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save', exact: true }).click(),
    ]);
    const file = JSON.parse(readFileSync(await saved.path(), 'utf8')) as { templates?: unknown };
    expect(file.templates).toEqual([
      { name: 'yellow roll', material: expect.objectContaining({ material: expect.any(String) }) },
    ]);
    // in another build of the same browser
    await page.reload();
    await page.locator('[data-row="3"]').press('Enter');
    await page.getByRole('button', { name: 'use “yellow roll”' }).click();
    expect(wrongs).toEqual([]);
  });
});
