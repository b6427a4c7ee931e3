// Files in and out: a design file read from the disk, and what is handed to the browser to save.

import type { DesignFile } from '#model/schema/schema.ts';
import { openable, type Openable } from './import-design.ts';

const MOST_BYTES = 2_000_000;

export async function readFile(file: File): Promise<Openable> {
  if (file.size > MOST_BYTES)
    return { kind: 'refused', says: `${file.name} has ${file.size} bytes; a design file has at most 2 MB.` };
  try {
    return openable(await file.text());
  } catch {
    return { kind: 'refused', says: `${file.name} could not be read.` };
  }
}

export const designText = (doc: DesignFile): string => `${JSON.stringify(doc, null, 2)}\n`;

/** A file name that every system takes. */
export function fileName(title: unknown, ending: string): string {
  const plain = String(title ?? '')
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60);
  return `${plain === '' ? 'build' : plain}.${ending}`;
}

export function saveFile(content: string | Blob, name: string, type: string): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // the browser has taken the address over by the next turn
  setTimeout(() => URL.revokeObjectURL(address), 1000);
}
