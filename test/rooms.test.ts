// One room, one job: imports point downward only, types included, and never with `../`.

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { describe, expect, it } from 'vitest';

const BELOW = ['units', 'geometry', 'model', 'standards', 'books', 'solver', 'stress', 'field', 'judge'];
const TELLING = [...BELOW, 'mend', 'spread', 'learn', 'words', 'drawing', 'papers'];
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  units: [],
  geometry: ['units'],
  model: ['units', 'tables'],
  standards: ['units', 'tables'],
  books: ['units', 'model', 'standards', 'tables'],
  solver: ['units', 'geometry', 'model'],
  stress: ['units', 'model', 'standards', 'books'],
  field: ['units', 'geometry', 'model', 'solver'],
  judge: BELOW,
  mend: [...BELOW, 'spread'],
  spread: BELOW,
  learn: BELOW,
  words: [...BELOW, 'mend', 'spread', 'learn'],
  drawing: [...BELOW, 'words'],
  papers: [...BELOW, 'mend', 'spread', 'learn', 'words', 'drawing'],
  cli: TELLING,
  state: [...TELLING, 'demos', 'lessons'],
  ui: ['state', 'words', 'drawing', 'papers', 'model', 'geometry', 'units'],
  routes: ['ui', 'state'],
};

const SPECIFIER = /(?:\bfrom|\bimport)\s*\(?\s*['"]([^'"]+)['"]/g;

function files(folder: string): readonly string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return files(path);
    return /\.(ts|svelte)$/.test(entry.name) ? [path] : [];
  });
}

/** Rooms that only tell what was judged: of `judge` and `stress` they know the shapes, and call nothing. */
const TELLS_ONLY = ['words', 'drawing', 'papers'];

const IMPORT = /^import\s+(type\s+)?(?:\{([^}]*)\}|[^'"{]*?)\s*from\s*['"]#(judge|stress)\/[^'"]+['"]/gm;

/** Every import of a file that calls upon the judge, or upon what it asks, instead of reading its answer. */
function callsUpon(text: string): readonly string[] {
  return [...text.matchAll(IMPORT)].flatMap(([all, type, names]) => {
    const values = (names ?? 'all')
      .split(',')
      .filter((name) => name.trim() !== '' && !/^\s*type\s/.test(name));
    return type !== undefined || values.length === 0 ? [] : [all.replace(/\s+/g, ' ')];
  });
}

/** What is wrong with one import of a file in a room; null where nothing is. */
function complaint(room: string, specifier: string): string | null {
  if (specifier.includes('../')) return 'climbs out of its folder';
  const target = /^#([a-z]+)\//.exec(specifier)?.[1];
  if (target !== undefined && target !== room && !MAY_IMPORT[room]?.includes(target)) {
    return `${room} may not import ${target}`;
  }
  const belowState = !['state', 'ui', 'routes'].includes(room);
  if (belowState && /^(svelte|\$app|\$env|konva)/.test(specifier)) return `${room} may not know the page`;
  if (room !== 'model' && /^mathjs/.test(specifier)) return 'only the model reads quantities';
  return null;
}

const complaints = files('src').flatMap((path) => {
  const [room, ...rest] = relative('src', path).split(sep);
  if (room === undefined || rest.length === 0) return [];
  const text = readFileSync(path, 'utf8');
  return [...text.matchAll(SPECIFIER)].flatMap(([, specifier]) => {
    const says = complaint(room, specifier!);
    return says === null ? [] : [`${path}: ${specifier}: ${says}`];
  });
});

const IN_THE_TREE =
  /(?:\bfrom|\bimport)\s*\(?\s*['"]((?:#(?!tables|demos|lessons)[a-z]+\/|\.\/(?!\$))[^'"]+)['"]/g;
const NAMED = /\bimport\s+(?:type\s+)?\{([^}]*)\}\s*from\s*['"]([^'"]+)['"]/g;

/** The file that a specifier means. */
const fileOf = (from: string, specifier: string): string =>
  specifier.startsWith('#')
    ? specifier.replace(/^#test\//, 'test/').replace(/^#/, 'src/')
    : join(dirname(from), specifier.replace(/\?.*$/, ''));

/** What a file imports that is not there, or does not say that it gives the name. The type check sees no component. */
function missing(path: string): readonly string[] {
  const text = readFileSync(path, 'utf8');
  const specifiers = [...text.matchAll(IN_THE_TREE)].map(([, specifier]) => specifier!);
  const lost = specifiers.filter((specifier) => !existsSync(fileOf(path, specifier)));
  const unnamed = [...text.matchAll(NAMED)].flatMap(([, names, specifier]) => {
    const file = fileOf(path, specifier!);
    if (!specifiers.includes(specifier!) || !existsSync(file) || !file.endsWith('.ts')) return [];
    const given = readFileSync(file, 'utf8');
    const asked = names!.split(',').map((name) => name.trim().replace(/^type\s+|\s+as\s.*$/g, ''));
    return asked.filter((name) => name !== '' && !exports(given, name));
  });
  return [...lost, ...unnamed].map((name) => `${path}: ${name}`);
}

const exports = (text: string, name: string): boolean =>
  new RegExp(
    `export (?:declare )?(?:async )?(?:abstract )?(?:const|let|function\\*?|class|interface|type) ${name}\\b`,
  ).test(text) ||
  new RegExp(`export (?:type )?\\{[^}]*\\b${name}\\b[^}]*\\}`).test(text) ||
  new RegExp(`export const [{[][^=]*\\b${name}\\b[^=]*[}\\]] =`).test(text);

describe('rooms', () => {
  it('should import downward only', () => {
    expect(complaints).toEqual([]);
  });

  it('should import what exists', () => {
    const others = files('test').filter((path) => path !== join('test', 'rooms.test.ts'));
    expect([...files('src'), ...others].flatMap(missing)).toEqual([]);
    expect(missing(join('test', 'rooms.test.ts'))).not.toEqual([]);
  });

  it('should tell what was judged and judge nothing again', () => {
    const calling = TELLS_ONLY.flatMap((room) => files(join('src', room))).flatMap((path) =>
      callsUpon(readFileSync(path, 'utf8')).map((says) => `${path}: ${says}`),
    );
    expect(calling).toEqual([]);
    expect(callsUpon("import { type A, gradeOf } from '#judge/grade/x.ts';")).toHaveLength(1);
    expect(callsUpon("import * as all from '#stress/heat/heat.ts';")).toHaveLength(1);
    expect(callsUpon("import {\n  type A,\n  type B,\n} from '#judge/x.ts';")).toHaveLength(0);
    expect(callsUpon("import type { A } from '#judge/x.ts';")).toHaveLength(0);
  });

  it('should know every room there is', () => {
    const rooms = readdirSync('src', { withFileTypes: true }).filter((entry) => entry.isDirectory());
    expect(rooms.map(({ name }) => name).filter((name) => !(name in MAY_IMPORT))).toEqual([]);
  });

  it('should complain of an arrow that points upward', () => {
    expect(complaint('solver', '#books/book.ts')).not.toBeNull();
    expect(complaint('model', '#state/editor.svelte.ts')).not.toBeNull();
    expect(complaint('judge', '../solver/pieces.ts')).not.toBeNull();
    expect(complaint('ui', 'mathjs')).not.toBeNull();
    expect(complaint('ui', '#state/bench.ts')).toBeNull();
  });
});
