// What the market that a build is sold in changes: the altitude that counts, the mains with which tables are entered, the
// overvoltage category, each only where the file says less; and what is told of it. Unknown keeps what was.

import { describe, expect, it } from 'vitest';
import { marketIds } from '#books/shared/national.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { judge } from '#judge/judging/judge.ts';
import { judgeShort } from '#judge/judging/short-judgement.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import { sideBySide } from '#judge/study/side-by-side.ts';
import { blankDesign } from '#model/begin/blank-design.ts';
import { readDesign } from '#model/read/read-design.ts';
import { citesOf } from '#standards/because.ts';
import {
  constructions,
  designedBuild,
  type Construction,
  type DesignWish,
} from '#state/begin/designed-build.ts';
import { leftByMarket } from '#state/fields/left-by-market.ts';
import { told } from '#words/told.ts';
import { countedAsWords } from '#words/unknowns/counted-words.ts';
import type { Changes } from '#test/designs.ts';
import { designWith, pairOf } from './margin-build.ts';

const verdict = (changes: Changes = {}) => judge(designWith(changes)).verdict;
const clearance = (changes: Changes = {}) => pairOf(verdict(changes)).required!.clearance;
const says = (changes: Changes = {}): readonly string[] =>
  told(verdict(changes))
    .remarks.filter(({ kind }) => kind.startsWith('book-market'))
    .map((remark) => remark.says);

const wishOf = (construction: Construction): DesignWish => ({
  former: { width: '14 mm', height: '5 mm', wall: '0.8 mm', flange: '0.8 mm' },
  material: 'phenolic',
  construction,
  supply: '240 V',
  output: '12 V',
  turns: ['60', '8'],
  wires: ['0.25 mm', '0.6 mm'],
  switching: '',
  reflected: '',
  spike: '',
  bond: '',
  gap: '',
});

const CHINA = { 'supply.market': 'china' };

