import { describe, expect, it } from 'vitest';
import { dxfOf } from '#drawing/dxf/dxf.ts';
import { sceneOf } from '#drawing/scene/scene.ts';
import { greenhouse, greenhouseDesign } from '#test/papers/greenhouse.ts';

const scene = sceneOf(greenhouseDesign(), greenhouse, 'plain');
if (scene === null) throw new Error('the fixture has a plain section');
const lines = dxfOf(scene).trimEnd().split('\r\n');
const pairs = lines.flatMap((line, k) => (k % 2 === 0 ? [[Number(line), lines[k + 1] ?? ''] as const] : []));
const count = (name: string) => pairs.filter(([code, value]) => code === 0 && value === name).length;

describe('dxfOf', () => {
  it('should be pairs of a whole code and a value, ended as the format says', () => {
    expect(lines.length % 2).toBe(0);
    for (const [code] of pairs) expect(Number.isInteger(code)).toBe(true);
    expect(pairs.at(-1)).toEqual([0, 'EOF']);
    expect(count('SECTION')).toBe(count('ENDSEC'));
    expect(count('POLYLINE')).toBe(count('SEQEND'));
  });

  it('should hold two circles a turn and every figure', () => {
    expect(count('CIRCLE')).toBe(2 * 131);
    const loops = scene.areas.flatMap(({ loops: each }) => each).length;
    expect(count('POLYLINE')).toBe(loops + (scene.path?.legs.length ?? 0));
  });

  it('should be in millimetres, without exponents', () => {
    const lengths = pairs.filter(([code]) => [10, 20, 40].includes(code)).map(([, value]) => value);
    for (const value of lengths) expect(value).toMatch(/^-?\d+\.\d{6}$/);
    expect(lengths).toContain('12.000000');
  });

  it('should name layers and texts in signs that every reader knows', () => {
    for (const [code, value] of pairs.filter(([each]) => each === 8))
      expect([code, value]).toEqual([8, expect.stringMatching(/^[A-Z0-9_]{1,31}$/)]);
    for (const line of lines) expect(line).toMatch(/^[\x20-\x7e]*$/);
  });
});
