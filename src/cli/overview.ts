// `overview FOLDER|FILE... --out DIR`: every design judged, one table of them all, and beside it a report of each.

import { mkdirSync, readdirSync, statSync } from 'node:fs';
import { basename, join } from 'node:path';
import { overviewHtml, type BadBuild, type JudgedBuild } from '#papers/html/overview.ts';
import { reportHtml } from '#papers/html/report.ts';
import { printable } from '#words/text/printable.ts';
import { judge } from '#judge/judge.ts';
import { readArguments } from './arguments.ts';
import { faultLines, loadDesign } from './load-design.ts';
import { refused, type Outcome } from './outcome.ts';
import { writeWhole } from './write-whole.ts';

export function overviewOf(words: readonly string[]): Outcome {
  const given = readArguments(words, { out: 'value' });
  if (given.kind === 'wrong') return refused(`overview: ${given.says}.`);
  const out = given.options.get('out');
  if (out === undefined || out === '-') return refused('overview: say into which folder with --out DIR.');
  const files = given.files.flatMap(designsIn);
  if (files.length === 0) return refused('overview: name a folder with design files (X.json), or the files.');
  const folder = folderAt(out);
  if (folder !== null) return refused(folder);
  const names = new Set<string>(['index.html']);
  const builds: (JudgedBuild | BadBuild)[] = [];
  for (const file of files) {
    const built = buildOf(file, out, names);
    if ('code' in built) return built;
    builds.push(built);
  }
  const written = writeWhole(join(out, 'index.html'), overviewHtml(builds), 'overview');
  return written.code === 0 && builds.some(({ kind }) => kind === 'bad') ? { ...written, code: 2 } : written;
}

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

/** Judges one file and writes its report; an outcome where that cannot be written. */
function buildOf(file: string, out: string, names: Set<string>): JudgedBuild | BadBuild | Outcome {
  const loaded = loadDesign(file);
  if (loaded.kind === 'bad') return { kind: 'bad', file, says: faultLines(file, loaded.faults) };
  const { design, text } = loaded;
  const judgement = judge(design);
  const name = freeName(file, names);
  const written = writeWhole(
    join(out, name),
    reportHtml({ design, judgement, designText: text }),
    'overview',
  );
  if (written.code !== 0) return written;
  return { kind: 'judged', file, report: encodeURIComponent(name), design, verdict: judgement.verdict };
}

/** Two files of one name in different folders get two reports. */
function freeName(file: string, names: Set<string>): string {
  const stem = file === '-' ? 'standard-input' : basename(file).replace(/\.[^.]*$/, '');
  for (let n = 1; ; n++) {
    const name = `${stem}${n === 1 ? '' : `-${n}`}.html`;
    if (names.has(name.toLowerCase())) continue;
    names.add(name.toLowerCase());
    return name;
  }
}
