// The lines of an input, one at a time, each at most so long as a design file may be: what is longer is passed over and told.

import type { BadInput } from '#model/faults/bad-input.ts';

const MOST_BYTES = 2_000_000;
const LINE_END = 0x0a;

/** From 1. */
export interface InputLine {
  readonly number: number;
  readonly text: string | BadInput;
}

export async function* inputLines(bytes: AsyncIterable<Buffer>): AsyncGenerator<InputLine> {
  let parts: Buffer[] = [];
  let size = 0;
  let number = 1;
  const take = (): InputLine | null => {
    const line = lineOf(number, parts, size);
    parts = [];
    size = 0;
    number++;
    return line;
  };
  for await (const chunk of bytes) {
    let from = 0;
    for (;;) {
      const end = chunk.indexOf(LINE_END, from);
      const part = chunk.subarray(from, end === -1 ? chunk.length : end);
      size += part.length;
      if (size <= MOST_BYTES) parts.push(part);
      if (end === -1) break;
      const line = take();
      if (line !== null) yield line;
      from = end + 1;
    }
  }
  const last = take();
  if (last !== null) yield last;
}

/** Null for an empty line. */
function lineOf(number: number, parts: readonly Buffer[], size: number): InputLine | null {
  const bad = (found: string, expected: string): InputLine => ({
    number,
    text: {
      field: '',
      found,
      expected,
      says: `line ${number} is ${found}; expected ${expected}.`,
    },
  });
  if (size > MOST_BYTES) return bad(`${size} bytes`, 'at most 2 MB');
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(Buffer.concat(parts));
    return text.trim() === '' ? null : { number, text };
  } catch {
    return bad('no UTF-8 text', 'a design file');
  }
}
