// A picture from the disk, made fit to be kept in a design file: looked at before it is decoded, scaled down, drawn anew so
// that where and with what it was taken is left behind. It happens in this browser; nothing is sent anywhere.

import { pictureHeader } from './photo-header.ts';

export type TakenPicture =
  | {
      readonly kind: 'taken';
      /** Data address. */
      readonly address: string;
      readonly width: number;
      readonly height: number;
      /** What was left out on the way, in words. */
      readonly says: string;
    }
  | { readonly kind: 'refused'; readonly says: string };

const MOST_BYTES = 20_000_000;
const MOST_PIXELS = 40_000_000;
/** Longest side and quality, the best first; the first that fits the room is taken. */
const TRIES: readonly (readonly [longest: number, quality: number])[] = [
  [1600, 0.86],
  [1600, 0.74],
  [1280, 0.74],
  [960, 0.74],
  [720, 0.7],
];

/** Signs of a design file that photographs may fill up to; the rest of its 2 MB is for the build. */
const MOST_IN_FILE = 1_900_000;
/** Of one photograph. */
const MOST_SIGNS = 450_000;

/** `held`: signs that the design file has already. */
export async function takePicture(file: File, held: number): Promise<TakenPicture> {
  const room = Math.min(MOST_SIGNS, MOST_IN_FILE - held);
  const refused = (says: string): TakenPicture => ({ kind: 'refused', says: `${file.name}: ${says}` });
  if (file.size > MOST_BYTES) return refused('more than 20 MB. Save it smaller and open that.');
  const bytes = await file.arrayBuffer().catch(() => null);
  if (bytes === null) return refused('could not be read from the disk.');
  const header = pictureHeader(new Uint8Array(bytes));
  if (header.kind === 'no-picture') return refused('no JPEG, PNG or WebP picture.');
  const damaged = 'the picture is damaged and cannot be shown. Take it from the camera once more.';
  if (header.kind === 'damaged') return refused(damaged);
  const { width, height, type } = header;
  if (width * height > MOST_PIXELS)
    return refused(
      `${width} x ${height} px are more than 40 million. Save it smaller, or cut out the part that matters.`,
    );
  const bitmap = await createImageBitmap(new Blob([bytes], { type })).catch(() => null);
  if (bitmap === null) return refused(damaged);
  try {
    return drawnAnew(bitmap, room) ?? refused('no room is left for it in the design file, which holds 2 MB.');
  } finally {
    bitmap.close();
  }
}

/** Null where even the smallest is too large for the room. */
function drawnAnew(bitmap: ImageBitmap, room: number): TakenPicture | null {
  for (const [longest, quality] of TRIES) {
    const factor = Math.min(1, longest / Math.max(bitmap.width, bitmap.height));
    const width = Math.max(1, Math.round(bitmap.width * factor));
    const height = Math.max(1, Math.round(bitmap.height * factor));
    const address = drawn(bitmap, width, height, quality);
    if (address === null || address.length > room) continue;
    const size = factor < 1 ? `scaled down from ${bitmap.width} x ${bitmap.height} px to` : 'kept at';
    const says = `${size} ${width} x ${height} px; place and camera data left out`;
    return { kind: 'taken', address, width, height, says };
  }
  return null;
}

function drawn(bitmap: ImageBitmap, width: number, height: number, quality: number): string | null {
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  const pen = canvas.getContext('2d', { alpha: false });
  if (pen === null) return null;
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, width, height);
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(bitmap, 0, 0, width, height);
  return canvas.toDataURL('image/jpeg', quality);
}
