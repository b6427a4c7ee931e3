// Every path is told with the name of a section that is handed out with it: its ends lie on the metal that is drawn there,
// also where it was found with an interval at its end or with a lead that nobody looked at.

import { describe, expect, it } from 'vitest';
import { judge } from '#judge/judging/judge.ts';
import { inMm } from '#units/quantity.ts';
import type { Changes } from '#test/designs.ts';
import { designWith, MARGINS } from '#test/judge/margin-build.ts';

/** Paths of which an end is on no conductor of the section that they name. */
function astray(changes: Changes): readonly string[] {
  const { verdict, sections } = judge(designWith(changes));
  const paths = verdict.pairs.flatMap(({ paths, limiting }) => [...paths, ...(limiting ? [limiting] : [])]);
  const inside = paths.filter(({ points, section }) => points.length > 1 && section !== 'outside');
  expect(inside.length).toBeGreaterThan(2);
  return inside.flatMap(({ section, points }) => {
    const drawn = sections.find(({ name }) => name === section);
    if (drawn === undefined) return [`${section} is not drawn`];
    const metal = drawn.regions.filter(({ kind }) => kind === 'conductor');
    const isOnMetal = ([x, y]: readonly [number, number]) =>
      metal.some((r) => inMm(r.x0) <= x && x <= inMm(r.x1) && inMm(r.y0) <= y && y <= inMm(r.y1));
    return [points[0]!, points.at(-1)!].every(isOnMetal) ? [] : [`${section} ${JSON.stringify(points)}`];
  });
}

describe('sections that are handed out', () => {
  it('should hold the ends of every path of a build that is known', () => {
    expect(astray({})).toEqual([]);
  });

  it('should hold the ends of paths at the end of an interval', () => {
    const left = { width: { value: '2 mm', plusMinus: '1 mm' }, filled: true };
    expect(astray({ 'layers[2].margins': { ...MARGINS, left } })).toEqual([]);
  });

  it('should hold the ends of paths of a layer that may begin at either side', () => {
    expect(astray({ 'layers[2].spread': false, 'layers[2].turns': 2 })).toEqual([]);
  });
});
