// Files broken on purpose: none may crash the program, hang it, or give a figure that is none.

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { cases } from '#test/cases/read-cases.ts';
import { fullFile } from '#test/model/sample-files.ts';
import { brokenFile, randomFrom } from './broken-file.ts';
import { stands } from './stands.ts';

const SEED = Number(process.env['FUZZ_SEED'] ?? 20261730);
const FILES = Number(process.env['FUZZ_FILES'] ?? 1000);
/** So much time of a processor no file may take: it would never end. */
const MOST_MS = Number(process.env['FUZZ_MS'] ?? 60_000);

/** Of this process, whatever else the machine does. */
function processorMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

const demos = readdirSync('static/demos').map(
  (name) => JSON.parse(readFileSync(`static/demos/${name}`, 'utf8')) as unknown,
);
const whole = [fullFile(), ...demos, ...cases.map(({ design }) => design)];

describe('files broken on purpose', () => {
  it('should be refused in words or judged in figures, each of them', { timeout: 2 ** 31 - 1 }, () => {
    const wrong: string[] = [];
    const count = { refused: 0, judged: 0 };
    let longest = 0;
    for (let n = 0; n < FILES; n++) {
      const seed = SEED + n;
      const text = brokenFile(randomFrom(seed), whole);
      const start = processorMs();
      try {
        const { kind, complaints } = stands(text, n % 10 === 0);
        count[kind]++;
        wrong.push(...complaints.slice(0, 2).map((says) => `seed ${seed}: ${says}`));
      } catch (error) {
        wrong.push(`seed ${seed}: ${(error as Error).stack?.split('\n').slice(0, 3).join(' ')}`);
      }
      const took = processorMs() - start;
      longest = Math.max(longest, took);
      if (took > MOST_MS) wrong.push(`seed ${seed}: took ${Math.round(took)} ms`);
    }
    console.log(
      `seed ${SEED}: ${count.refused} refused, ${count.judged} judged, longest ${Math.round(longest)} ms`,
    );
    expect(wrong).toEqual([]);
    expect(count.judged).toBeGreaterThan(FILES / 20);
  });
});
