// Reads one input as text, at most so much as a design file may hold; `-` is standard input.

import { closeSync, openSync, readSync } from 'node:fs';
import type { BadInput } from '#model/faults/bad-input.ts';

export type FileText =
  { readonly kind: 'text'; readonly text: string } | { readonly kind: 'bad'; readonly fault: BadInput };

/** One byte more than the model allows, so that it can tell that there was more. */
const MOST_BYTES = 2_000_001;

/** `expected`: what the caller takes, as a fault says it. */
export function readFile(file: string, expected = 'a design file'): FileText {
  try {
    const descriptor = file === '-' ? 0 : openSync(file, 'r');
    try {
      return decoded(readBounded(descriptor), expected);
    } finally {
      if (descriptor !== 0) closeSync(descriptor);
    }
  } catch (error) {
    const found = REASONS[(error as NodeJS.ErrnoException).code ?? ''];
    if (found === undefined) throw error;
    return bad(found, expected);
  }
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'no such file',
  ENOTDIR: 'no such file',
  EISDIR: 'a directory',
  EACCES: 'a file that may not be read',
  EPERM: 'a file that may not be read',
  ENAMETOOLONG: 'no such file: its name is too long',
  ELOOP: 'a link that leads to itself',
  EIO: 'a file that cannot be read',
  ENXIO: 'a device that cannot be read',
  ERR_INVALID_ARG_VALUE: 'no such file',
};

function readBounded(descriptor: number): Buffer {
  const buffer = Buffer.allocUnsafe(MOST_BYTES);
  let length = 0;
  while (length < MOST_BYTES) {
    const read = readSome(descriptor, buffer, length);
    if (read === 0) break;
    length += read;
  }
  return buffer.subarray(0, length);
}

/** A terminal or pipe that has nothing yet says so; wait a moment and ask again. */
function readSome(descriptor: number, buffer: Buffer, at: number): number {
  for (;;) {
    try {
      return readSync(descriptor, buffer, at, MOST_BYTES - at, null);
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException;
      if (code === 'EOF') return 0;
      if (code !== 'EAGAIN') throw error;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 10);
    }
  }
}

function decoded(bytes: Buffer, expected: string): FileText {
  try {
    return { kind: 'text', text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch (error) {
    // cut in the middle of a sign by the bound: too large, which the model says better
    if (bytes.length >= MOST_BYTES) return { kind: 'text', text: bytes.toString('latin1') };
    if (error instanceof TypeError) return bad('no UTF-8 text', expected);
    throw error;
  }
}

const bad = (found: string, expected: string): FileText => ({
  kind: 'bad',
  fault: { field: '', found, expected, says: `the file is ${found}; expected ${expected}.` },
});
