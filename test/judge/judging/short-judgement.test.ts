// The short judgement says of known cases and lessons what the whole one does.

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import { fileJudge } from '#judge/judging/judge-files.ts';
import { isMended } from '#mend/search/is-mended.ts';
import type { DesignFile } from '#model/schema/schema.ts';

const root = new URL('../../..', import.meta.url);

function designsIn(folder: string): readonly (readonly [string, DesignFile])[] {
  return readdirSync(new URL(folder, root))
    .filter((name) => name.endsWith('.json'))
    .map((name) => {
      const data = JSON.parse(readFileSync(new URL(`${folder}${name}`, root), 'utf8')) as DesignFile & {
        readonly design?: DesignFile;
      };
      return [name, data.design ?? data] as const;
    });
}

const lessons = [
  [
    'lesson-margin',
    JSON.parse(readFileSync(new URL('test/lesson-margin.json', root), 'utf8')) as DesignFile,
  ] as const,
];
const cases = designsIn('test/cases/').filter((_, i) => i % 4 === 0);
const designs = [...lessons, ...cases];
const judge = fileJudge();

describe('short judgement', () => {
  it('should answer and measure like the whole one', () => {
    let pairs = 0;
    for (const [name, doc] of designs) {
      const [whole, short, measured] = [judge.whole(doc), judge.short(doc), judge.measured(doc)];
      if (whole === null || short === null || measured === null) {
        expect([name, whole, short]).toEqual([name, null, null]);
        continue;
      }
      const found = [name, whole.verdict === 'meets', isMended(whole)];
      const reach = judge.reach(doc);
      expect([name, reach?.meets, reach?.mended]).toEqual(found);
      expect([name, (judge.spots(doc) ?? []).length === 0]).toEqual([name, isMended(whole)]);
      expect([name, short.meets, short.mended]).toEqual(found);
      expect([name, measured.meets, measured.mended]).toEqual(found);
      const asked = whole.pairs.filter(({ required }) => required !== null);
      for (const { between, limiting, undrawn } of asked) {
        const own = measured.pairs.find((pair) => pair.between.join() === between.join());
        if (limiting === null || undrawn.length > 0 || limiting.metric === 'bridge') continue;
        pairs += 1;
        expect([name, between, own?.length, own?.required]).toEqual([
          name,
          between,
          limiting.length,
          limiting.required,
        ]);
      }
    }
    expect(pairs).toBeGreaterThan(15);
  });
});
