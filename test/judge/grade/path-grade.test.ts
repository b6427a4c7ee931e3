// The grade of one whole path: by the distance and the solids of its pieces, or by its lengths added up.
// Asked are 2.5 mm for basic and 5.0 mm for reinforced, twice that along the worst tracking group; X is 1 mm.

import { describe, expect, it } from 'vitest';
import type { ChainPiece } from '#judge/grade/chain.ts';
import { gradeOfPath, type Asked, type GradingTools } from '#judge/grade/path-grade.ts';
import { solidRules } from '#judge/grade/solid-rules.ts';
import { ruleBook } from '#books/shelf.ts';
import { nm } from '#units/quantity.ts';
import { ASKED, chainOf, inside, outside, plyOf } from '#test/judge/made-chain.ts';

/** Stands the reinforced test: two of it in one piece are reinforced. */
const PLY = plyOf(5000);
const TOOLS: GradingTools = { stuffs: new Map([[0, PLY]]), rules: solidRules(ruleBook('iec-62368-1')!) };

const gradeOf = (pieces: readonly ChainPiece[], asked: Asked = ASKED) =>
  gradeOfPath(chainOf(...pieces), asked, TOOLS).value;

const run = (length: number, plies = 0, rank = 0) =>
  inside(['a', 'b'], length, { plies, rank, punctured: plies === 0 ? [] : [{ stuff: 0, count: plies }] });

/** Asks less than X for reinforced. */
const CLOSE: Asked = { ...ASKED, distance: () => ({ basic: nm(300_000), reinforced: nm(600_000) }) };

describe('grade of one piece', () => {
  it.each([
    ['a distance as long as is asked', run(5), 'reinforced'],
    ['one just under it', run(4.999999), 'supplementary'],
    ['one as long as basic asks', run(2.5), 'supplementary'],
    ['one just under that', run(2.499999), 'functional'],
    ['two plies at no distance', run(0, 2), 'reinforced'],
    ['one ply at no distance', run(0, 1), 'basic'],
    ['one ply and the basic distance in series', run(2.5, 1), 'double'],
    ['one ply and less than that', run(2.49, 1), 'basic'],
    ['the basic distance along the worst group', run(4.999, 0, 3), 'functional'],
    ['the reinforced distance along the worst group', run(10, 0, 3), 'reinforced'],
    ['a distance outside along the worst group', outside(['a', 'b'], 5), 'supplementary'],
  ])('should grade %s', (_, piece, grade) => {
    expect(gradeOf([piece])).toBe(grade);
  });

  it('should keep its length under X', () => {
    expect(gradeOf([run(0.6)], CLOSE)).toBe('reinforced');
  });
});

describe('grade of a chain over floating conductors', () => {
  it.each([
    ['two basic distances that add up', [run(2.5), run(2.5)], 'reinforced'],
    ['distances that only add up to it', [run(1), run(4)], 'reinforced'],
    ['distances that add up to less', [run(2.499), run(2.5)], 'supplementary'],
    ['a piece under X, which counts nothing', [run(0.999), run(4.5)], 'supplementary'],
    ['three pieces under X', [run(0.999), run(0.999), run(0.999)], 'functional'],
    ['one ply in each of two pieces: plies are not added up', [run(0, 1), run(0, 1)], 'basic'],
    ['two plies in one piece', [run(0, 2), run(0)], 'reinforced'],
    ['a ply in one piece, the basic distance in the other', [run(0, 1), run(2.5)], 'double'],
    ['a ply in a piece under X and the basic distance', [run(0.9, 1), run(2.5)], 'double'],
    ['a distance outside that completes it', [run(2.5), outside(['b', 'c'], 5)], 'double'],
  ])('should grade %s', (_, pieces, grade) => {
    expect(gradeOf(pieces)).toBe(grade);
  });

  it('should count a piece under X as nothing in its own grade as well', () => {
    expect(gradeOf([run(0.9), run(0.9)], CLOSE)).toBe('functional');
    expect(gradeOf([run(0.9), run(0.9, 1)], CLOSE)).toBe('basic');
  });

  it('should ask of the sum what the worst group of its pieces asks', () => {
    // 4.9 + 4.9: enough along the better group, not along the worst; alone the first holds basic, the second nothing
    expect(gradeOf([run(4.9), run(4.9)])).toBe('reinforced');
    expect(gradeOf([run(4.9), run(4.9, 0, 3)])).toBe('supplementary');
    expect(gradeOf([run(4.9), run(5.1, 0, 3)])).toBe('reinforced');
  });
});
