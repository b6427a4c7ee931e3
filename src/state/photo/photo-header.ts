// What the first bytes of a picture say of it: its kind and its size, before anything is decoded. A picture that would
// fill the memory is found out here; so is a file that is no picture, whatever its name.

export type PictureHeader =
  | { readonly kind: 'picture'; readonly type: string; readonly width: number; readonly height: number }
  | { readonly kind: 'no-picture' }
  | { readonly kind: 'damaged'; readonly type: string };

export function pictureHeader(bytes: Uint8Array): PictureHeader {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (starts(bytes, 0, PNG)) return sized('image/png', pngSize(view));
  if (starts(bytes, 0, JPEG)) return sized('image/jpeg', jpegSize(view));
  if (starts(bytes, 0, signs('RIFF')) && starts(bytes, 8, signs('WEBP')))
    return sized('image/webp', webpSize(bytes, view));
  return { kind: 'no-picture' };
}

type Size = readonly [width: number, height: number];

function sized(type: string, size: Size | null): PictureHeader {
  if (size === null || size[0] < 1 || size[1] < 1) return { kind: 'damaged', type };
  return { kind: 'picture', type, width: size[0], height: size[1] };
}

const signs = (text: string): readonly number[] => [...text].map((sign) => sign.charCodeAt(0));
const PNG = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
const JPEG = [0xff, 0xd8, 0xff];

const starts = (bytes: Uint8Array, at: number, with_: readonly number[]): boolean =>
  with_.every((byte, i) => bytes[at + i] === byte);

/** The header chunk must come first. */
const pngSize = (view: DataView): Size | null =>
  view.byteLength < 24 || view.getUint32(12) !== 0x49484452 ? null : [view.getUint32(16), view.getUint32(20)];

/** Walks from marker to marker up to the frame header; what is no marker where one must be is damage. */
function jpegSize(view: DataView): Size | null {
  let at = 2;
  while (at + 9 < view.byteLength) {
    if (view.getUint8(at) !== 0xff) return null;
    const marker = view.getUint8(at + 1);
    if (marker === 0xff) at += 1;
    else if (isFrame(marker)) return [view.getUint16(at + 7), view.getUint16(at + 5)];
    else if (marker === 0xda || marker === 0xd9) return null;
    else if (marker === 0x01 || (marker >= 0xd0 && marker <= 0xd8)) at += 2;
    else at += 2 + Math.max(2, view.getUint16(at + 2));
  }
  return null;
}

/** All frame headers; 0xC4, 0xC8 and 0xCC are tables and reserved. */
const isFrame = (marker: number): boolean =>
  marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);

function webpSize(bytes: Uint8Array, view: DataView): Size | null {
  if (view.byteLength < 30) return null;
  if (starts(bytes, 12, signs('VP8X'))) return [1 + triple(view, 24), 1 + triple(view, 27)];
  if (starts(bytes, 12, signs('VP8L')) && view.getUint8(20) === 0x2f) {
    const packed = view.getUint32(21, true);
    return [1 + (packed & 0x3fff), 1 + ((packed >>> 14) & 0x3fff)];
  }
  if (starts(bytes, 12, signs('VP8 ')) && starts(bytes, 23, [0x9d, 0x01, 0x2a]))
    return [view.getUint16(26, true) & 0x3fff, view.getUint16(28, true) & 0x3fff];
  return null;
}

const triple = (view: DataView, at: number): number =>
  view.getUint16(at, true) + view.getUint8(at + 2) * 0x10000;