describe('a build sold in a market', () => {
  it('should be judged for 5000 m in China where no altitude is named, 1.48 times the clearance', () => {
    expect(clearance().reinforced).toBe(3);
    // 3.0 x 1.48 = 4.44, up to 4.5; basic 1.5 x 1.48 = 2.22, up to 2.3: as four reports print them
    expect(clearance(CHINA)).toMatchObject({ basic: 2.3, reinforced: 4.5 });
    const cites = citesOf(clearance(CHINA).because).filter(({ file }) => file === 'national-altitude');
    expect(cites[0]).toMatchObject({
      standard: 'IEC 62368-1',
      cell: 'china, altitude',
      confirmed: 'secondary',
    });
    expect(verdict(CHINA).restsOn).toBe('memory');
    const assumed = verdict(CHINA).assumptions.find(({ field }) => field === 'surroundings.altitude');
    expect(assumed?.counted).toMatchObject({ as: 'market', value: 5000, cite: { confirmed: 'secondary' } });
    expect(assumed && countedAsWords(assumed.counted)).toBe(
      '5000 m, as for China, 220 V (second-hand copy: GB 4943.1-2022)',
    );
  });

  it.each(constructions.map(({ id }) => id))(
    'should count for a market in a build just begun, for nothing is typed for the reader: %s',
    async (construction) => {
      const { doc } = await designedBuild(wishOf(construction), {
        read: (file) => readDesign(file, knownIds),
        judge: () => Promise.resolve(null),
      });
      for (const begun of [doc, blankDesign()]) {
        expect(begun.supply).not.toHaveProperty('overvoltageCategory');
        expect(begun.surroundings).not.toHaveProperty('altitude');
        const reading = readDesign({ ...begun, supply: { ...begun.supply, market: 'china' } }, knownIds);
        if (reading.kind === 'bad') throw new Error('not readable');
        const { assumptions, remarks } = told(judge(reading.design).verdict);
        const countedAs = (field: string) => assumptions.find((each) => each.field === field)?.counted;
        expect(countedAs('surroundings.altitude')).toBe(
          '5000 m, as for China, 220 V (second-hand copy: GB 4943.1-2022)',
        );
        expect(countedAs('supply.overvoltageCategory')).toMatch(/^II, as for China, 220 V \(/);
        expect(remarks.map(({ says }) => says).join(' ')).toContain(
          'the file names no altitude, so they count.',
        );
      }
    },
  );

  it('should say beside the empty field what stands for it', () => {
    expect(leftByMarket('iec-62368-1', 'china')).toEqual({
      altitude: '5000 m, as for China, 220 V',
      category: '2, as for China, 220 V',
    });
    expect(leftByMarket('iec-60335-1', 'china').altitude).toBe('2000 m');
    expect(leftByMarket('iec-62368-1', 'north-america-277').category).toMatch(/^3, as for North America/);
    for (const [rules, market] of [
      ['iec-62368-1', undefined],
      ['iec-62368-1', 'unknown'],
      ['no-book', 'china'],
    ])
      expect(leftByMarket(rules, market)).toEqual({ altitude: '2000 m', category: '2' });
  });

  it('should keep the altitude that the file states, and say what the market asks', () => {
    const stated = { ...CHINA, 'surroundings.altitude': '2000 m' };
    expect(clearance(stated).reinforced).toBe(3);
    expect(says(stated)[0]).toBe(
      'China, 220 V: IEC 62368-1 counts 5000 m there unless the equipment is marked for less (second-hand copy); the file states 2000 m, which counts: it must be so marked.',
    );
    expect(says(CHINA)[0]).toContain('the file names no altitude, so they count.');
  });

  it('should say where no altitude of the market was seen for the book, and count what it did', () => {
    const household = { ...CHINA, rules: 'iec-60335-1' };
    expect(clearance(household).reinforced).toBe(clearance({ rules: 'iec-60335-1' }).reinforced);
    expect(says(household)[0]).toBe(
      'China, 220 V: no altitude of this market was seen for IEC 60335-1; 2000 m count.',
    );
    const older = { ...CHINA, rules: 'iec-60950-1' };
    expect(clearance(older).reinforced).toBeGreaterThan(clearance({ rules: 'iec-60950-1' }).reinforced!);
  });

  it.each([
    // row of 150 V: 1500 V and 1.6 x (150 + 1200) V for a short time: 2.48; row of 300 V: 4000 V, 3.0
    ['mexico', 2.48],
    ['north-america', 2.48],
    ['europe', 3],
    ['north-america-277', 5.5],
  ])(
    'should read what the mains brings to a supply of 120 V in %s in its own row: %f mm',
    (market, expected) => {
      const figure = clearance({
        'supply.voltage': '120 V',
        'supply.market': market,
        rules: 'iec-60664-1',
        workingVoltages: [{ between: ['pri', 'out'], rms: '127 V', peak: '180 V', frequency: '50 Hz' }],
      }).reinforced;
      expect(figure).toBeCloseTo(expected, 2);
    },
  );

  it('should read 100 V in Japan in the row of 150 V', () => {
    const low = { 'supply.voltage': '100 V', rules: 'iec-60950-1' };
    const at = (changes: Changes) =>
      citesOf(pairOf(verdict(changes)).required!.clearance.because).map(({ cell }) => cell);
    expect(at(low)).toContain('100 V rms, category 2');
    expect(at({ ...low, 'supply.market': 'japan' })).toEqual(
      expect.arrayContaining(['150 V rms, category 2', 'japan, entered']),
    );
  });

  it('should count category III on 277 V wired in where the file names none, and what it names else', () => {
    const wired = { 'supply.voltage': '277 V', 'supply.market': 'north-america-277' };
    // table 14 at 4000 V, reinforced 6.0 mm; at 2500 V 3.0 mm
    expect(clearance(wired).reinforced).toBe(
      clearance({ ...wired, 'supply.overvoltageCategory': 3 }).reinforced,
    );
    expect(clearance(wired).reinforced).toBeGreaterThan(
      clearance({ ...wired, 'supply.overvoltageCategory': 2 }).reinforced!,
    );
    expect(says(wired)).toContain(
      'North America, 277 V wired in: the file names no overvoltage category; III counts (house rule).',
    );
  });

  it('should never ask less for being sold somewhere, whatever the book', () => {
    for (const rules of knownIds.rules)
      for (const voltage of ['100 V', '240 V']) {
        const plain = clearance({ rules, 'supply.voltage': voltage }).reinforced ?? Infinity;
        for (const market of marketIds) {
          const sold = clearance({ rules, 'supply.voltage': voltage, 'supply.market': market }).reinforced;
          expect(sold ?? Infinity).toBeGreaterThanOrEqual(plain);
        }
      }
  });

  it('should keep everything where the market is unknown or not said', () => {
    const bare = JSON.stringify(told(verdict()));
    expect(JSON.stringify(told(verdict({ 'supply.market': 'unknown' })))).toBe(bare);
    expect(says()).toEqual([]);
  });

  it('should be counted by the short judgement as by the whole one, and told side by side', () => {
    const design = designWith(CHINA);
    const [short] = judgeShort(design, new PathCache(), 'lengths').pairs;
    expect(short?.achieved).toBe(pairOf(verdict(CHINA)).achieved);
    const books = sideBySide(design, ['iec-62368-1', 'iec-60335-1']).books;
    expect(books.map(({ remarks }) => remarks.some(({ kind }) => kind.startsWith('book-market')))).toEqual([
      true,
      true,
    ]);
  });

  it('should be refused by a name that no table has, with those that exist', () => {
    const file = {
      format: 'layerwright-design/1',
      title: 'x',
      origin: 'proposed',
      rules: 'iec-62368-1',
      supply: { kind: 'ac', voltage: '240 V', market: 'chyna' },
      circuits: [],
      former: { height: '5 mm', wall: '1 mm', flange: '1 mm', chambers: [{ width: '9 mm' }] },
      windings: [],
      layers: [],
    };
    const read = readDesign(file, knownIds);
    expect(read.kind === 'bad' ? read.faults : []).toMatchObject([
      { field: 'supply.market', found: '"chyna"' },
    ]);
    expect(read.kind === 'bad' && read.faults[0]?.expected).toContain('china, europe, north-america');
  });
});
