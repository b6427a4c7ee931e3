// The package as a stranger gets it: packed into one file, installed into an empty folder without a network, used as the
// README says.

import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const DEMO = join('node_modules', 'layerwright', 'static', 'demos', 'greenhouse-timer.json');
const NEVER_ENDS = 300_000;

let folder: string;

function run(command: string, words: readonly string[], cwd = folder): { status: number; text: string } {
  const options = { cwd, encoding: 'utf8', shell: process.platform === 'win32', stdio: 'pipe' } as const;
  try {
    return { status: 0, text: execFileSync(command, [...words], options) };
  } catch (error) {
    const { status, stdout, stderr } = error as { status: number | null; stdout: string; stderr: string };
    return { status: status ?? -1, text: `${stdout}${stderr}` };
  }
}

/** The script that the README prints for whoever uses the library. */
function scriptOfReadme(): string {
  const [, script] = /## As a library[\s\S]*?```js\n([\s\S]*?)```/.exec(readFileSync('README.md', 'utf8'))!;
  return script!;
}

describe('the package', () => {
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'layerwright-package-'));
    for (const build of ['build:cli', 'build:types']) {
      const made = build === 'build:cli' ? 'dist/library.js' : 'dist/library.d.ts';
      if (!existsSync(made)) run('npm', ['run', '-s', build], '.');
    }
    const packed = run('npm', ['pack', '--ignore-scripts', '--json', '--pack-destination', folder], '.');
    const [{ filename }] = JSON.parse(packed.text) as [{ filename: string }];
    writeFileSync(join(folder, 'package.json'), '{ "private": true, "type": "module" }\n');
    const install = ['install', '--offline', '--omit=optional', '--no-audit', '--no-fund', filename];
    expect(run('npm', install)).toMatchObject({ status: 0 });
  }, NEVER_ENDS);

  afterAll(() => {
    rmSync(folder, { recursive: true, force: true });
  });

  it('should carry no other package and no page', () => {
    const inside = JSON.parse(readFileSync(join(folder, 'package-lock.json'), 'utf8')) as {
      packages: Record<string, { optional?: boolean }>;
    };
    const needed = Object.entries(inside.packages).filter(([, { optional }]) => optional !== true);
    expect(needed.map(([path]) => path)).toEqual(['', 'node_modules/layerwright']);
    expect(existsSync(join(folder, 'node_modules', 'layerwright', 'src'))).toBe(false);
  });

  it(
    'should judge a file with npx',
    () => {
      const { status, text } = run('npx', ['--no', 'layerwright', 'judge', DEMO]);
      expect(status).toBe(1);
      expect(text).toContain('Falls short, IEC 62368-1, 2018');
    },
    NEVER_ENDS,
  );

  it(
    'should do what the script of the README does',
    () => {
      writeFileSync(join(folder, 'script.js'), scriptOfReadme());
      const { status, text } = run(process.execPath, ['script.js', DEMO]);
      expect({ status, text }).toMatchObject({ status: 0 });
      const said = JSON.parse(run('npx', ['--no', 'layerwright', 'judge', DEMO, '--json']).text) as {
        pairs: { between: string[]; verdict: string; achieved: string }[];
      };
      const lines = said.pairs.map((pair) => `${pair.between.join(' to ')} ${pair.verdict} ${pair.achieved}`);
      expect(text.trim().split('\n')).toEqual(lines);
      expect(readFileSync(join(folder, 'section.svg'), 'utf8')).toMatch(/^<svg /);
      expect(readFileSync(join(folder, 'report.html'), 'utf8')).toContain('layerwright-design');
    },
    NEVER_ENDS,
  );

  it(
    'should say its types: units of the verdict stand beside them, and what is wrong does not compile',
    () => {
      const types = readFileSync(join(folder, 'node_modules', 'layerwright', 'dist', 'library.d.ts'), 'utf8');
      expect(types).not.toMatch(/from '#|from '\.\.?\//);
      expect(types).toContain('lengths mm, voltages V, frequencies Hz, currents mA');
      writeFileSync(
        join(folder, 'right.ts'),
        [
          `import { judge, readDesign, type Verdict } from 'layerwright';`,
          `const read = readDesign('{}');`,
          `const verdict: Verdict | null = read.kind === 'design' ? judge(read.design).verdict : null;`,
          `export const grade: 'none' | 'functional' | 'basic' | 'supplementary' | 'double' | 'reinforced' =`,
          `  verdict?.pairs[0]?.achieved ?? 'none';`,
        ].join('\n'),
      );
      writeFileSync(
        join(folder, 'wrong.ts'),
        `import { judge } from 'layerwright';\nexport const a = judge({ title: 'not read' });\n`,
      );
      const tsc = resolve('node_modules', 'typescript', 'bin', 'tsc');
      const flags = ['--noEmit', '--strict', '--module', 'nodenext', '--target', 'es2022'];
      expect(run(process.execPath, [tsc, ...flags, 'right.ts'])).toEqual({ status: 0, text: '' });
      expect(run(process.execPath, [tsc, ...flags, 'wrong.ts']).text).toContain('TS2345');
    },
    NEVER_ENDS,
  );
});
