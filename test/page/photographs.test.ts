import { deflateSync } from 'node:zlib';
import type { Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import {
  drawPicture,
  edgeBetween,
  keptAt,
  openPicture,
  pickAt,
  placeOf,
  type DrawnPicture,
  type Point,
} from './drawn-picture.ts';
import { faultsOfLooks, openPage } from './open-page.ts';
import { hasBrowser } from './shared-browser.ts';

/** A scale 1000 px long, a wire of 60 px, a tape of 240 px, all across the picture's middle. */
const DRAWN: DrawnPicture = {
  type: 'image/png',
  width: 2000,
  height: 1500,
  turned: 0,
  blur: 0,
  noise: 0,
  bars: [
    { x: -500, y: -400, width: 1000, height: 60 },
    { x: -500, y: -60, width: 1000, height: 60 },
    { x: -500, y: 200, width: 1000, height: 240 },
  ],
};
/** Pixels of the kept picture to one as drawn. */
const KEPT = 0.8;
/** The scale is 25 mm long. */
const PER_PIXEL = 25 / 1000;

describe.skipIf(!hasBrowser())('photographs', () => {
  for (const how of [
    { name: 'as drawn, PNG', ...DRAWN },
    { name: 'turned and blurred, JPEG', ...DRAWN, type: 'image/jpeg' as const, turned: 7.3, blur: 2.5 },
    {
      name: 'turned, blurred and noisy, WebP',
      ...DRAWN,
      type: 'image/webp' as const,
      turned: -31,
      blur: 1.5,
      noise: 24,
    },
  ])
    it(`should measure back what was drawn within what it says is uncertain (${how.name})`, async () => {
      const { page, wrongs } = await openPage('#photographs');
      await openPicture(page, how);
      const edge = (outside: Point, within: Point): Promise<Point> =>
        edgeBetween(page, keptAt(how, KEPT, outside), keptAt(how, KEPT, within));
      await scaleOn(page, edge);
      await page.getByRole('button', { name: 'Wire', exact: true }).click();
      for (const x of [-450, 450]) await pickAt(page, await edge({ x, y: -90 }, { x, y: -30 }));
      for (const x of [-450, 450]) await pickAt(page, await edge({ x, y: 30 }, { x, y: -30 }));
      await page.getByRole('button', { name: 'Tape', exact: true }).click();
      for (const x of [-450, 450]) await pickAt(page, await edge({ x, y: 150 }, { x, y: 300 }));
      for (const x of [450, -450]) await pickAt(page, await edge({ x, y: 500 }, { x, y: 300 }));
      await page.getByRole('button', { name: 'Distance', exact: true }).click();
      await pickAt(page, await edge({ x: 0, y: -90 }, { x: 0, y: -30 }));
      await pickAt(page, await edge({ x: 0, y: 150 }, { x: 0, y: 300 }));
      for (const [i, truth] of [60, 240, 260].map((pixels) => pixels * PER_PIXEL).entries()) {
        const [value, plusMinus] = await figureOf(page, i);
        expect(Math.abs(value - truth)).toBeLessThanOrEqual(plusMinus);
        expect(plusMinus).toBeLessThan(0.25);
      }
      expect(wrongs).toEqual([]);
    });

  it('should send a figure to a field, and take it through undo, saving and opening', async () => {
    const { page, wrongs } = await openPage('#photographs');
    await openPicture(page, DRAWN);
    await scaleOn(page, (outside, within) =>
      edgeBetween(page, keptAt(DRAWN, KEPT, outside), keptAt(DRAWN, KEPT, within)),
    );
    await pickAt(page, { x: 400, y: 300 });
    await pickAt(page, { x: 880, y: 300 });
    const row = page.locator('.side li').first();
    await row.getByRole('combobox').selectOption('former.chambers[0].width');
    await row.getByRole('button', { name: 'send to this field' }).click();
    await expect.poll(() => row.innerText()).toContain('stands behind');
    const [value] = await figureOf(page, 0);
    await page.evaluate(() => (location.hash = 'sheet'));
    await page.locator('[data-row]').first().waitFor();
    await page
      .getByRole('button', { name: /former/i })
      .first()
      .click();
    const field = page.locator('.field:has([data-field="former.chambers[0].width"])');
    await expect.poll(() => field.locator('input').inputValue()).toContain(`${value} mm ±`);
    await expect.poll(() => field.innerText()).toContain('measured on photo-1');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => field.innerText()).not.toContain('measured on');
    await page.getByRole('button', { name: 'Redo' }).click();
    await expect.poll(() => field.innerText()).toContain('measured on photo-1');
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    const path = await (await saving).path();

    const other = await openPage('#open');
    await other.page.locator('input[type=file]').setInputFiles(path);
    await other.page.locator('[data-row]').first().waitFor();
    await other.page.evaluate(() => (location.hash = 'photographs'));
    await other.page.locator('svg[role=application] image').waitFor();
    expect((await figureOf(other.page, 0))[0]).toBe(value);
    await expect.poll(() => other.page.locator('.side li').first().innerText()).toContain('stands behind');
    expect([...wrongs, ...other.wrongs]).toEqual([]);
  });

  it('should go from the field to where it was measured', async () => {
    const { page, wrongs } = await openPage('#photographs');
    await openPicture(page, DRAWN);
    await pickAt(page, { x: 100, y: 100 });
    await pickAt(page, { x: 900, y: 100 });
    await page.getByRole('button', { name: 'Set the scale' }).click();
    await pickAt(page, { x: 100, y: 200 });
    await pickAt(page, { x: 900, y: 200 });
    const row = page.locator('.side li').first();
    await row.getByRole('combobox').selectOption('former.height');
    await row.getByRole('button', { name: 'send to this field' }).click();
    await page.evaluate(() => (location.hash = 'sheet'));
    await page
      .getByRole('button', { name: /former/i })
      .first()
      .click();
    await page.getByRole('button', { name: 'measured on photo-1' }).click();
    await page.locator('.side li.chosen').waitFor();
    expect(wrongs).toEqual([]);
  });

  it('should let a point be dragged, or carried by keys, and the figure follow', async () => {
    const { page, wrongs } = await openPage('#photographs');
    await openPicture(page, DRAWN);
    await pickAt(page, { x: 100, y: 100 });
    await pickAt(page, { x: 900, y: 100 });
    await page.getByRole('button', { name: 'Set the scale' }).click();
    await pickAt(page, { x: 100, y: 300 });
    await pickAt(page, { x: 500, y: 300 });
    await expect.poll(async () => (await figureOf(page, 0))[0]).toBeCloseTo(5, 1);
    await page.mouse.move(...(await placeOf(page, { x: 500, y: 300 })));
    await page.mouse.down();
    await page.mouse.move(...(await placeOf(page, { x: 600, y: 300 })));
    await page.mouse.move(...(await placeOf(page, { x: 900, y: 300 })));
    await page.mouse.up();
    await expect.poll(async () => (await figureOf(page, 0))[0]).toBeCloseTo(10, 1);
    // the cross stands where the last point was picked
    await page.keyboard.press('Shift+ArrowRight');
    await page.keyboard.press('Shift+ArrowLeft');
    await pickAt(page, { x: 100, y: 300 });
    await page.keyboard.press('Backspace');
    await page.keyboard.press('m');
    for (let n = 0; n < 40; n++) await page.keyboard.press('Shift+ArrowRight');
    await page.keyboard.press('Enter');
    await expect.poll(async () => (await figureOf(page, 0))[0]).toBeCloseTo(5, 1);
    await page.keyboard.press('Control+z');
    await expect.poll(async () => (await figureOf(page, 0))[0]).toBeCloseTo(10, 1);
    expect(wrongs).toEqual([]);
  });

  it('should be measured on by keys alone', async () => {
    const { page, wrongs } = await openPage('#photographs');
    await openPicture(page, DRAWN);
    await page.getByRole('button', { name: 'Angle' }).focus();
    await page.keyboard.press('Enter');
    await page.locator('svg[role=application]').focus();
    const press = async (key: string, times = 1): Promise<void> => {
      for (let n = 0; n < times; n++) await page.keyboard.press(key);
    };
    await press('Shift+ArrowRight', 10);
    await press('Enter', 2);
    await press('Backspace');
    await press('Shift+ArrowLeft', 10);
    await press('Enter');
    await press('Shift+ArrowDown', 10);
    await press('Enter');
    expect((await figureOf(page, 0))[0]).toBe(90);
    await expect.poll(() => page.locator('.side .figure').first().innerText()).toContain('°');
    expect(wrongs).toEqual([]);
  });

  it('should straighten, and measure the same afterwards', async () => {
    const turned = { ...DRAWN, turned: 12 };
    const { page, wrongs } = await openPage('#photographs');
    await openPicture(page, turned);
    await page.getByRole('button', { name: 'Straighten' }).click();
    await pickAt(page, keptAt(turned, KEPT, { x: -500, y: -400 }));
    await pickAt(page, keptAt(turned, KEPT, { x: 500, y: -400 }));
    await expect.poll(() => page.locator('.side').innerText()).toMatch(/turned by -1[12]\.\d\d°/);
    await page.getByRole('button', { name: 'Scale', exact: true }).click();
    await pickAt(page, keptAt(turned, KEPT, { x: -500, y: -400 }));
    await pickAt(page, keptAt(turned, KEPT, { x: 500, y: -400 }));
    await page.getByRole('button', { name: 'Set the scale' }).click();
    await pickAt(page, keptAt(turned, KEPT, { x: -500, y: 0 }));
    await pickAt(page, keptAt(turned, KEPT, { x: 0, y: 0 }));
    const [value, plusMinus] = await figureOf(page, 0);
    expect(Math.abs(value - 5)).toBeLessThanOrEqual(plusMinus);
    expect(wrongs).toEqual([]);
  });

  it('should refuse what is damaged, too large, or no picture, in words, and go on', async () => {
    const { page, wrongs } = await openPage('#photographs');
    const whole = await drawPicture(page, DRAWN);
    const refusals = [
      { name: 'damaged.png', buffer: whole.subarray(0, 300), says: 'damaged' },
      { name: 'huge.png', buffer: emptyPng(10_000, 10_000), says: '40 million' },
      {
        name: 'photo.jpg',
        buffer: Buffer.from('{"format":"layerwright-design/1"}'),
        says: 'no JPEG, PNG or WebP',
      },
      {
        name: 'drawing.png',
        buffer: Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>'),
        says: 'no JPEG',
      },
      { name: 'long.png', buffer: Buffer.concat([whole, Buffer.alloc(20_000_000)]), says: '20 MB' },
    ];
    for (const { name, buffer, says } of refusals) {
      await page.locator('input[type=file]').setInputFiles({ name, mimeType: 'image/png', buffer });
      await expect.poll(() => page.locator('.refusal').innerText()).toContain(`${name}: `);
      await expect.poll(() => page.locator('.refusal').innerText()).toContain(says);
    }
    await openPicture(page, DRAWN);
    await expect
      .poll(() => page.locator('.side').innerText())
      .toContain('scaled down from 2000 x 1500 px to 1600 x 1200 px');
    expect(wrongs).toEqual([]);
  });

  it('should leave place and camera behind, and say when the file has no more room', async () => {
    const { page, wrongs } = await openPage('#photographs');
    const plain = await drawPicture(page, { ...DRAWN, type: 'image/jpeg', noise: 120 });
    const told = Buffer.from('Exif\0\0 48.8584 N 2.2945 E');
    const marked = Buffer.concat([
      plain.subarray(0, 2),
      Buffer.from([0xff, 0xe1, 0, told.length + 2]),
      told,
      plain.subarray(2),
    ]);
    const says = page.locator('.side .next span');
    for (let n = 1; n <= 15; n++) {
      await page
        .locator('input[type=file]')
        .setInputFiles({ name: 'noisy.jpg', mimeType: 'image/jpeg', buffer: marked });
      await says.filter({ hasText: 'noisy.jpg: ' }).waitFor();
      await expect.poll(() => page.locator('.strip input').isEnabled()).toBe(true);
      if ((await says.innerText()).includes('no room is left')) break;
    }
    expect(await says.innerText()).toContain('no room is left');
    const saving = page.waitForEvent('download');
    await page.keyboard.press('Control+s');
    const text = await (await saving).createReadStream().then(async (stream) => {
      const pieces: Buffer[] = [];
      for await (const piece of stream) pieces.push(piece as Buffer);
      return Buffer.concat(pieces);
    });
    expect(text.length).toBeLessThan(2_000_000);
    const { evidence } = JSON.parse(text.toString()) as { evidence: readonly { readonly file: string }[] };
    expect(evidence.length).toBeGreaterThan(3);
    for (const { file } of evidence)
      expect(Buffer.from(file.split(',')[1]!, 'base64').toString('latin1')).not.toContain('48.8584');
    expect(wrongs).toEqual([]);
  });

  it('should have no fault that axe finds, and not scroll sideways', async () => {
    const { page } = await openPage('#photographs');
    await openPicture(page, DRAWN);
    await pickAt(page, { x: 300, y: 300 });
    expect(await faultsOfLooks(page)).toEqual([]);
  });
});

