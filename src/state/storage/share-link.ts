// A whole build inside a link's fragment: compressed JSON in letters that a link may hold. Nothing is sent anywhere.
// Reading bounds what comes in and what it swells to, so that a small hostile link cannot fill the memory.

import type { DesignFile } from '#model/schema/schema.ts';
import { openable, type Openable } from './import-design.ts';

export const SHARE_PREFIX = 'build=';
const MOST_PACKED = 2_000_000;
const MOST_BYTES = 2_000_000;

export async function shareFragment(doc: DesignFile): Promise<string> {
  const text = new TextEncoder().encode(JSON.stringify(doc));
  const stream = new Blob([text]).stream().pipeThrough(new CompressionStream('deflate-raw'));
  const packed = new Uint8Array(await new Response(stream).arrayBuffer());
  return SHARE_PREFIX + lettersOf(packed);
}

/** `fragment` without its leading `#`. */
export async function readFragment(fragment: string): Promise<Openable> {
  const damaged = (why: string): Openable => ({ kind: 'refused', says: `This link is damaged: ${why}.` });
  const letters = fragment.slice(SHARE_PREFIX.length);
  if (letters.length > MOST_PACKED) return damaged('it is longer than any build');
  const packed = bytesOf(letters);
  if (packed === null) return damaged('it holds signs that no link of this page has');
  try {
    const text = await inflated(packed);
    if (text === null) return damaged('it swells to more than 2 MB');
    return openable(text);
  } catch {
    return damaged('what it holds cannot be unpacked, perhaps because its end is missing');
  }
}

async function inflated(packed: Uint8Array<ArrayBuffer>): Promise<string | null> {
  const reader = new Blob([packed]).stream().pipeThrough(new DecompressionStream('deflate-raw')).getReader();
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let text = '';
  let size = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return text + decoder.decode();
    size += value.byteLength;
    if (size > MOST_BYTES) {
      await reader.cancel();
      return null;
    }
    text += decoder.decode(value, { stream: true });
  }
}

function lettersOf(bytes: Uint8Array): string {
  let signs = '';
  for (const byte of bytes) signs += String.fromCharCode(byte);
  return btoa(signs).replace(/\+/g, '-').replace(/\//g, '_').replace(/=+$/, '');
}

function bytesOf(letters: string): Uint8Array<ArrayBuffer> | null {
  if (letters === '' || !/^[A-Za-z0-9_-]+$/.test(letters)) return null;
  try {
    const signs = atob(letters.replace(/-/g, '+').replace(/_/g, '/'));
    return Uint8Array.from(signs, (sign) => sign.charCodeAt(0));
  } catch {
    return null;
  }
}
