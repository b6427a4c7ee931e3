// Cells that the user confirmed from a copy of their own: they count as such in what a verdict rests on, a corrected one
// changes what is asked, by every book that reads the table and by no other, and the file and the report carry them.

import { told } from '#words/told.ts';
import { describe, expect, it } from 'vitest';
import { ruleBook } from '#books/shelf.ts';
import { judge } from '#judge/judging/judge.ts';
import type { Design } from '#model/design.ts';
import { readDesign } from '#model/read/read-design.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { citesOf } from '#standards/because.ts';
import { designWith, pairOf } from './margin-build.ts';

const CELL = {
  standard: 'IEC 62368-1',
  table: 'creepage',
  cell: '250 V rms, PD 2, IIIb',
  clause: '5.4.3, table 17',
  on: '2026-11-30',
};

const judged = (confirmed: readonly object[], rules = 'iec-62368-1') =>
  judge(designWith({ confirmed, rules })).verdict;

const creepageCites = (confirmed: readonly object[]) =>
  citesOf(pairOf(judged(confirmed)).required!.creepage.because).filter(({ cell }) => cell === CELL.cell);

describe('cells confirmed by the user', () => {
  it('should be cited as confirmed by the user, with clause and day', () => {
    expect(creepageCites([])[0]?.confirmed).toBe('two-sources');
    expect(creepageCites([CELL])[0]).toMatchObject({
      confirmed: 'user',
      own: { clause: CELL.clause, on: CELL.on },
    });
  });

  it('should change what is asked where they are corrected, and only by the book that reads them', () => {
    const corrected = [{ ...CELL, value: 3.1 }];
    expect(pairOf(judged([])).required!.creepage.reinforced).toBe(5);
    expect(pairOf(judged(corrected)).required!.creepage.reinforced).toBe(6.2);
    expect(pairOf(judged(corrected, 'iec-60950-1')).required!.creepage.reinforced).toBe(5);
  });

  it('should be told with the verdict where it rests on them', () => {
    const says = told(judged([CELL])).remarks.filter(({ kind }) => kind === 'confirmed-by-user');
    expect(says).toEqual([
      {
        kind: 'confirmed-by-user',
        says: 'Confirmed by the user: IEC 62368-1, table 17, 250 V rms, PD 2, IIIb; read in 5.4.3, table 17 on 2026-11-30.',
      },
    ]);
    expect(judged([]).remarks.some(({ kind }) => kind === 'confirmed-by-user')).toBe(false);
  });

  it('should lift a verdict off memory once every cell of memory that it rests on is confirmed', () => {
    const plain = judged([]);
    expect(plain.restsOn).toBe('memory');
    const weak = plain.pairs
      .flatMap((pair) => citesOf(pair.because).concat(pair.limiting ? citesOf(pair.limiting.because) : []))
      .filter(({ confirmed }) => confirmed === 'memory' || confirmed === 'secondary');
    const confirmed = [
      ...new Map(weak.map((cite) => [`${cite.standard} ${cite.file} ${cite.cell}`, cite])).values(),
    ].map(({ standard, file, cell }) => ({ standard, table: file, cell, clause: 'read', on: '2026-11-30' }));
    expect(confirmed.length).toBeGreaterThan(0);
    expect(judged(confirmed).restsOn).not.toBe('memory');
    expect(judged(confirmed.slice(1)).restsOn).toBe('memory');
  });

  it.each([
    [
      'a standard that no book reads',
      { ...CELL, standard: 'IEC 62386-1' },
      'no rule book here reads a standard IEC 62386-1.',
    ],
    ['a table that is not there', { ...CELL, table: 'crepage' }, 'IEC 62368-1 has no table crepage here.'],
    [
      'a cell that is not there',
      { ...CELL, cell: '255 V rms, PD 2, IIIb' },
      'table creepage of IEC 62368-1 has no cell 255 V rms, PD 2, IIIb.',
    ],
    [
      'a rule that is not there',
      { ...CELL, table: 'rules', cell: 'least-thickness, width' },
      'table rules of IEC 62368-1 has no cell least-thickness, width.',
    ],
  ])('should be told where they name %s, and change nothing', (_, cell, what) => {
    const says = told(judged([cell])).remarks.filter(({ kind }) => kind === 'confirmed-nowhere');
    expect(says).toHaveLength(1);
    expect(says[0]?.says).toBe(
      `Confirmed by the user, but it changes nothing: ${cell.standard}, ${cell.table}, ${cell.cell}; ${what}`,
    );
    expect(judged([cell]).verdict).toBe(judged([]).verdict);
    expect(judged([cell]).restsOn).toBe(judged([]).restsOn);
  });

  it('should not call a cell astray that another book reads, nor a factor, nor a rule', () => {
    const others = [
      CELL,
      { ...CELL, standard: 'IEC 60335-1', cell: '250 V rms, PD 2, IIIa' },
      { ...CELL, cell: 'factor reinforced' },
      { ...CELL, table: 'rules', cell: 'least-thickness, thickness' },
    ];
    expect(judged(others).remarks.filter(({ kind }) => kind === 'confirmed-nowhere')).toEqual([]);
  });

  it('should confirm and correct a figure of a rule in words', () => {
    const own = [
      {
        standard: 'IEC 62368-1',
        table: 'rules',
        cell: 'least-thickness, thickness',
        clause: 'x',
        on: '2026-11-30',
        value: 0.5,
      },
    ];
    expect(ruleBook('iec-62368-1', own)!.leastThickness().value).toBe(500_000);
    expect(ruleBook('iec-62368-1')!.leastThickness().value).toBe(400_000);
  });

  it.each([
    ['a day that is none', { ...CELL, on: 'yesterday' }, 'confirmed[0].on'],
    ['a value that is no figure', { ...CELL, value: 'much' }, 'confirmed[0].value'],
    ['a cell without a name', { ...CELL, cell: '' }, 'confirmed[0].cell'],
  ])('should be refused with %s', (_, cell, field) => {
    const file = { ...JSON.parse(JSON.stringify(fileOf())), confirmed: [cell] };
    const read = readDesign(file, knownIds);
    expect(read.kind === 'bad' && read.faults.map((fault) => fault.field)).toEqual([field]);
  });
});

/** The smallest file that reads. */
const fileOf = (): object => ({
  format: 'layerwright-design/1',
  title: 'bench',
  origin: 'proposed',
  rules: 'iec-62368-1' satisfies Design['rules'],
  supply: { kind: 'ac', voltage: '240 V' },
  circuits: [],
  former: { height: '5 mm', wall: '1 mm', flange: '1 mm', chambers: [{ width: '9 mm' }] },
  windings: [],
  layers: [],
});
