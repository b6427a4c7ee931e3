// Writes a result file only when it is whole: beside its place first, then moved there.

import { renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { printable } from '#words/text/printable.ts';
import { done, refused, type Outcome } from '#cli/line/outcome.ts';

/** `-` is standard output, for texts. */
export function writeWhole(path: string, content: string | Uint8Array, verb: string): Outcome {
  if (path === '-' && typeof content === 'string') return done(content);
  try {
    if (isSpecial(path)) writeFileSync(path, content);
    else replace(path, content);
    return done();
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === undefined) throw error;
    return refused(`${verb}: ${printable(path)} cannot be written (${REASONS[code] ?? code}).`);
  }
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'no such folder',
  ENOTDIR: 'no such folder',
  EISDIR: 'it is a directory',
  EACCES: 'not allowed',
  EPERM: 'not allowed',
  EROFS: 'the disk may not be written',
  ENOSPC: 'the disk is full',
};

function replace(path: string, content: string | Uint8Array): void {
  const beside = `${path}.${process.pid}.part`;
  try {
    writeFileSync(beside, content, { flag: 'wx' });
    renameSync(beside, path);
  } catch (error) {
    rmSync(beside, { force: true });
    throw error;
  }
}

/** A pipe or device is written as it is; moving a file onto it would destroy it. */
function isSpecial(path: string): boolean {
  const found = statSync(path, { throwIfNoEntry: false });
  return found !== undefined && !found.isFile() && !found.isDirectory();
}