/** Brings the drawn scale to 25 mm. */
async function scaleOn(page: Page, edge: (outside: Point, within: Point) => Promise<Point>): Promise<void> {
  await pickAt(page, await edge({ x: -540, y: -370 }, { x: -460, y: -370 }));
  await pickAt(page, await edge({ x: 540, y: -370 }, { x: 460, y: -370 }));
  await page.getByLabel('known length').fill('25 mm');
  await page.getByLabel('give or take').fill('0.02 mm');
  await page.getByRole('button', { name: 'Set the scale' }).click();
}

/** Value and half-width as the list shows them. */
async function figureOf(page: Page, row: number): Promise<readonly [number, number]> {
  const text = await page.locator('.side .figure b').nth(row).innerText();
  const [value = NaN, plusMinus = NaN] = text.split('±').map((part) => Number.parseFloat(part));
  return [value, plusMinus];
}

/** A whole and right PNG of one colour: small on the disk, huge once decoded. */
function emptyPng(width: number, height: number): Buffer {
  const chunk = (name: string, data: Buffer): Buffer => {
    const named = Buffer.concat([Buffer.from(name), data]);
    const size = Buffer.alloc(4);
    size.writeUInt32BE(data.length);
    const sum = Buffer.alloc(4);
    sum.writeUInt32BE(checksum(named));
    return Buffer.concat([size, named, sum]);
  };
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([1, 0, 0, 0, 0], 8);
  const rows = deflateSync(Buffer.alloc((1 + Math.ceil(width / 8)) * height));
  const start = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([start, chunk('IHDR', head), chunk('IDAT', rows), chunk('IEND', Buffer.alloc(0))]);
}

function checksum(bytes: Buffer): number {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? (sum >>> 1) ^ 0xedb88320 : sum >>> 1;
  }
  return (sum ^ 0xffffffff) >>> 0;
}
