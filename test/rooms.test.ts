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
  library: TELLING,
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

/** Rooms that hand over kinds and figures. Reading refuses input in words of its own, and rule books say how they are read. */
const FIGURES_ONLY = ['solver', 'stress', 'field', 'judge', 'spread'];

/** Names of sections, of leads and of what joins two circuits outside, and keys of what adds up: not sentences, but of several words. */
const NAMES = [
  'other circuits at their other end',
  'unknowns at their best',
  'unknowns at their best, ${others}',
  '${name}, only ${moved} moved',
  'in a short sleeve',
  'in a long sleeve',
  'in a thin sleeve',
  'in a thick sleeve',
  'ply that stands every test',
  'metal joins them',
];

/** String literals of three words or more, apart from comments and from what is thrown. */
function sentencesIn(text: string): readonly string[] {
  return text
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .split('\n')
    .map((line) => line.replace(/(^|\s)\/\/.*$/, ''))
    .filter((line) => !/^import |\bthrow\b|Error\(/.test(line))
    .flatMap((line) => [...line.matchAll(/'((?:[^'\\]|\\.)*)'|`([^`]*)`/g)])
    .map(([, plain, template]) => plain ?? template ?? '')
    .filter((literal) => wordsOf(literal) >= 3);
}

const wordsOf = (literal: string): number =>
  literal
    .replace(/\$\{[^}]*\}/g, '0')
    .split(' ')
    .filter((word) => /^[A-Za-z’]+[,.:;]?$/.test(word)).length;

const A_DOZEN = 12;
/** Lines of one file; of a component what is no style. */
const MOST_LINES = 300;

const linesOf = (path: string): number =>
  readFileSync(path, 'utf8')
    .replace(/<style>[\s\S]*?<\/style>/, '')
    .split('\n').length;

/** Every way round in a graph of arrows, each told once by where it comes back to itself. */
function circlesOf(arrows: ReadonlyMap<string, readonly string[]>): readonly string[] {
  const done = new Set<string>();
  const circles: string[] = [];
  const walk = (node: string, way: readonly string[]): void => {
    if (way.includes(node)) circles.push([...way.slice(way.indexOf(node)), node].join(' > '));
    if (way.includes(node) || done.has(node)) return;
    for (const next of arrows.get(node) ?? []) walk(next, [...way, node]);
    done.add(node);
  };
  for (const node of arrows.keys()) walk(node, []);
  return circles;
}

/** What each file imports from the tree, types included. */
const arrowsOfFiles = (paths: readonly string[]): ReadonlyMap<string, readonly string[]> =>
  new Map(
    paths.map((path) => {
      const specifiers = [...readFileSync(path, 'utf8').matchAll(IN_THE_TREE)].map(([, name]) => name!);
      return [path, specifiers.map((specifier) => fileOf(path, specifier))];
    }),
  );

/** The same arrows between the folders that the files lie in. A folder is its own files, not those of the folders in it. */
function arrowsOfFolders(
  files: ReadonlyMap<string, readonly string[]>,
): ReadonlyMap<string, readonly string[]> {
  const arrows = new Map<string, Set<string>>();
  for (const [path, others] of files) {
    const from = dirname(path);
    const to = arrows.get(from) ?? new Set();
    for (const other of others) if (dirname(other) !== from) to.add(dirname(other));
    arrows.set(from, to);
  }
  return new Map([...arrows].map(([from, to]) => [from, [...to]]));
}

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

  it('should leave sentences to the words: what is found below them is kinds and figures', () => {
    const saying = FIGURES_ONLY.flatMap((room) => files(join('src', room))).flatMap((path) =>
      sentencesIn(readFileSync(path, 'utf8')).map((says) => `${path}: ${says}`),
    );
    expect(saying.filter((each) => !NAMES.some((name) => each.endsWith(name)))).toEqual([]);
    expect(sentencesIn("const a = 'It is too hot.';")).toHaveLength(1);
    expect(sentencesIn('const a = `The former is ${high} mm high`;')).toHaveLength(1);
    expect(sentencesIn("throw new Error('no such rule book');")).toHaveLength(0);
    expect(sentencesIn("// it is too hot\nconst a = 'too-hot';")).toHaveLength(0);
  });

  it('should keep a folder to a dozen files', () => {
    const counts = new Map<string, number>();
    for (const path of files('src')) counts.set(dirname(path), (counts.get(dirname(path)) ?? 0) + 1);
    expect([...counts].filter(([, count]) => count > A_DOZEN)).toEqual([]);
    expect(Math.max(...counts.values())).toBeGreaterThan(A_DOZEN / 2);
  });

  it('should tell one story a file, and half of them in a page', () => {
    const lines = files('src').map((path) => [path, linesOf(path)] as const);
    expect(lines.filter(([, count]) => count > MOST_LINES)).toEqual([]);
    const sorted = lines.map(([, count]) => count).sort((a, b) => a - b);
    expect(sorted[Math.floor(sorted.length / 2)]).toBeLessThan(80);
  });

  it('should hold no circle of files and none of folders, types included', () => {
    const arrows = arrowsOfFiles(files('src'));
    expect(circlesOf(arrows)).toEqual([]);
    expect(circlesOf(arrowsOfFolders(arrows))).toEqual([]);
    const round = new Map([
      ['a/x.ts', ['b/y.ts']],
      ['b/z.ts', ['a/w.ts']],
    ]);
    expect(circlesOf(round)).toEqual([]);
    expect(circlesOf(arrowsOfFolders(round))).toEqual(['a > b > a']);
  });

  it('should know every room there is', () => {
    const rooms = readdirSync('src', { withFileTypes: true }).filter((entry) => entry.isDirectory());
    expect(rooms.map(({ name }) => name).filter((name) => !(name in MAY_IMPORT))).toEqual([]);
  });

  it('should complain of an arrow that points upward', () => {
    expect(complaint('solver', '#books/questions/book.ts')).not.toBeNull();
    expect(complaint('model', '#state/editor.svelte.ts')).not.toBeNull();
    expect(complaint('judge', '../solver/pieces.ts')).not.toBeNull();
    expect(complaint('ui', 'mathjs')).not.toBeNull();
    expect(complaint('ui', '#state/bench.ts')).toBeNull();
  });
});
