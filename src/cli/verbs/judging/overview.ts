// `overview FOLDER|FILE... --out DIR`: every design judged, one table of them all, and beside it a report of each.
// Whatever happens over one file, the table is written and tells of it.

import { mkdirSync, readdirSync, statSync } from 'node:fs';
import { basename, join } from 'node:path';
import { overviewHtml } from '#papers/html/overview.ts';
import { printable } from '#words/text/printable.ts';
import { readArguments } from '#cli/line/arguments.ts';
import { itemsOf } from '#cli/many/file-threads.ts';
import type { OverviewItem } from '#cli/many/overview-item.ts';
import type { ExitCode, Outcome } from '#cli/line/outcome.ts';
import { refused } from '#cli/line/outcome.ts';
import { writeWhole } from '#cli/files/write-whole.ts';

export async function overviewOf(words: readonly string[]): Promise<Outcome> {
  const given = readArguments(words, { out: 'value' });
  if (given.kind === 'wrong') return refused(`overview: ${given.says}.`);
  const out = given.options.get('out');
  if (out === undefined || out === '-') return refused('overview: say into which folder with --out DIR.');
  const files = given.files.flatMap(designsIn);
  if (files.length === 0) return refused('overview: name a folder with design files (X.json), or the files.');
  const folder = folderAt(out);
  if (folder !== null) return refused(folder);
  const items = await itemsOf(files, 'overview', { out, names: freeNames(files) });
  const written = writeWhole(
    join(out, 'index.html'),
    overviewHtml(items.map(({ build }) => build)),
    'overview',
  );
  const unwritten = items.flatMap(({ unwritten }) => unwritten ?? []);
  const code = [written.code, ...items.map(codeOf)].reduce((a, b) => (a > b ? a : b));
  return { code, out: written.out, err: [written.err, ...unwritten].join('') };
}

const codeOf = ({ build, unwritten }: OverviewItem): ExitCode =>
  build.kind === 'fault' ? 3 : build.kind === 'bad' || unwritten !== null ? 2 : 0;

/** A folder stands for the design files in it, in the order of their names. */
function designsIn(path: string): readonly string[] {
  if (!statSync(path, { throwIfNoEntry: false })?.isDirectory()) return [path];
  return readdirSync(path)
    .filter((name) => /\.json$/i.test(name))
    .sort()
    .map((name) => join(path, name));
}

/** Null where the folder is there or could be made; else why not. */
function folderAt(out: string): string | null {
  try {
    mkdirSync(out, { recursive: true });
    return null;
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === undefined) throw error;
    return `overview: ${printable(out)} is no folder and cannot be made one (${code}).`;
  }
}

/** Two files of one name in different folders get two reports. */
function freeNames(files: readonly string[]): readonly string[] {
  const taken = new Set<string>(['index.html']);
  return files.map((file) => {
    const stem = file === '-' ? 'standard-input' : basename(file).replace(/\.[^.]*$/, '');
    for (let n = 1; ; n++) {
      const name = `${stem}${n === 1 ? '' : `-${n}`}.html`;
      if (taken.has(name.toLowerCase())) continue;
      taken.add(name.toLowerCase());
      return name;
    }
  });
}
