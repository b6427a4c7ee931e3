// Turns as circles: as many as were wound, row by row, within the width that their winding occupies.

import { describe, expect, it } from 'vitest';
import { sectionsOf } from '#solver/placing/lay-out.ts';
import { turnsOf } from '#solver/placing/turns.ts';
import { inMm, mm, nm } from '#units/quantity.ts';
import { LEAST, made, margins, strongCover, winding, wire } from '#test/solver/made-build.ts';

function turnsWith(change: Parameters<typeof winding>[1]) {
  const build = made([winding('pri', change)]);
  return turnsOf(build, sectionsOf(build, { leastThickness: LEAST })[0]!);
}

describe('turns', () => {
  it('should be as many as were wound, row over row', () => {
    const turns = turnsWith({ turns: 25 });
    expect(turns.length).toBe(25);
    const rows = new Map<number, number[]>();
    for (const { x, y } of turns) rows.set(y, [...(rows.get(y) ?? []), x]);
    // 20 of 0.5 mm fill 10 mm; 5 are left for the second row
    expect([...rows.values()].map(({ length }) => length)).toEqual([20, 5]);
    for (const xs of rows.values())
      for (let i = 1; i < xs.length; i++) expect(inMm(nm(xs[i]! - xs[i - 1]!))).toBeGreaterThanOrEqual(0.5);
  });

  it('should stay between the margins', () => {
    const turns = turnsWith({ turns: 7, margins: margins(3, 1) });
    const edges = turns.flatMap(({ x, overall }) => [
      inMm(x) - inMm(overall) / 2,
      inMm(x) + inMm(overall) / 2,
    ]);
    expect(Math.min(...edges)).toBeCloseTo(3, 6);
    expect(Math.max(...edges)).toBeCloseTo(9, 6);
  });

  it('should put a single turn at the start of its row', () => {
    const [turn] = turnsWith({ turns: 1, margins: margins(2) });
    expect(inMm(turn!.x)).toBeCloseTo(2.25, 6);
  });

  it('should wind every strand beside the others', () => {
    expect(turnsWith({ turns: 3, strands: 4 }).length).toBe(12);
  });

  it('should show the metal inside its enamel where its diameter is known', () => {
    const conductorOf = (metal: number | null) => {
      const [turn] = turnsWith({ turns: 1, wire: wire(0.5, { metal: metal === null ? null : mm(metal) }) });
      return inMm(turn!.conductor);
    };
    expect([conductorOf(0.45), conductorOf(null)]).toEqual([0.45, 0.5]);
  });

  it('should show the conductor inside its cover', () => {
    const [turn] = turnsWith({ turns: 1, wire: wire(0.5, { cover: strongCover }) });
    expect([inMm(turn!.overall), inMm(turn!.conductor)]).toEqual([0.5, 0.3]);
  });

  it('should spread the rows above a low block over it once they have slid', () => {
    const low = { ...margins(3).left, height: mm(0.25) };
    const build = made([winding('pri', { turns: 16, margins: { left: low, right: low } })]);
    const slumped = sectionsOf(build, { leastThickness: LEAST }).find((section) => section.slumped !== null)!;
    const ends = new Map<number, number[]>();
    for (const { x, y } of turnsOf(build, slumped)) ends.set(y, [...(ends.get(y) ?? []), inMm(x)]);
    expect([...ends.values()].map((xs) => [Math.min(...xs), Math.max(...xs)])).toEqual([
      [3.25, 6.75],
      [0.25, 9.75],
    ]);
  });
});
