// A text inside a link: compressed, in letters that a link may hold. Nothing is sent anywhere. Reading bounds what comes in
// and what it swells to, so that a small hostile link cannot fill the memory.

export type Unpacked =
  { readonly kind: 'text'; readonly text: string } | { readonly kind: 'damaged'; readonly says: string };

const MOST_PACKED = 2_000_000;
const MOST_BYTES = 2_000_000;

export async function packedText(text: string): Promise<string> {
  const bytes = new TextEncoder().encode(text);
  const stream = new Blob([bytes]).stream().pipeThrough(new CompressionStream('deflate-raw'));
  return lettersOf(new Uint8Array(await new Response(stream).arrayBuffer()));
}

export async function unpackedText(letters: string): Promise<Unpacked> {
  const damaged = (why: string): Unpacked => ({ kind: 'damaged', says: `This link is damaged: ${why}.` });
  if (letters.length > MOST_PACKED) return damaged('it is longer than any build');
  const packed = bytesOf(letters);
  if (packed === null) return damaged('it holds signs that no link of this page has');
  try {
    const text = await inflated(packed);
    return text === null ? damaged('it swells to more than 2 MB') : { kind: 'text', text };
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
