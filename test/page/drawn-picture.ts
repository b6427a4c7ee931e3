// Pictures of things whose sizes are known, drawn in the browser's own canvas: turned, blurred, noisy, in each format; and
// the eye that finds an edge on the picture as the page keeps it.

import type { Page } from 'playwright';

export interface DrawnPicture {
  readonly type: 'image/png' | 'image/jpeg' | 'image/webp';
  readonly width: number;
  readonly height: number;
  /** Degrees that all of it is turned. */
  readonly turned: number;
  /** Pixels. */
  readonly blur: number;
  /** Grey steps, either way. */
  readonly noise: number;
  /** Dark bars, in pixels of the unturned picture about its middle. */
  readonly bars: readonly Bar[];
}

export interface Bar {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

export async function drawPicture(page: Page, picture: DrawnPicture): Promise<Buffer> {
  const letters = await page.evaluate(async ({ type, width, height, turned, blur, noise, bars }) => {
    const canvas = document.createElement('canvas');
    canvas.width = width;
    canvas.height = height;
    const pen = canvas.getContext('2d')!;
    pen.fillStyle = '#cfcabd';
    pen.fillRect(0, 0, width, height);
    pen.filter = `blur(${blur}px)`;
    pen.translate(width / 2, height / 2);
    pen.rotate((turned * Math.PI) / 180);
    pen.fillStyle = '#2b2320';
    for (const bar of bars) pen.fillRect(bar.x, bar.y, bar.width, bar.height);
    const data = pen.getImageData(0, 0, width, height);
    let seed = 20260219;
    for (let i = 0; i < data.data.length; i++) {
      seed = (seed * 1664525 + 1013904223) % 4294967296;
      if (i % 4 !== 3) data.data[i] = data.data[i]! + (seed / 4294967296 - 0.5) * 2 * noise;
    }
    pen.putImageData(data, 0, 0);
    const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, type, 0.9));
    const bytes = new Uint8Array(await blob!.arrayBuffer());
    let signs = '';
    for (const byte of bytes) signs += String.fromCharCode(byte);
    return btoa(signs);
  }, picture);
  return Buffer.from(letters, 'base64');
}

/** Where a point of the unturned drawing, told from its middle, lies on the picture as kept. */
export function keptAt({ width, height, turned }: DrawnPicture, kept: number, { x, y }: Point): Point {
  const angle = (turned * Math.PI) / 180;
  return {
    x: (width / 2 + x * Math.cos(angle) - y * Math.sin(angle)) * kept,
    y: (height / 2 + x * Math.sin(angle) + y * Math.cos(angle)) * kept,
  };
}

/** The place between two points of the kept picture where light turns to dark: half way from the one to the other. */
export const edgeBetween = (page: Page, from: Point, to: Point): Promise<Point> =>
  page.evaluate(
    async ([a, b]) => {
      const image = new Image();
      image.src = document.querySelector('svg[role=application] image')!.getAttribute('href')!;
      await image.decode();
      const canvas = document.createElement('canvas');
      canvas.width = image.naturalWidth;
      canvas.height = image.naturalHeight;
      const pen = canvas.getContext('2d')!;
      pen.drawImage(image, 0, 0);
      const { data, width } = pen.getImageData(0, 0, canvas.width, canvas.height);
      const grey = (x: number, y: number): number => data[(Math.round(y) * width + Math.round(x)) * 4]!;
      // centres of pixels lie half a pixel inward
      const smooth = (x: number, y: number): number => {
        const [u, v] = [x - 0.5, y - 0.5];
        const [i, j] = [Math.floor(u), Math.floor(v)];
        const [s, t] = [u - i, v - j];
        return (
          (grey(i, j) * (1 - s) + grey(i + 1, j) * s) * (1 - t) +
          (grey(i, j + 1) * (1 - s) + grey(i + 1, j + 1) * s) * t
        );
      };
      const count = 400;
      const at = (k: number) => ({
        x: a!.x + ((b!.x - a!.x) * k) / count,
        y: a!.y + ((b!.y - a!.y) * k) / count,
      });
      const levels = Array.from({ length: count + 1 }, (_, k) => smooth(at(k).x, at(k).y));
      const half = (levels[0]! + levels[count]!) / 2;
      return at(levels.findIndex((level) => level < half));
    },
    [from, to] as const,
  );

/** Where a point of the picture lies on the page. */
export const placeOf = (page: Page, point: Point): Promise<[number, number]> =>
  page.evaluate(({ x, y }) => {
    const paper = document.querySelector<SVGGElement>('svg[role=application] > g')!;
    const { x: left, y: top } = new DOMPoint(x, y).matrixTransform(paper.getScreenCTM()!);
    return [left, top];
  }, point);

export const pickAt = async (page: Page, point: Point): Promise<void> =>
  page.mouse.click(...(await placeOf(page, point)));

/** Opened on the page of photographs. */
export async function openPicture(page: Page, picture: DrawnPicture): Promise<void> {
  const buffer = await drawPicture(page, picture);
  const name = `coil.${picture.type.slice(6)}`;
  await page.locator('input[type=file]').setInputFiles({ name, mimeType: picture.type, buffer });
  await page.locator('svg[role=application] image').waitFor();
}
