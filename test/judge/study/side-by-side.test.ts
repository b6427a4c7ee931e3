// Several books on one build: each column is what the judge says by that book alone, and every figure on which they do not
// agree is named once. Figures of 272 V rms, 560 V peak, 65 kHz at 240 V, category II, as worked in test/books.

import { describe, expect, it } from 'vitest';
import { ruleBookIds } from '#books/shelf.ts';
import { judge } from '#judge/judging/judge.ts';
import { sideBySide } from '#judge/study/side-by-side.ts';
import { sideBySideText } from '#words/books/side-by-side-text.ts';
import { designWith } from '../margin-build.ts';

const design = designWith({
  workingVoltages: [{ between: ['pri', 'out'], rms: 272, peak: 560, frequency: '65 kHz' }],
});
const found = sideBySide(design, ruleBookIds);
const pairBy = (id: string) => found.books.find(({ rules }) => rules.id === id)?.pairs[0];

describe('sideBySide', () => {
  it('should say of each book what the judge says by it', () => {
    for (const { rules, verdict, pairs, restsOn } of found.books) {
      const alone = judge({ ...design, rules: rules.id }).verdict;
      expect([rules.id, verdict, restsOn]).toEqual([alone.rules.id, alone.verdict, alone.restsOn]);
      expect(pairs.map(({ achieved }) => achieved)).toEqual(alone.pairs.map(({ achieved }) => achieved));
    }
  });

  it.each([
    ['iec-62368-1', 5.6, 3],
    ['iec-60664-1', 5.44, 3],
    ['iec-61558-2-16', 5.48, 5.04],
    ['iec-60335-1', 8, 3.28],
    ['iec-60601-1', 8.6, 7],
    ['iec-60950-1', 5.6, 4.4],
  ] as const)('should hold what %s asks', (id, creepage, clearance) => {
    expect(pairBy(id)?.asked).toMatchObject({ creepage, clearance });
  });

  it('should tell a book by its own words and a figure by its rows', () => {
    expect(pairBy('iec-60601-1')).toMatchObject({ needed: 'reinforced', neededWords: 'two means' });
    expect(pairBy('iec-62368-1')?.asked?.creepageFrom).toMatchObject({
      table: '17',
      rows: [250, 320],
      done: ['rounded', 'doubled'],
    });
    expect(pairBy('iec-60335-1')?.asked?.creepageFrom).toMatchObject({ rows: [400], done: ['doubled'] });
    expect(pairBy('iec-60950-1')?.asked?.clearanceFrom?.done).toContain('added');
  });

  it('should name every figure on which they part, and none on which they agree', () => {
    const creepage = found.parting.find(({ figure }) => figure === 'creepage');
    expect(creepage?.values.map(({ value }) => value)).toEqual([5.44, 5.48, 5.6, 8, 8.6]);
    expect(creepage?.values[2]?.books).toEqual(['iec-62368-1', 'iec-60950-1']);
    const alike = sideBySide(design, ['iec-62368-1', 'iec-62368-1']);
    expect(alike.parting).toEqual([]);
  });

  it('should print them under one another, with what is missing', () => {
    const text = sideBySideText(design, found);
    expect(text).toMatch(/IEC 60335-1 +reinforced +8\.0 mm/);
    expect(text).toContain('two means');
    expect(text).toContain('Where they part');
  });
});
