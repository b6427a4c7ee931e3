// Every JSON file under `tables/` as the checks read it: path below the folder and parsed content.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

import type { TableFile } from '#standards/tables/table.ts';
import type { RulesFile } from '#standards/tables/rules-in-words.ts';

const ROOT = join(import.meta.dirname, '../../tables');

export interface Named<File> {
  readonly path: string;
  readonly file: File;
}

export const readJson = (path: string): unknown => JSON.parse(readFileSync(join(ROOT, path), 'utf8'));

const paths = readdirSync(ROOT, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.json') && path.includes('/'))
  .sort();

export const everyFile: readonly Named<unknown>[] = paths.map((path) => ({ path, file: readJson(path) }));

export const rules: readonly Named<RulesFile>[] = everyFile
  .filter(({ path }) => path.endsWith('/rules.json'))
  .map(({ path, file }) => ({ path, file: file as RulesFile }));

export const tables: readonly Named<TableFile>[] = everyFile
  .filter(({ path }) => !path.endsWith('/rules.json'))
  .map(({ path, file }) => ({ path, file: file as TableFile }));

export const tableAt = (path: string): TableFile => {
  const found = tables.find((table) => table.path === path);
  if (found === undefined) throw new Error(`no table ${path}`);
  return found.file;
};
